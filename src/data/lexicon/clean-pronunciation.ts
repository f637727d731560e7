import { findRule, type Rule } from '../../analyze/rule.ts';

const VOWEL = /^[AEIOU]/;

/** A phone of a CMUdict pronunciation, with its context. */
interface PhonePlace {
  readonly spelling: string;
  readonly phones: readonly string[];
  readonly i: number;
  readonly phone: string;
  readonly next: string;
  /** The phone without its stress digit. */
  readonly bare: string;
  readonly weak: boolean;
  /** The sounds of the preceding phones. */
  readonly sounds: readonly string[];
}

/** A rule that maps a phone to sounds of the engine. Each example gives a word, its phones and its sounds. */
export interface PhoneRule extends Rule<PhonePlace> {
  readonly gives: (place: PhonePlace) => readonly string[];
}

/** The rules that map CMUdict's phones to the sounds of src/analyze/alignment/sounds.ts. */
export const PHONE_RULES: readonly PhoneRule[] = [
  {
    name: 'a weak vowel before W is UW where u is before a vowel',
    example: 'usual: Y UW1 ZH AH0 W AH0 L = Y UW ZH UW AX L',
    counterExample: 'away: AH0 W EY1 = AX W EY',
    applies: ({ phone, next, spelling }) =>
      phone === 'AH0' && next === 'W' && /u[aeio]/.test(spelling) && !/w|qu|gu/.test(spelling),
    gives: () => ['UW'],
  },
  {
    name: 'the W behind it is not heard',
    example: 'usual: Y UW1 ZH AH0 W AH0 L = Y UW ZH UW AX L',
    counterExample: 'away: AH0 W EY1 = AX W EY',
    applies: ({ bare, sounds, phones, i }) =>
      bare === 'W' && sounds.at(-1) === 'UW' && phones[i - 1] === 'AH0',
    gives: () => [],
  },
  {
    name: 'AH0 is schwa, and so is IH0 in a last -en',
    example: 'seven: S EH1 V IH0 N = S EH V AX N',
    counterExample: 'cabin: K AE1 B IH0 N = K AE B IX N',
    applies: ({ phone, spelling, phones, i }) => phone === 'AH0' || isWeakEn(spelling, phones, i),
    gives: () => ['AX'],
  },
  {
    name: 'IH0 is a weak i, but for one before r',
    example: 'cabin: K AE1 B IH0 N = K AE B IX N',
    counterExample: 'irate: IH0 R EY1 T = IH R EY T',
    applies: ({ phone, next }) => phone === 'IH0' && next !== 'R',
    gives: () => ['IX'],
  },
  {
    name: 'secondary stress on a short i is none, but for the last vowel',
    example: 'hospital: HH AA1 S P IH2 T AH0 L = HH AA S P IX T AX L',
    counterExample: 'township: T AW1 N SH IH2 P = T AW N SH IH P',
    applies: ({ phone, phones, i }) => phone === 'IH2' && isWeak(phones, i),
    gives: () => ['IX'],
  },
  {
    name: 'UW before r is UH where it is spelt oor or our',
    example: 'tour: T UW1 R = T UH R',
    counterExample: 'ruin: R UW1 AH0 N = R UW AX N',
    applies: ({ bare, next, spelling }) => bare === 'UW' && next === 'R' && /oor|our/.test(spelling),
    gives: () => ['UH'],
  },
  {
    name: 'the HH of wh is said by some only',
    example: 'whale: HH W EY1 L = W EY L',
    counterExample: 'hat: HH AE1 T = HH AE T',
    applies: ({ bare, next, spelling }) => bare === 'HH' && next === 'W' && spelling.includes('wh'),
    gives: () => [],
  },
  {
    name: 'IY before r is IH, but for a beginning re-, pre- and de-',
    example: 'near: N IY1 R = N IH R',
    counterExample: 'rerun: R IY0 R AH1 N = R IY R AH N',
    applies: ({ bare, next, spelling }) =>
      bare === 'IY' && next === 'R' && !/^(re|pre|de|e)w?r/.test(spelling),
    gives: () => ['IH'],
  },
  {
    name: 'AE before r is EH',
    example: 'carry: K AE1 R IY0 = K EH R IY',
    counterExample: 'cat: K AE1 T = K AE T',
    applies: ({ bare, next }) => bare === 'AE' && next === 'R',
    gives: () => ['EH'],
  },
  {
    name: 'ER behind a long i or ow is a plain R at the end of fire and flour',
    example: 'fire: F AY1 ER0 = F AY R',
    counterExample: 'higher: HH AY1 ER0 = HH AY ER',
    applies: ({ bare, phones, i, spelling }) =>
      bare === 'ER' &&
      /^(AY|AW)/.test(phones[i - 1] ?? '') &&
      /[iy]re|ir([^aeiouy]|$)|our|owr/.test(spelling),
    gives: () => ['R'],
  },
  {
    name: 'ER before a vowel is a vowel and r where they are spelt apart',
    example: 'hurry: HH ER1 IY0 = HH AH R IY',
    counterExample: 'operate: AA1 P ER0 EY2 T = AA P ER EY T',
    applies: ({ bare, next, spelling, weak }) =>
      bare === 'ER' && VOWEL.test(next) && splitsR(spelling, weak, next),
    gives: ({ weak }) => [weak ? 'AX' : 'AH', 'R'],
  },
  {
    name: 'any other phone is its sound, without stress',
    example: 'cat: K AE1 T = K AE T',
    counterExample: 'a: AH0 = AX',
    applies: () => true,
    gives: ({ bare }) => [bare],
  },
];

/** Converts CMUdict phones with stress to the engine's sounds (see analyze/alignment/sounds.ts), using `PHONE_RULES`. */
export function cleanPronunciation(spelling: string, phones: readonly string[]): string[] {
  return cleanWithStress(spelling, phones).sounds;
}

/**
 * Converts phones like `cleanPronunciation`, and also returns the stress of each sound: 0, 1 or 2, or empty for a
 * consonant.
 */
export function cleanWithStress(
  spelling: string,
  phones: readonly string[],
): { readonly sounds: string[]; readonly stress: readonly string[] } {
  const sounds: string[] = [];
  const stress: string[] = [];
  for (const [i, phone] of phones.entries()) {
    const place = {
      spelling,
      phones,
      i,
      phone,
      next: phones[i + 1] ?? '',
      bare: phone.replace(/[012]$/, ''),
      weak: phone.endsWith('0'),
      sounds,
    };
    const given = findRule(PHONE_RULES, place)!.gives(place);
    sounds.push(...given);
    stress.push(...given.map(() => phone.slice(place.bare.length)));
  }
  return { sounds, stress };
}

function isWeakEn(spelling: string, phones: readonly string[], i: number): boolean {
  return phones[i] === 'IH0' && i === phones.length - 2 && phones[i + 1] === 'N' && spelling.endsWith('en');
}

/**
 * Whether the r is a sound of its own after the vowel.
 * - Yes for rr (hurry), but not for the rr of stirring, which is ir, or a doubled r as in blurring.
 * - Yes for a, o or i before r and a stressed vowel: gorilla, around, giraffe.
 * - No for gallery (er) and memory (a weak vowel follows).
 */
function splitsR(spelling: string, weak: boolean, next: string): boolean {
  // blur, occur and abhor double their r before an ending. No word with its own rr has these letters before -ing.
  if (/[ou]rr(?:ings?|ingly|ed|ers?)$|currences?$/.test(spelling)) return false;
  if (/[aou]rr/.test(spelling) || (weak && /[ei]rr/.test(spelling))) return true;
  return weak && /[12]$/.test(next) && /[aoi]r[aeiouy]/.test(spelling) && !/[eu]r[aeiouy]/.test(spelling);
}

/**
 * Whether to ignore a secondary stress that CMUdict puts on a short i, as in hospital and decide. The stress matters to
 * a reader only at the end of a word, as in township.
 */
function isWeak(phones: readonly string[], i: number): boolean {
  const after = phones.slice(i + 1);
  return after.some((phone) => VOWEL.test(phone));
}
