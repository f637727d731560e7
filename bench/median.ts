/** The middle of some numbers; of an even number of them, the upper one of the two in the middle. */
export function median(numbers: readonly number[]): number {
  return numbers.toSorted((a, b) => a - b)[numbers.length >> 1]!;
}
