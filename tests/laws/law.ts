import { existsSync, readFileSync } from 'node:fs';
import type { Accent } from '../../src/analyze/types.ts';

/** A place where a law does not hold. */
export interface Breach {
  /** The name of the breach in the reviewed file of exceptions: a word, or a row and a word joined by a colon. */
  readonly key: string;
  /** The engine's finding at this place. */
  readonly found: string;
}

export interface Law {
  /** The name of the law's file of exceptions, without `.tsv`. */
  readonly id: string;
  readonly says: string;
  /** The number of words, rows or cases that the law checked. */
  readonly looked: number;
  readonly breaches: readonly Breach[];
}

export interface CheckedLaw extends Law {
  /** Breaches that are not in the reviewed file. */
  readonly unexplained: readonly Breach[];
  /** Lines of the reviewed file that are no longer breaches. */
  readonly outdated: readonly string[];
}

/**
 * Reads the lines of `exceptions/ID.tsv` below its header: the key, a tab and the reason. In British, reads
 * `exceptions/british/ID.tsv`.
 */
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

/** Compares a law with its reviewed exceptions. In British, the American exceptions also count, but they need not occur. */
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
