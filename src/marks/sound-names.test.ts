import { expect, test } from 'vitest';
import { soundName } from './sound-names.ts';

test.each([
  ['EY', 'ā', 'eɪ', 'eɪ'],
  ['AA', 'ŏ', 'ɑ', 'ɒ'],
  ['OW', 'ō', 'oʊ', 'əʊ'],
  ['ER', 'er', 'ɝ', 'ɜː'],
  ['AR', 'ar', 'ɑː', 'ɑː'],
  ['OR', 'or', 'ɔː', 'ɔː'],
  ['EA', 'air', 'eə', 'eə'],
  ['IA', 'eer', 'ɪə', 'ɪə'],
  ['Y.UA', 'yo͝or', 'jʊə', 'jʊə'],
  ['OR.R', 'or', 'ɔːr', 'ɔːr'],
  ['AA.R', 'ar', 'ɑr', 'ɒr'],
  ['K.S', 'ks', 'ks', 'ks'],
  ['CH.AX', 'chə', 'tʃə', 'tʃə'],
  ['-', 'silent', 'silent', 'silent'],
])('the sound %s is written %s, in the IPA %s and in British IPA %s', (sound, dictionary, ipa, british) => {
  expect(soundName(sound)).toBe(dictionary);
  expect(soundName(sound, { accent: 'british', marks: 'dictionary' })).toBe(dictionary);
  expect(soundName(sound, { accent: 'american', marks: 'ipa' })).toBe(ipa);
  expect(soundName(sound, { accent: 'british', marks: 'ipa' })).toBe(british);
});
