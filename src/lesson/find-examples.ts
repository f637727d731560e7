import type { PatternId, Unit } from '../analyze/types.ts';
import type { KnownWord, KnownWords } from './known-words.ts';

/** The words of `known` by the patterns their units spell, commonest first; affixes are no units of their own here. */
const indexes = new WeakMap<KnownWords, ReadonlyMap<PatternId, readonly KnownWord[]>>();

/**
 * The words that show a pattern to a group: decoded with it in their usual reading, commonest first. A word known by sight
 * shows nothing, nor does one of two readings (lead).
 */
export function findExamples(known: KnownWords, id: PatternId): readonly KnownWord[] {
  let index = indexes.get(known);
  if (!index) {
    index = makeIndex(known);
    indexes.set(known, index);
  }
  return index.get(id) ?? [];
}

/** The units of a word that are not said by its beginning or ending. */
export function ownUnits({ reading }: KnownWord): readonly Unit[] {
  return reading.units.filter(({ affix }) => affix === undefined);
}

function makeIndex(known: KnownWords): Map<PatternId, KnownWord[]> {
  const index = new Map<PatternId, KnownWord[]>();
  for (const word of known.words) {
    if (word.homograph || word.standing === 'by-sight' || word.reading.source === 'guess') continue;
    for (const id of new Set(ownUnits(word).map(({ pattern }) => pattern))) {
      const words = index.get(id);
      if (words) words.push(word);
      else index.set(id, [word]);
    }
  }
  return index;
}
