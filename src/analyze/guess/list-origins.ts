import { addPrefix, addSuffixTo, type FindBuilt, joinWords } from '../build/build-word.ts';
import type { BuiltWord } from '../build/built-word.ts';
import { PREFIXES, SUFFIXES } from '../morphology/affixes.ts';
import { restoreStem } from '../morphology/restore-stem.ts';

/** One derivation of an unlisted word from listed words. */
export interface Origin {
  readonly kind: 'suffix' | 'prefix' | 'compound';
  readonly built: BuiltWord;
  /** The listed words that the word is made of. */
  readonly from: readonly string[];
}

/** Minimum length of bases and of halves of compounds. Shorter bases mostly match by chance (be + an). */
const SHORTEST = 3;
/**
 * Matches a base of three letters that ends in a vowel. An ending after such a base is usually a coincidence (the +
 * en), except -s (pea + s). Real cases such as hoed and goer are in the word list.
 */
const OPEN_STUMP = /^..[aeiou]$/;

/**
 * Lists every derivation that letters and spelling rules allow, with each pronunciation of an affix. Showing comes from
 * show + ing, and would come from show + wing if it were spelt showwing. The caller chooses the right derivation.
 */
export function listOrigins(word: string, find: FindBuilt): Origin[] {
  return [...bySuffix(word, find), ...byPrefix(word, find), ...byHalves(word, find)];
}

function* bySuffix(word: string, find: FindBuilt): Generator<Origin> {
  for (const { text: letters, soundings } of SUFFIXES) {
    for (const [stem, { stem: base, change }] of restoreStem(word, letters).entries()) {
      if (base.length < SHORTEST || find(base).length === 0) continue;
      if (OPEN_STUMP.test(base) && letters !== 's') continue;
      const mayLessen = change === 'y-to-i' || base.at(-1) === letters[0];
      for (const { sounds } of soundings) {
        const affix = { letters, sound: sounds.join('.'), kind: 'suffix' as const };
        for (const lessened of mayLessen ? [false, true] : [false]) {
          const built = addSuffixTo(word, { affix, stem, reading: 0, lessened }, find);
          if (built) yield { kind: 'suffix', built, from: [base] };
        }
      }
    }
  }
}

function* byPrefix(word: string, find: FindBuilt): Generator<Origin> {
  for (const { text: letters, soundings } of PREFIXES) {
    const base = word.slice(letters.length);
    if (!word.startsWith(letters) || base.length < SHORTEST) continue;
    const found = find(base)[0];
    for (const sounds of found ? soundings : []) {
      const built = addPrefix(word, { letters, sound: sounds.join('.'), kind: 'prefix' }, found);
      if (built) yield { kind: 'prefix', built, from: [base] };
    }
  }
}

function* byHalves(word: string, find: FindBuilt): Generator<Origin> {
  for (let cut = SHORTEST; cut <= word.length - SHORTEST; cut++) {
    const from = [word.slice(0, cut), word.slice(cut)];
    const left = find(from[0]!)[0];
    const right = left && find(from[1]!)[0];
    if (right) yield { kind: 'compound', built: joinWords(word, cut, left, right), from };
  }
}
