import type { Analyzer } from '../../src/analyze/index.ts';
import type { Reading } from '../../src/analyze/types.ts';

/** One line of a gold file, with the columns word, pron, seg, morph, syl, notes. */
export interface GoldRow {
  readonly word: string;
  /** Unit notations that count as right. */
  readonly units: readonly string[];
  /** Base and affixes that count as right: fun+y+est and funny+est. */
  readonly morphs: readonly string[];
  readonly syllables: readonly string[];
}

export interface GoldScore {
  readonly rows: number;
  readonly wrong: {
    readonly units: string[];
    readonly morph: string[];
    readonly division: string[];
    readonly types: string[];
  };
}

const TYPE_LETTERS: Readonly<Record<string, string>> = {
  closed: 'c',
  open: 'o',
  vce: 'e',
  team: 't',
  'r-controlled': 'r',
  'consonant-le': 'l',
  other: 'x',
};

/**
 * Reads a gold file: tab-separated with a header line. `alt=… || …`, `morph-alt=…` and `syl-alt=…` in the notes give
 * alternatives that also count as right.
 */
export function readGold(text: string): GoldRow[] {
  const [, ...lines] = text.trimEnd().split('\n');
  return lines.map((line) => {
    const [word = '', , seg = '', morph = '', syl = '', notes = ''] = line.split('\t');
    const alt = othersOf('alt', notes);
    const sylAlt = othersOf('syl-alt', notes);
    return {
      word,
      units: [seg, ...alt].map(normaliseOwners),
      morphs: [morph, ...othersOf('morph-alt', notes)].map(normaliseMorph),
      syllables: [syl, ...sylAlt],
    };
  });
}

function othersOf(name: string, notes: string): string[] {
  const found = new RegExp(`(?:^|; ?)${name}=([^;]*)`).exec(notes)?.[1];
  return (found?.split(' || ') ?? []).map((one) => one.trim());
}

/** Compares the usual reading of each word with its row. Returns the number of rows and the wrong readings. */
export function scoreGold(rows: readonly GoldRow[], analyzer: Analyzer): GoldScore {
  const wrong: GoldScore['wrong'] = { units: [], morph: [], division: [], types: [] };
  for (const { word, units, morphs, syllables } of rows) {
    const reading = analyzer.analyze(word).readings[0]!;
    const found = notateUnits(reading);
    if (!units.includes(found)) wrong.units.push(`${word}: ${found}, not ${units[0]}`);
    if (!morphs.includes(normaliseMorph(notateMorph(reading))))
      wrong.morph.push(`${word}: ${notateMorph(reading)}, not ${morphs[0]}`);
    const division = reading.syllables.map(({ text }) => text).join('.');
    const types = reading.syllables.map(({ type }) => TYPE_LETTERS[type]).join('.');
    const right = syllables.map((one) => one.split('/'));
    if (!right.some(([text]) => text?.toLowerCase() === division))
      wrong.division.push(`${word}: ${division}, not ${right[0]![0]}`);
    if (!right.some(([, type]) => type === types))
      wrong.types.push(`${word}: ${division}/${types}, not ${syllables[0]}`);
  }
  return { rows: rows.length, wrong };
}

/** Splits a possessive ending written as one unit into two units, like ours: girl + s'. */
function normaliseOwners(units: string): string {
  return units.replace(/ \+s':([SZ])$/, " +s:$1 +':-");
}

/** Removes the marks for “no change”, which are optional: thank+ful:none+ly:none equals thank+ful+ly. */
function normaliseMorph(morph: string): string {
  return morph.replaceAll(':none', '');
}

function notateUnits({ units }: Reading): string {
  return units
    .map(
      ({ letters, sound, affix }) =>
        `${affix === 'suffix' ? '+' : ''}${letters}${affix === 'prefix' ? '+' : ''}:${sound}`,
    )
    .join(' ');
}

function notateMorph({ base, affixes }: Reading): string {
  if (base === null) return '-';
  return affixes.reduce((made, { text, kind, change }) => {
    if (kind === 'prefix') return `${text}+${made}${made.includes(':') ? '' : `:${change}`}`;
    return `${made.replace(/:none$/, '')}+${text}:${kind === 'suffix' ? change : kind}`;
  }, base);
}
