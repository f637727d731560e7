import type { Pattern, PatternId } from '../types.ts';
import rows from './names.json' with { type: 'json' };

/** The names that teachers use for the patterns, in the order of the catalogue. Edited by hand in names.json. */
export const patternNames: readonly Pick<Pattern, 'id' | 'label' | 'keyWord'>[] = rows;

/** The index of each pattern in the catalogue, which is its bit in a requirement set. */
export const bitOf: ReadonlyMap<PatternId, number> = new Map(patternNames.map(({ id }, bit) => [id, bit]));
