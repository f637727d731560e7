import { CHOICES, PART, PARTS } from '../../swap/table-format.ts';

const ROUNDS = 12;

/**
 * Writes each vector as one byte for each part: the number of the nearest of 256 choices for its four numbers (product
 * quantisation). `codebook` contains the choices, as signed bytes in 127ths, one part after the other. `codes` contains
 * the bytes, one vector after the other. Deterministic: the choices start from vectors at even distances.
 */
export function quantise(vectors: readonly Float64Array[]): { codes: Uint8Array; codebook: Uint8Array } {
  const codes = new Uint8Array(vectors.length * PARTS);
  const codebook = new Int8Array(PARTS * CHOICES * PART);
  for (let part = 0; part < PARTS; part++) {
    const points = vectors.map((vector) => vector.subarray(part * PART, (part + 1) * PART));
    let choices = Array.from({ length: CHOICES }, (_, i) =>
      Float64Array.from(points[Math.floor((i * points.length) / CHOICES)]!),
    );
    for (let round = 0; round < ROUNDS; round++) {
      const sums = choices.map(() => new Float64Array(PART + 1));
      for (const point of points) {
        const sum = sums[nearest(point, choices)]!;
        for (let i = 0; i < PART; i++) sum[i]! += point[i]!;
        sum[PART]! += 1;
      }
      choices = sums.map((sum, n) =>
        sum[PART]! === 0 ? choices[n]! : sum.subarray(0, PART).map((value) => value / sum[PART]!),
      );
    }
    points.forEach((point, n) => {
      codes[n * PARTS + part] = nearest(point, choices);
    });
    for (const [n, choice] of choices.entries()) {
      for (const [i, value] of choice.entries()) {
        codebook[(part * CHOICES + n) * PART + i] = Math.max(-127, Math.min(127, Math.round(value * 127)));
      }
    }
  }
  return { codes, codebook: new Uint8Array(codebook.buffer) };
}

function nearest(point: Float64Array, choices: readonly Float64Array[]): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let n = 0; n < choices.length; n++) {
    const choice = choices[n]!;
    let far = 0;
    for (let i = 0; i < PART; i++) far += (point[i]! - choice[i]!) ** 2;
    if (far < least) {
      least = far;
      best = n;
    }
  }
  return best;
}
