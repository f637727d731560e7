import type { WordAnalysis } from '../../analyze/types.ts';
import { findExamples, ownUnits } from '../find-examples.ts';
import type { KnownWord, KnownWords } from '../known-words.ts';
import { correspondences, heardAs } from './correspondences.ts';
import { publishedShares } from './published-shares.ts';

/** One way a sound is spelt, taught to the group. */
export interface WayToSpell {
  readonly letters: string;
  /** Words the group can read that have it, commonest first. */
  readonly examples: readonly KnownWord[];
  /** Percent of the sound's spellings in the words of the bank, each word counted once, endings left out. */
  readonly share: number;
  /** The same as published (`publishedShares`); null where it is not. */
  readonly published: number | null;
}

/** All the ways a sound is spelt that were taught so far, the published order first, then by share. */
export function waysToSpell(sound: string, known: KnownWords): WayToSpell[] {
  const shares = sharesOf(sound, known.analyses);
  const published = publishedShares[sound] ?? {};
  const rows = correspondences.filter(
    ({ id, sounds }) => known.knows(id) && sounds.some((each) => heardAs(each) === sound),
  );
  const ways = new Map<string, Map<string, KnownWord>>();
  for (const { id, letters } of rows) {
    for (const word of findExamples(known, id)) {
      // The l of wrestling is what is left of -le, and no way to spell its sound.
      const unit = ownUnits(word).find(
        (unit) =>
          unit.pattern === id && heardAs(unit.sound) === sound && letters.split(' ').includes(unit.letters),
      );
      if (!unit) continue;
      const words = ways.get(unit.letters) ?? new Map<string, KnownWord>();
      ways.set(unit.letters, words.set(word.word, word));
    }
  }
  return [...ways]
    .map(([letters, words]) => ({
      letters,
      examples: [...words.values()].sort((a, b) => a.rank - b.rank),
      share: shares.get(letters) ?? 0,
      published: published[letters] ?? null,
    }))
    .sort((a, b) => (b.published ?? 0) - (a.published ?? 0) || b.share - a.share);
}

const counted = new WeakMap<readonly WordAnalysis[], ReadonlyMap<string, ReadonlyMap<string, number>>>();

/** Percent of each spelling of a sound, over all words. */
function sharesOf(sound: string, analyses: readonly WordAnalysis[]): Map<string, number> {
  let all = counted.get(analyses);
  if (!all) {
    all = countSpellings(analyses);
    counted.set(analyses, all);
  }
  const spellings = all.get(sound) ?? new Map<string, number>();
  const total = [...spellings.values()].reduce((sum, count) => sum + count, 0);
  return new Map([...spellings].map(([letters, count]) => [letters, (100 * count) / total]));
}

function countSpellings(analyses: readonly WordAnalysis[]): Map<string, Map<string, number>> {
  const all = new Map<string, Map<string, number>>();
  for (const { readings } of analyses) {
    for (const { letters, sound, affix } of readings[0]!.units) {
      if (affix !== undefined) continue;
      const heard = heardAs(sound);
      const spellings = all.get(heard) ?? new Map<string, number>();
      all.set(heard, spellings.set(letters, (spellings.get(letters) ?? 0) + 1));
    }
  }
  return all;
}
