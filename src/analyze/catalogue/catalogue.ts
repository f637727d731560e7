import type { Finer, Pattern } from '../types.ts';
import rows from './catalogue.json' with { type: 'json' };
import { patternNames } from './names.ts';

/**
 * All patterns, in the order of their bits in a requirement set. catalogue.json is edited by hand. The names are in a
 * separate file, names.json, because some pages need only the names. A test checks that the two files match.
 */
export const catalogue: readonly Pattern[] = rows.map((row, i) => {
  const name = patternNames[i];
  if (name?.id !== row.id)
    throw new Error(
      `names.json has ${name?.id ?? 'nothing'} where catalogue.json has ${row.id}: give both the same rows.`,
    );
  return { ...name, ...(row as Omit<Pattern, 'label' | 'keyWord'> & { finer?: Finer }) };
});

/**
 * The rows that count for every group, without the finer ones. They decide how letters are read and what a pasted
 * sequence may teach.
 */
export const coarseRows: readonly Pattern[] = catalogue.filter(({ finer }) => finer === undefined);

/** The finer rows. Each row counts separately only for groups that are held to it. */
export const finerRows: readonly Pattern[] = catalogue.filter(({ finer }) => finer !== undefined);
