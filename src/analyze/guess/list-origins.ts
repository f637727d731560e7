import { addPrefix, addSuffixTo, type FindBuilt, joinWords } from '../build/build-word.ts';
import type { BuiltWord } from '../build/built-word.ts';
import { PREFIXES, SUFFIXES } from '../morphology/affixes.ts';
import { restoreStem } from '../morphology/restore-stem.ts';

/** One way an unlisted word may come from listed ones. */
export interface Origin {
  readonly kind: 'suffix' | 'prefix' | 'compound';
  readonly built: BuiltWord;
  /** The listed words it is made of. */
  readonly from: readonly string[];
}

/** Bases and halves of compounds have at least so many letters; shorter ones are mostly chance (be + an). */
const SHORTEST = 3;
/** Endings on three letters that end in a vowel are chance too (the + en), save -s (pea + s); hoed, goer and the like are listed. */
const OPEN_STUMP = /^..[aeiou]$/;

/**
 * Every way letters and spelling rules allow, with each sounding of an affix: showing from show + ing, and from
 * show + wing were it spelt showwing. Which of them is meant is for the caller to weigh.
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
