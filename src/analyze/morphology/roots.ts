/** A word with a root from Latin or Greek: its parts in order, and the catalogue rows of root and beginning. */
export interface RootedWord {
  readonly parts: readonly string[];
  readonly rows: readonly string[];
}

/**
 * Roots by letters, each with the words that have the letters and not the root. What they mean is in the catalogue.
 * Own list: the roots that lists for grade 3 and 4 have most (common practice, no source).
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

/** What follows con-, com- and the like where they are a beginning: roots and stems from Latin; not the et of comet. */
const STEMS =
  /^(?:act|cede|ceed|cei[tv]|cent|cept|cern|cess|change|claim|clude?|clus|cord|cre|cur|cus|cust|cuse|dens|dict|duc|empt|fect|fer|fess|fid|fin|firm|flict|form|found|fuse?|gest|grad|gram|gress|hibit|ject|join|junct|just|lect|mand|mend|ment|merc|mi[st]|mot|mun|nect|nounce|pact|pan[dsy]|par|pass|pect|pel|pens|per[it]|plain|ple[tx]|pli|plo|pon|port|pos|press|prise|quest|rect|rupt|sci|scrib|script|sect|sent|serv|sider|sist|solid|son|spec|spir|sta[nt]|stitu|stru|sult|sum|tact|tain|tec?t|temp|tend?|tens|test|tinu|tort|tra|trol|ven[et]|ver[stby]|vey|vict|vid|vin|vis|voke|vol|her|apt|opt)/;

const BEGINNINGS: readonly (readonly [row: string, letters: string, next: RegExp])[] = [
  ['prefix-con', 'con', STEMS],
  ['prefix-com', 'com', STEMS],
  ['prefix-ex', 'ex', STEMS],
  ['prefix-pro', 'pro', STEMS],
  ['prefix-per', 'per', /^(?:cei|cent|cept|fect|form|fume|man|mi[st]|plex|sist|spir|suad|vers|vert)/],
  [
    'prefix-ad',
    'ad',
    /^(?:apt|dict|dress|here|ja|ject|join|just|ministe|mi[rt]|opt|van|ven|ver[bst]|vi[cs]|vo)/,
  ],
  ['prefix-uni', 'uni', /^(?:corn|cycl|form|fy|lat|on|que|son|t$|te|ty|vers)/],
];

const ANY =
  /rupt|struct|port|tract|spect|dict|scri|ject|form|graph|phon|photo|micro|bio|^(?:co[mn]|ex|pro|per|ad|uni)/;

/**
 * Root and beginning of a whole word: inspect is in + spect, construct con + struct, microphone micro + phone. Null for a
 * word that has neither (portion, comet, uncle).
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
