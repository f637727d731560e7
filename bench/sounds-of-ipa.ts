/**
 * The sounds of American English in the International Phonetic Alphabet, as espeak-ng (voice en-us) and phonemize write
 * them, with their ARPAbet names in CMUdict. The longest entry that fits is taken: `ɜːɹ` (hurry) is one sound, as in
 * CMUdict.
 */
const NAMES: Readonly<Record<string, string>> = {
  i: 'IY',
  ɪ: 'IH',
  ᵻ: 'IH',
  e: 'EH',
  ɛ: 'EH',
  æ: 'AE',
  a: 'AE',
  ɑ: 'AA',
  ɔ: 'AO',
  o: 'OW',
  ʊ: 'UH',
  u: 'UW',
  ʌ: 'AH',
  ə: 'AH',
  ɐ: 'AH',
  eɪ: 'EY',
  aɪ: 'AY',
  ɔɪ: 'OY',
  oɪ: 'OY',
  aʊ: 'AW',
  oʊ: 'OW',
  əʊ: 'OW',
  // The vowel of r, and the o before r, which has no glide there.
  ɚ: 'ER',
  ɝ: 'ER',
  ɜ: 'ER',
  ɚɹ: 'ER',
  ɝɹ: 'ER',
  ɜɹ: 'ER',
  oɹ: 'AO R',
  // A nasal vowel of a French name is pronounced with an n.
  ɑ̃: 'AA N',
  ɔ̃: 'AO N',
  æ̃: 'AE N',
  p: 'P',
  b: 'B',
  t: 'T',
  d: 'D',
  k: 'K',
  ɡ: 'G',
  g: 'G',
  tʃ: 'CH',
  dʒ: 'JH',
  f: 'F',
  v: 'V',
  θ: 'TH',
  ð: 'DH',
  s: 'S',
  z: 'Z',
  ʃ: 'SH',
  ʒ: 'ZH',
  h: 'HH',
  x: 'K',
  ç: 'HH',
  m: 'M',
  n: 'N',
  ŋ: 'NG',
  l: 'L',
  ɫ: 'L',
  ɬ: 'L',
  ɹ: 'R',
  r: 'R',
  j: 'Y',
  w: 'W',
  ʍ: 'W',
  // The t of butter and of button, and an n, m or l that forms a syllable.
  ɾ: 'T',
  ʔ: 'T',
  n̩: 'AH N',
  m̩: 'AH M',
  l̩: 'AH L',
};
const SOUND = new RegExp(
  Object.keys(NAMES)
    .sort((a, b) => b.length - a.length)
    .join('|'),
  'gu',
);

/**
 * Converts a word in IPA to ARPAbet without stress (`ʃˈɪŋɡəl` becomes `SH IH NG G AH L`). Signs that are no sound
 * (stress, length, separators) are left out.
 */
export function soundsOfIpa(ipa: string): string {
  const plain = ipa.replaceAll(/\([^)]*\)|[ˈˌː_\s]/gu, '');
  return Array.from(plain.matchAll(SOUND), ([sound]) => NAMES[sound]).join(' ');
}
