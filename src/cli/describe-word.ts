import type { Affix, PatternId, Reading } from '../analyze/types.ts';
import { describePattern } from './describe-pattern.ts';
import type { Terminal } from './terminal.ts';
import { wrapLines } from './wrap-lines.ts';

/** Formats a word's readings for the terminal: letters over sounds, base and endings, syllables, required patterns. */
export function describeWord(word: string, readings: readonly Reading[], terminal: Terminal): string {
  return readings
    .map((reading, i) => {
      const title = readings.length > 1 ? `${word} (${i + 1} of ${readings.length})` : word;
      return `${terminal.bold(title)}  ${terminal.dim(sources[reading.source])}\n${describeReading(reading, terminal)}`;
    })
    .join('\n\n');
}

const sources: Readonly<Record<Reading['source'], string>> = {
  dictionary: 'from the dictionary',
  derived: 'built from dictionary words',
  rule: 'a guess, by rule',
  guess: 'a guess',
  none: 'not in the dictionary',
};

function describeReading(reading: Reading, { width, dim }: Terminal): string {
  if (reading.source === 'none') return dim('  too irregular to guess');
  const field = (name: string, text: string) =>
    wrapLines(text.split(' '), width, `  ${name.padEnd(11)}`, ' '.repeat(13));
  return [
    describeUnits(reading, width),
    ...(reading.base === null ? [] : [field('built', describeParts(reading.base, reading.affixes))]),
    field('syllables', reading.syllables.map(({ text, type }) => `${text} (${type})`).join(' · ')),
    field('needs', inWordOrder(reading).map(describePattern).join('; ')),
  ].join('\n');
}

/**
 * Returns the patterns that the letters require from left to right, then the patterns that the word as a whole
 * requires.
 */
function inWordOrder({ units, requires }: Reading): PatternId[] {
  return [...new Set([...units.map(({ pattern }) => pattern), ...requires])];
}

/** Formats letters over sounds, in columns. A plus sign separates an ending. */
function describeUnits({ units }: Reading, width: number): string {
  const columns = units.map(({ letters, sound, affix }) => {
    const top = affix === 'suffix' ? `+${letters}` : affix === 'prefix' ? `${letters}+` : letters;
    const size = Math.max(top.length, sound.length) + 2;
    return [top.padEnd(size), sound.padEnd(size)] as const;
  });
  const rows: string[] = [];
  let row: (typeof columns)[number][] = [];
  const flush = () => {
    for (const part of [0, 1] as const)
      rows.push(`  ${row.map((column) => column[part]).join('')}`.trimEnd());
    row = [];
  };
  for (const column of columns) {
    if (row.reduce((sum, [top]) => sum + top.length, 2 + column[0].length) > width) flush();
    row.push(column);
  }
  flush();
  return rows.join('\n');
}

/** Formats base and affixes: un- + happy + -ly (change y to i). */
function describeParts(base: string, affixes: readonly Affix[]): string {
  const describe = ({ text, kind, change }: Affix) => signs[kind](text) + changes[change];
  const before = affixes.filter(({ kind }) => kind === 'prefix').toReversed();
  const after = affixes.filter(({ kind }) => kind !== 'prefix');
  return [...before.map(describe), base, ...after.map(describe)].join(' + ');
}

const signs: Readonly<Record<Affix['kind'], (text: string) => string>> = {
  prefix: (text) => `${text}-`,
  suffix: (text) => `-${text}`,
  compound: (text) => text,
  contraction: (text) => `${text} (contraction)`,
  possessive: (text) => `${text} (possessive)`,
};

const changes: Readonly<Record<Affix['change'], string>> = {
  none: '',
  double: ' (double the final consonant)',
  'drop-e': ' (drop the e)',
  'y-to-i': ' (change y to i)',
  'f-to-v': ' (change f to v)',
};
