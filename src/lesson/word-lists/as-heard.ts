/** A pronunciation as many hear it: cot and caught, which and witch, are one sound for them. */
export function asHeard(pronunciation: string): string {
  return pronunciation.replaceAll('AO', 'AA').replaceAll('HH W', 'W');
}
