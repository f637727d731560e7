import followers from './stems.json' with { type: 'json' };

/** A word with a root from Latin or Greek: its parts in order, and the catalogue rows of its root and beginning. */
export interface RootedWord {
  readonly parts: readonly string[];
  readonly rows: readonly string[];
}

/**
 * Roots by their letters. Each root has the words that contain the letters but not the root. The meanings are in the
 * catalogue. The list is our own and has the roots most frequent in lists for grades 3 and 4 (common practice, no
 * source).
 */
const ROOTS: readonly (readonly [row: string, letters: RegExp, not?: RegExp])[] = [
  [
    'root-port',
    /^(?:|de|ex|im|re|sup|trans)(port)/,
    /^port(s|ed|ly|ion|rait|end|hole|side)?$|^portion|^portrait/,
  ],
  ['root-rupt', /(rupt)/],
  ['root-struct', /(struct)/],
  ['root-tract', /(tract)/],
  ['root-spect', /(spect)/, /spectr/],
  ['root-dict', /(dict)/],
  ['root-scrib', /(scri(?:be?|pt))/],
  ['root-ject', /(ject)/],
  ['root-form', /^(?:|con|de|in|per|re|trans|uni)(form)/, /^former|^formid|^formal?de/],
  ['root-graph', /(graph)/],
  ['root-phone', /(phone?)/, /phony$|^siphon|^typhoon/],
  ['root-photo', /^(photo)/],
  ['root-micro', /^(micro)/],
  ['root-bio', /(?:^|^anti|^auto)(bio)/],
];

/**
 * Beginnings, each with the Latin roots and stems that may follow. A beginning counts only before one of these roots or
 * stems. The et of comet is not in the list, so comet has no beginning. A $ in the data marks the end of the word.
 */
const BEGINNINGS: readonly (readonly [row: string, letters: string, next: RegExp])[] = followers.flatMap(
  ({ beginnings, stems }) =>
    beginnings.map(
      (letters) => [`prefix-${letters}`, letters, new RegExp(`^(?:${stems.join('|')})`)] as const,
    ),
);

const ANY =
  /rupt|struct|port|tract|spect|dict|scri|ject|form|graph|phon|photo|micro|bio|^(?:co[mn]|ex|pro|per|ad|uni)/;

/**
 * Finds the root and beginning of a whole word: inspect is in + spect, construct con + struct, microphone micro +
 * phone. Returns null for a word that has neither (portion, comet, uncle).
 */
export function findRoots(word: string): RootedWord | null {
  if (!ANY.test(word)) return null;
  const found: { readonly row: string; readonly at: number; readonly end: number }[] = [];
  for (const [row, letters, not] of ROOTS) {
    const match = letters.exec(word);
    if (!match || not?.test(word)) continue;
    const at = match.index + match[0].length - match[1]!.length;
    found.push({ row, at, end: at + match[1]!.length });
  }
  for (const [row, letters, next] of BEGINNINGS) {
    if (word.startsWith(letters) && next.test(word.slice(letters.length)))
      found.push({ row, at: 0, end: letters.length });
  }
  if (found.length === 0) return null;
  const cuts = new Set(found.flatMap(({ at, end }) => [at, end]).filter((at) => at > 0 && at < word.length));
  const ends = [...cuts].sort((a, b) => a - b);
  const parts = [...ends, word.length].map((end, i) => word.slice(ends[i - 1] ?? 0, end));
  return { parts, rows: found.map(({ row }) => row) };
}
