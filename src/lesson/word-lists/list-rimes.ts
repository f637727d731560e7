import type { LessonInput } from '../lesson-input.ts';
import type { WordBank } from '../word-bank.ts';
import { asHeard } from './as-heard.ts';
import { cutInHalves } from './one-syllable.ts';

/** Whether most words with these letters from the vowel on are said so: -ake as in cake; not -ive as in live, -ow as in snow. */
export type IsUsualRime = (rime: string, sound: string) => boolean;

/** Of the words with such a rime at least this part says it so. */
const MOST = 0.75;
/** What may be a word of one syllable: one run of vowel letters, and a last e. */
const SHORT = /^[^aeiouy]*y?[aeiouy]+[^aeiouy]*e?$/;

const kept = new WeakMap<WordBank, IsUsualRime>();

/** How the words of the bank say what they end in, known to the group or not. Kept for each bank. */
export function listRimes({ bank, analyzer }: LessonInput): IsUsualRime {
  const before = kept.get(bank);
  if (before) return before;
  const rimes = new Map<string, Map<string, number>>();
  for (const { word } of bank.words) {
    if (!SHORT.test(word)) continue;
    for (const reading of analyzer.analyze(word).readings) {
      const rime = cutInHalves(word, reading)?.rime;
      if (!rime) continue;
      const counts = rimes.get(rime.letters) ?? new Map<string, number>();
      const sound = asHeard(rime.sound);
      rimes.set(rime.letters, counts.set(sound, (counts.get(sound) ?? 0) + 1));
    }
  }
  const isUsual: IsUsualRime = (rime, sound) => {
    const counts = rimes.get(rime);
    const all = [...(counts?.values() ?? [])].reduce((sum, count) => sum + count, 0);
    return (counts?.get(asHeard(sound)) ?? 0) >= MOST * Math.max(all, 1);
  };
  kept.set(bank, isUsual);
  return isUsual;
}
