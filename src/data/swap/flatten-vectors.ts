/**
 * How many of the directions shared by all words are removed. These directions separate common from rare words and say
 * nothing about meaning.
 */
const SHARED = 3;
const ROUNDS = 30;

/**
 * Removes from word vectors what all have in common: the mean and the three directions of greatest spread. Then scales
 * each vector to length 1. (J. Mu and P. Viswanath, "All-but-the-Top", ICLR 2018, from memory.) Deterministic.
 */
export function flatten(vectors: readonly (readonly number[])[]): Float64Array[] {
  const size = vectors[0]!.length;
  const mean = new Float64Array(size);
  for (const vector of vectors) {
    for (let i = 0; i < size; i++) mean[i]! += vector[i]! / vectors.length;
  }
  const rows = vectors.map((vector) => Float64Array.from(vector, (value, i) => value - mean[i]!));
  for (let n = 0; n < SHARED; n++) {
    const direction = mainDirection(rows, size);
    for (const row of rows) {
      const along = dot(row, direction);
      for (let i = 0; i < size; i++) row[i]! -= along * direction[i]!;
    }
  }
  for (const row of rows) scale(row);
  return rows;
}

/** Returns the direction of greatest spread, by power iteration from a fixed start. */
function mainDirection(rows: readonly Float64Array[], size: number): Float64Array {
  let direction: Float64Array = new Float64Array(size).fill(1);
  for (let round = 0; round < ROUNDS; round++) {
    const next = new Float64Array(size);
    for (const row of rows) {
      const along = dot(row, direction);
      for (let i = 0; i < size; i++) next[i]! += along * row[i]!;
    }
    direction = scale(next);
  }
  return direction;
}

function dot(one: Float64Array, other: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < one.length; i++) sum += one[i]! * other[i]!;
  return sum;
}

function scale(row: Float64Array): Float64Array {
  const length = Math.sqrt(dot(row, row)) || 1;
  for (let i = 0; i < row.length; i++) row[i]! /= length;
  return row;
}
