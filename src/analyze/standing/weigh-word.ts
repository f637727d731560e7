import { catalogue } from '../catalogue/catalogue.ts';
import { bitOf } from '../catalogue/names.ts';
import type { PatternId, Reading, WordAnalysis } from '../types.ts';
import { isInflection } from './pattern-roles.ts';

/** What judging needs of a word; kept for every word of a page, so nothing else is. */
export interface WeighedWord {
  readonly homograph: boolean;
  readonly usage: WordAnalysis['usage'];
  readonly readings: readonly WeighedReading[];
  readonly fault?: string;
}

export interface WeighedReading {
  readonly source: Reading['source'];
  readonly requires: readonly PatternId[];
  readonly base: string | null;
  /**
   * What remains to be known once the base is taught as a whole: with want, the s of wants. Null where more than
   * endings is added to the base: unwanted, the compound someone.
   */
  readonly besideBase: readonly PatternId[] | null;
}

/** Takes from an analysis what a standing depends on. */
export function weighWord({ homograph, usage, readings, fault }: WordAnalysis): WeighedWord {
  return { homograph, usage, readings: readings.map(weighReading), ...(fault !== undefined && { fault }) };
}

function weighReading({ source, requires, base, affixes, units }: Reading): WeighedReading {
  const onlyEndings =
    base !== null && affixes.every(({ kind }) => kind === 'suffix' || kind === 'possessive');
  if (!onlyEndings) return { source, requires, base, besideBase: null };
  const endings = units.filter(({ affix }) => affix).map(({ pattern }) => pattern);
  return {
    source,
    requires,
    base,
    besideBase: requires.filter((id) => endings.includes(id) || isEnding(id)),
  };
}

function isEnding(id: PatternId): boolean {
  const pattern = catalogue[bitOf.get(id) ?? -1];
  return pattern !== undefined && isInflection(pattern);
}
