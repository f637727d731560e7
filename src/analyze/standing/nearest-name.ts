/**
 * The name a mistyped one was most likely to be: the candidate with the fewest insertions, deletions and
 * substitutions (Levenshtein 1966), or null when none is closer than half the letters. Ties go to the first.
 */
export function nearestName(typed: string, candidates: Iterable<string>): string | null {
  const wanted = typed.slice(0, 80).toLowerCase();
  let best: string | null = null;
  let bestDistance = Math.max(2, Math.ceil(wanted.length / 2)) + 1;
  for (const candidate of candidates) {
    const distance = editDistance(wanted, candidate.toLowerCase());
    if (distance < bestDistance) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}

function editDistance(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let i = 1; i <= from.length; i++) {
    const next = [i];
    for (let j = 1; j <= to.length; j++) {
      const substituted = row[j - 1]! + (from[i - 1] === to[j - 1] ? 0 : 1);
      next.push(Math.min(substituted, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[to.length]!;
}
