import { buildRecord, type FindBuilt } from '../build/build-word.ts';
import { type BuiltWord, spellingsOf } from '../build/built-word.ts';
import { restoreStem } from '../morphology/restore-stem.ts';
import type { Usage } from '../types.ts';
import { listOrigins, type Origin } from './list-origins.ts';
import type { Guesser } from './open-guesser.ts';

/** The readings of an unlisted word. One list has its readings, and the other is empty. */
export interface Unlisted {
  /** The ways to build the word from listed words. */
  readonly derived: readonly BuiltWord[];
  /** The guesses of the model. */
  readonly guessed: readonly BuiltWord[];
}

/**
 * The extra probability of a word made of listed words, beyond what the model gives its spellings. The unit is natural
 * logarithms. The value depends on the least common of the listed words. Fitted to held-out CMUdict words
 * (tests/accuracy). tidepool is tide + pool; company is not comp + any.
 */
const CREDIT: Readonly<Record<Origin['kind'], Readonly<Record<Usage, number>>>> = {
  suffix: { name: 3, rare: 5, common: 6 },
  prefix: { name: 0, rare: 3, common: 6 },
  compound: { name: -1, rare: 1, common: 6 },
};
const USAGES: readonly Usage[] = ['name', 'rare', 'common'];

/**
 * Reads a word that is missing from the table. Every derivation from listed words is weighed against the model's own
 * reading. Returns null for anything but 2 to 25 letters a-z.
 * @param say Finds the parts of the word in the accent of the group, if that differs from the model's accent.
 */
export function readUnlisted(
  word: string,
  find: FindBuilt,
  usageOf: (word: string) => Usage | null,
  guesser: Guesser,
  say: FindBuilt = find,
): Unlisted | null {
  const guess = guesser.guess(word);
  if (!guess) return null;
  let least = guess.cost;
  let best = -1;
  const origins = listOrigins(word, find);
  for (const [i, { kind, built, from }] of origins.entries()) {
    const usage = USAGES[Math.min(...from.map((part) => USAGES.indexOf(usageOf(part) ?? 'name')))]!;
    const cost = guesser.costOf(word, built) - CREDIT[kind][usage];
    if (cost >= least) continue;
    least = cost;
    best = i;
  }
  const said = say === find ? origins : listOrigins(word, say);
  const made = best < 0 ? undefined : (said[best] ?? origins[best])!.built;
  return made
    ? { derived: [made], guessed: [] }
    : { derived: [], guessed: [noteOrigin(word, guess.built, find)] };
}

/**
 * Records the origin of a noun in -ion, although its letters run together: strangulation from strangulate. Nation has
 * no origin, because nate is not listed.
 */
function noteOrigin(word: string, built: BuiltWord, find: FindBuilt): BuiltWord {
  if (built.base !== null || !word.endsWith('ion')) return built;
  const stem = restoreStem(word, 'ion').findIndex((one) => one.stem.length > 3 && find(one.stem).length > 0);
  if (stem === -1) return built;
  const units = spellingsOf(built);
  const affix = { letters: 'ion', sound: units.at(-1)!.sound, kind: 'suffix' as const };
  const madeBy = { affix, stem, reading: 0, lessened: false };
  const record = { readings: [{ kind: 'whole' as const, units, madeBy }], homograph: false };
  return buildRecord(word, record, find)[0] ?? built;
}
