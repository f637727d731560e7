import type { Pattern, PatternId } from '../types.ts';
import rows from './catalogue.json' with { type: 'json' };

/** All patterns, in the order their bits have in a requirement set. Edited by hand in catalogue.json. */
export const catalogue: readonly Pattern[] = rows;

/** Place of each pattern in the catalogue, which is its bit. */
export const bitOf: ReadonlyMap<PatternId, number> = new Map(catalogue.map((p, bit) => [p.id, bit]));
