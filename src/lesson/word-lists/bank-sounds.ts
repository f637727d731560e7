import type { LessonInput } from '../lesson-input.ts';
import type { WordBank } from '../word-bank.ts';
import { cutInHalves } from './one-syllable.ts';

/** How the short words of the bank sound. */
export interface BankSounds {
  /** Whether a word sounds like one of the bank: fite. */
  isTaken(pronunciation: string): boolean;
  /** Whether most words with these letters from the vowel on are said so: -ake in cake; not -ive as in live, -ow as in snow. */
  isUsual(rime: string, sound: string): boolean;
}

/** Of the words with such a rime at least this part says it so. */
const MOST = 0.75;
/** What may be a word of one syllable: one run of vowel letters, and a last e. */
const SHORT = /^[^aeiouy]*y?[aeiouy]+[^aeiouy]*e?$/;

const kept = new WeakMap<WordBank, BankSounds>();

/** Kept for each bank: what its words sound like does not depend on the group. */
export function listBankSounds({ bank, analyzer }: LessonInput): BankSounds {
  const before = kept.get(bank);
  if (before) return before;
  const taken = new Set<string>();
  const rimes = new Map<string, Map<string, number>>();
  for (const { word } of bank.words) {
    if (!SHORT.test(word)) continue;
    for (const reading of analyzer.analyze(word).readings) {
      taken.add(merge(reading.pronunciation));
      const halves = cutInHalves(word, reading);
      if (!halves) continue;
      const { letters, sound } = halves.rime;
      const sounds = rimes.get(letters) ?? new Map<string, number>();
      sounds.set(merge(sound), (sounds.get(merge(sound)) ?? 0) + 1);
      rimes.set(letters, sounds);
    }
  }
  const sounds: BankSounds = {
    isTaken: (pronunciation) => taken.has(merge(pronunciation)),
    isUsual(rime, sound) {
      const counts = rimes.get(rime) ?? new Map<string, number>();
      const all = [...counts.values()].reduce((sum, count) => sum + count, 0);
      return (counts.get(merge(sound)) ?? 0) >= MOST * Math.max(all, 1);
    },
  };
  kept.set(bank, sounds);
  return sounds;
}

/** Cot and caught, which and witch, are one sound for many. */
function merge(sound: string): string {
  return sound.replaceAll('AO', 'AA').replaceAll('HH W', 'W');
}
