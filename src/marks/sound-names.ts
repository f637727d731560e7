import type { SoundStyle } from '../analyze/index.ts';

/**
 * The names of each sound: as in an English dictionary for children (a macron for long vowels, a breve for short
 * vowels), and in the IPA.
 */
type Names = Readonly<Record<string, readonly [dictionary: string, ipa: string]>>;

const NAMES: Names = {
  AA: ['ŏ', 'ɑ'],
  AE: ['ă', 'æ'],
  AH: ['ŭ', 'ʌ'],
  AO: ['aw', 'ɔ'],
  AR: ['ar', 'ɑː'],
  AW: ['ow', 'aʊ'],
  AWA: ['owr', 'aʊə'],
  AX: ['ə', 'ə'],
  AY: ['ī', 'aɪ'],
  AYA: ['īr', 'aɪə'],
  EA: ['air', 'eə'],
  EH: ['ĕ', 'ɛ'],
  ER: ['er', 'ɝ'],
  EY: ['ā', 'eɪ'],
  IA: ['eer', 'ɪə'],
  IH: ['ĭ', 'ɪ'],
  IX: ['ĭ', 'ɪ'],
  IY: ['ē', 'i'],
  OR: ['or', 'ɔː'],
  OW: ['ō', 'oʊ'],
  OY: ['oy', 'ɔɪ'],
  UA: ['o͝or', 'ʊə'],
  UH: ['o͝o', 'ʊ'],
  UW: ['o͞o', 'u'],
  B: ['b', 'b'],
  CH: ['ch', 'tʃ'],
  D: ['d', 'd'],
  DH: ['th̲', 'ð'],
  F: ['f', 'f'],
  G: ['g', 'ɡ'],
  HH: ['h', 'h'],
  JH: ['j', 'dʒ'],
  K: ['k', 'k'],
  L: ['l', 'l'],
  M: ['m', 'm'],
  N: ['n', 'n'],
  NG: ['ng', 'ŋ'],
  P: ['p', 'p'],
  R: ['r', 'r'],
  S: ['s', 's'],
  SH: ['sh', 'ʃ'],
  T: ['t', 't'],
  TH: ['th', 'θ'],
  V: ['v', 'v'],
  W: ['w', 'w'],
  Y: ['y', 'j'],
  Z: ['z', 'z'],
  ZH: ['zh', 'ʒ'],
};
/** The vowels that British dictionaries write with another IPA symbol. */
const BRITISH_IPA: Readonly<Record<string, string>> = {
  AA: 'ɒ',
  EH: 'e',
  ER: 'ɜː',
  IY: 'iː',
  OW: 'əʊ',
  UW: 'uː',
};
/** The names of vowels that are heard together with an r. */
const WITH_R: Readonly<Record<string, string>> = {
  'AA.R': 'ar',
  'AO.R': 'or',
  'EH.R': 'air',
  'IH.R': 'eer',
  'AY.R': 'īr',
  'AW.R': 'owr',
  'UH.R': 'o͝or',
  // British sounds before a vowel. The r moves to that vowel.
  'AR.R': 'ar',
  'OR.R': 'or',
  'EA.R': 'air',
  'IA.R': 'eer',
  'UA.R': 'o͝or',
  'ER.R': 'er',
  'AYA.R': 'īr',
  'AWA.R': 'owr',
};

/**
 * Returns a unit's sound in the form that a teacher reads: `EY` is ā or eɪ, `K.S` is ks, `AA.R` is ar or ɑr, and `-` is
 * silent.
 */
export function soundName(sound: string, { accent, marks }: Partial<SoundStyle> = {}): string {
  if (sound === '-') return 'silent';
  const parts = sound.split('.');
  if (marks === 'ipa') {
    const own = accent === 'british' ? BRITISH_IPA : {};
    return parts.map((one) => own[one] ?? NAMES[one]?.[1] ?? one.toLowerCase()).join('');
  }
  return WITH_R[sound] ?? parts.map((one) => NAMES[one]?.[0] ?? one.toLowerCase()).join('');
}
