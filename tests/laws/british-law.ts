import { hasVowel } from '../../src/analyze/alignment/sounds.ts';
import { soundName } from '../../src/marks/sound-names.ts';
import type { Breach, Law } from './law.ts';
import { accent, lessonWords, shortenedWords } from './lesson-words.ts';

/**
 * In British English, an r is pronounced only before a vowel, saw has the vowel of fork, and every sound has a name in
 * both notations.
 */
export function rIsHeardBeforeVowels(): Law {
  const breaches: Breach[] = [];
  let looked = 0;
  for (const { word, readings } of [...lessonWords, ...shortenedWords]) {
    for (const { pronunciation, source } of readings) {
      if (source === 'none') continue;
      looked++;
      const sounds = pronunciation.split(' ');
      const isFine = sounds.every(
        (sound, i) =>
          (sound !== 'R' || hasVowel(sounds[i + 1] ?? '')) &&
          sound !== 'AO' &&
          (sound.length === 1 || soundName(sound, { accent, marks: 'ipa' }) !== sound.toLowerCase()),
      );
      if (!isFine) breaches.push({ key: word, found: pronunciation });
    }
  }
  return { id: 'british-r', says: 'an r is heard only before a vowel', looked, breaches };
}
