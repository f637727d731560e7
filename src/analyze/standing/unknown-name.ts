import { GroupError } from './group-error.ts';

/**
 * Creates the error for an unknown name, with the nearest known one: `alsoTaught[1]: there is no pattern "shorta". Did
 * you mean "short-a"?`. `kind` is the kind of thing to be named: pattern, sequence, key.
 */
export function unknownName(path: string, kind: string, typed: string, known: Iterable<string>): GroupError {
  const nearest = nearestName(typed, known);
  const hint = nearest === null ? '' : ` Did you mean "${nearest}"?`;
  return new GroupError(path, `there is no ${kind} "${shorten(typed)}".${hint}`);
}

/** Shortens a text from a file for an error message, to at most 60 characters. */
export function shorten(text: string): string {
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}

/**
 * Returns the name that a mistyped name was most likely to be. This is the candidate with the fewest insertions,
 * deletions and substitutions (Levenshtein 1966). Returns null if no candidate is closer than half the letters. The
 * first candidate wins a tie.
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
