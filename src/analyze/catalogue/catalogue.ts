import type { Finer, Pattern } from '../types.ts';
import rows from './catalogue.json' with { type: 'json' };
import { patternNames } from './names.ts';

/**
 * All patterns, in the order their bits have in a requirement set. Edited by hand in catalogue.json; their names stand
 * apart in names.json, because pages that only name patterns need no more. A test holds the two together.
 */
export const catalogue: readonly Pattern[] = rows.map((row, i) => {
  const name = patternNames[i];
  if (name?.id !== row.id)
    throw new Error(
      `names.json has ${name?.id ?? 'nothing'} where catalogue.json has ${row.id}: give both the same rows.`,
    );
  return { ...name, ...(row as Omit<Pattern, 'label' | 'keyWord'> & { finer?: Finer }) };
});

/** The rows that every group counts, without the finer ones: what letters are taken for, and what a pasted sequence may teach. */
export const coarseRows: readonly Pattern[] = catalogue.filter(({ finer }) => finer === undefined);

/** The finer rows, each of which counts by itself only for groups that are held to it. */
export const finerRows: readonly Pattern[] = catalogue.filter(({ finer }) => finer !== undefined);
