/** Sounds as an English dictionary for children writes them: macron for long, breve for short vowels. */
const NAMES: Readonly<Record<string, string>> = {
  AA: 'ŏ',
  AE: 'ă',
  AH: 'ŭ',
  AO: 'aw',
  AW: 'ow',
  AX: 'ə',
  AY: 'ī',
  EH: 'ĕ',
  ER: 'er',
  EY: 'ā',
  IH: 'ĭ',
  IX: 'ĭ',
  IY: 'ē',
  OW: 'ō',
  OY: 'oy',
  UH: 'o͝o',
  UW: 'o͞o',
  B: 'b',
  CH: 'ch',
  D: 'd',
  DH: 'th̲',
  F: 'f',
  G: 'g',
  HH: 'h',
  JH: 'j',
  K: 'k',
  L: 'l',
  M: 'm',
  N: 'n',
  NG: 'ng',
  P: 'p',
  R: 'r',
  S: 's',
  SH: 'sh',
  T: 't',
  TH: 'th',
  V: 'v',
  W: 'w',
  Y: 'y',
  Z: 'z',
  ZH: 'zh',
};
/** Vowels before r as they are heard together. */
const WITH_R: Readonly<Record<string, string>> = {
  'AA.R': 'ar',
  'AO.R': 'or',
  'EH.R': 'air',
  'IH.R': 'eer',
  'AY.R': 'īr',
  'AW.R': 'owr',
  'UH.R': 'o͝or',
};

/** A unit's sound for a teacher: `EY` is ā, `K.S` is ks, `AA.R` is ar, `-` is silent. */
export function soundName(sound: string): string {
  if (sound === '-') return 'silent';
  const joined = WITH_R[sound];
  return (
    joined ??
    sound
      .split('.')
      .map((one) => NAMES[one] ?? one.toLowerCase())
      .join('')
  );
}
