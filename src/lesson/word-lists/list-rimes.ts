import { rememberFor } from '../../analyze/index.ts';
import type { LessonInput } from '../lesson-input.ts';
import { isPlain } from '../plain-words.ts';
import { asHeard } from './as-heard.ts';
import { cutInHalves } from './one-syllable.ts';

/**
 * Whether a rime is usual. Two words or more have these letters from the vowel on, children know one of them, and
 * nearly all are pronounced with this sound: -ake as in cake. Not usual are -ive as in live, -ow as in snow, and -erk,
 * which only clerk has.
 */
export type IsUsualRime = (rime: string, sound: string) => boolean;

/** At least this share of the words with such a rime say it the same way: -ave in have and wave, not -ead in bread and bead. */
const MOST = 0.85;
const FEWEST = 2;
/** Letters that may be a word of one syllable: one run of vowel letters, and a last e. */
const SHORT = /^[^aeiouy]*y?[aeiouy]+[^aeiouy]*e?$/;

/**
 * Returns how the words of the bank pronounce their rimes, whether the group knows the words or not. Cached for each
 * bank and accent.
 */
export const listRimes = rememberFor(findRimes, ({ known }: LessonInput) => known.analyses);

function findRimes({ bank, known }: LessonInput): IsUsualRime {
  const rimes = new Map<string, Map<string, number>>();
  const plain = new Set<string>();
  for (const [i, { word }] of bank.words.entries()) {
    if (!SHORT.test(word)) continue;
    for (const reading of known.analyses[i]!.readings) {
      const rime = cutInHalves(word, reading)?.rime;
      if (!rime) continue;
      const counts = rimes.get(rime.letters) ?? new Map<string, number>();
      const sound = rimeAsHeard(rime.sound);
      rimes.set(rime.letters, counts.set(sound, (counts.get(sound) ?? 0) + 1));
      if (isPlain(word, null, bank)) plain.add(`${rime.letters} ${sound}`);
    }
  }
  return (rime, sound) => {
    const counts = rimes.get(rime);
    const all = [...(counts?.values() ?? [])].reduce((sum, count) => sum + count, 0);
    const saidSo = counts?.get(rimeAsHeard(sound)) ?? 0;
    return saidSo >= Math.max(FEWEST, MOST * all) && plain.has(`${rime} ${rimeAsHeard(sound)}`);
  };
}

/** Returns the sound of a rime as it is heard. The oo of rule and the yoo of mule are one way to read u_e. */
function rimeAsHeard(sound: string): string {
  return asHeard(sound).replaceAll('Y UW', 'UW');
}
