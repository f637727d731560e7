import { existsSync, readFileSync } from 'node:fs';
import type { Accent } from '../../src/analyze/types.ts';

/** One place where a law does not hold. */
export interface Breach {
  /** What the reviewed file of exceptions names it by: a word, or row and word with a colon between. */
  readonly key: string;
  /** The finding there. */
  readonly found: string;
}

export interface Law {
  /** Name of its file of exceptions, without `.tsv`. */
  readonly id: string;
  readonly says: string;
  /** How many words, rows or cases it looked at. */
  readonly looked: number;
  readonly breaches: readonly Breach[];
}

export interface CheckedLaw extends Law {
  /** Breaches that the reviewed file does not have. */
  readonly unexplained: readonly Breach[];
  /** Lines of the file that are no breach any more. */
  readonly outdated: readonly string[];
}

/** The lines of `exceptions/ID.tsv` below its head: key, a tab, the reason; in British the lines of `exceptions/british/ID.tsv`. */
export function readExceptions(id: string, accent: Accent = 'american'): Map<string, string> {
  const folder = accent === 'british' ? 'exceptions/british' : 'exceptions';
  const file = new URL(`${folder}/${id}.tsv`, import.meta.url);
  if (!existsSync(file)) return new Map();
  const rows = readFileSync(file, 'utf8').trimEnd().split('\n').slice(1);
  return new Map(
    rows.map((row) => {
      const [key, ...reason] = row.split('\t');
      return [key!, reason.join('\t')];
    }),
  );
}

/** Holds a law against its reviewed exceptions; in British also against the American ones, which need not be there. */
export function checkLaw(law: Law, accent: Accent = 'american'): CheckedLaw {
  const own = readExceptions(law.id, accent);
  const exceptions = new Map([...readExceptions(law.id), ...own]);
  const broken = new Set(law.breaches.map(({ key }) => key));
  return {
    ...law,
    unexplained: law.breaches.filter(({ key }) => !exceptions.has(key)),
    outdated: [...own.keys()].filter((key) => !broken.has(key)),
  };
}
