/** Returns a pronunciation as many people hear it. For them cot and caught, and which and witch, have one sound. */
export function asHeard(pronunciation: string): string {
  return pronunciation.replaceAll('AO', 'AA').replaceAll('HH W', 'W');
}
