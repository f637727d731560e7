/** Returns the median of some numbers. For an even number of them, returns the upper of the two middle numbers. */
export function median(numbers: readonly number[]): number {
  return numbers.toSorted((a, b) => a - b)[numbers.length >> 1]!;
}
