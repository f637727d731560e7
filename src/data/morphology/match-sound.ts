import { SIBILANT, VOICELESS } from '../../analyze/alignment/sounds.ts';
import type { Allomorph, Suffix } from '../../analyze/morphology/affixes.ts';

/**
 * Phones without stress. Weak AH0 and IH0 are both `W`. AO counts as AA before all sounds, since CMUdict is
 * inconsistent.
 */
export type Sounds = readonly string[];

/**
 * The consonants that the last consonant of a base may become before a reshaping suffix: act, action; electric,
 * electricity.
 */
const SOFTENED: Record<string, string> = {
  T: 'SH ZH',
  S: 'SH ZH',
  Z: 'ZH S',
  D: 'ZH JH S',
  K: 'S SH',
  G: 'JH',
  V: 'F',
  TH: 'DH',
  KS: 'SH',
};
const VOWEL = /^(W|[AEIOU][A-Z])$/;

/** CMUdict is inconsistent about vowels before r: ear has IY or IH, scare has EH, scarecrow has AE. */
const BEFORE_R: Record<string, string> = { IY: 'IH', AE: 'EH' };

/** Converts CMUdict phones to the simplified sounds that this folder compares. */
export function soften(phones: readonly string[]): string[] {
  return phones.map((phone, i) => {
    const bare = phone.replace(/\d/, '');
    if (phones[i + 1] === 'R' && bare in BEFORE_R) return BEFORE_R[bare]!;
    if (phone === 'AH0' || phone === 'IH0' || phone === 'AX') return 'W';
    return bare === 'AO' ? 'AA' : bare;
  });
}

function sameSound(one: string | undefined, other: string | undefined): boolean {
  if (one === other) return true;
  return one === 'W' ? other === 'IH' || other === 'AH' : other === 'W' && (one === 'IH' || one === 'AH');
}

/** Joins the sounds of two parts. The IY of re becomes IH before the r of write, like any IY before r. */
export function joinSounds(one: Sounds, other: Sounds): Sounds {
  const last = one.at(-1)!;
  return other[0] === 'R' && last in BEFORE_R
    ? [...one.slice(0, -1), BEFORE_R[last]!, ...other]
    : [...one, ...other];
}

/** Whether all sounds are equal. A weak vowel equals short i and short u. */
export function sameSounds(one: Sounds, other: Sounds): boolean {
  return one.length === other.length && one.every((sound, i) => sameSound(sound, other[i]));
}

/**
 * Compares like {@link sameSounds}, but a full short i or u in a part may not be weak in the whole: car + ton is not
 * carton.
 */
export function keepsFullVowels(parts: Sounds, whole: Sounds): boolean {
  return (
    parts.length === whole.length &&
    parts.every((sound, i) => sound === whole[i] || (sound === 'W' && sameSound(sound, whole[i])))
  );
}

/** Whether `word` begins with the sounds of `head`. */
export function startsWith(word: Sounds, head: Sounds): boolean {
  return word.length >= head.length && head.every((sound, i) => sameSound(sound, word[i]));
}

function endsWith(word: Sounds, tail: Sounds): boolean {
  return (
    word.length >= tail.length &&
    tail.every((sound, i) => sameSound(sound, word[word.length - tail.length + i]))
  );
}

/** Whether a suffix with this pronunciation may follow a base that ends in `last`. */
export function allomorphFits(after: Allomorph, last: string): boolean {
  switch (after) {
    case 'any':
      return true;
    case 't-d':
      return last === 'T' || last === 'D';
    case 'sibilant':
      return SIBILANT.has(last);
    case 'voiceless':
      return VOICELESS.has(last) && !SIBILANT.has(last);
    case 'voiced':
      return !VOICELESS.has(last) && !SIBILANT.has(last);
  }
}

function suffixFits(suffix: Suffix, after: Allomorph, last: string): boolean {
  if (suffix.text !== 'ed') return allomorphFits(after, last);
  // -ed is T or D after hissing sounds too (missed, buzzed), but ID only after t and d (planted).
  if (after === 't-d') return last === 'T' || last === 'D';
  return last !== 'T' && last !== 'D' && (after === 'voiceless') === VOICELESS.has(last);
}

/**
 * Returns how well `word` sounds like `base` + `suffix`.
 * - `same`: the base is unchanged, apart from the usual changes before an ending: a weak vowel lost before l or n
 * (handling), ER to R, NG to NG G (longer), a doubled sound pronounced once (fully), t or d lost between consonants
 * (friendly).
 * - `near`: only the consonants of the base are unchanged (electricity; documents, whose e CMUdict writes in two ways).
 * - `none`: anything else (wick + ed is not wicked).
 */
export function matchSuffixSound(
  base: Sounds,
  word: Sounds,
  suffix: Suffix,
  yChanged: boolean,
): 'same' | 'near' | 'none' {
  let near = false;
  for (const { after, sounds } of suffix.soundings) {
    const tail = soften(sounds.map((sound) => (sound === 'IH' ? 'AX' : sound)));
    if (endsWith(word, tail)) {
      const head = word.slice(0, word.length - tail.length);
      if (!suffixFits(suffix, after, head.at(-1) ?? '')) continue;
      if (baseForms(base, tail, suffix, yChanged).some((form) => sameSounds(form, head))) return 'same';
      near ||= suffix.reshapes ? sameSkeleton(base, head) : keepsConsonants([...base, ...tail], word);
    }
    if (suffix.reshapes && tail[0] === 'ER' && endsWith(word, ['R', ...tail.slice(1)]))
      near ||= sameSkeleton(base, word.slice(0, -tail.length));
  }
  // CMUdict gives some words like tramps the Z of gulls, and some words like bras the S of tramps.
  if (suffix.text === 's' && /^[SZ]$/.test(word.at(-1)!)) near ||= sameSounds(base, word.slice(0, -1));
  return near ? 'near' : 'none';
}

/** The sounds of a base and of a suffix after it. */
interface BaseSound {
  readonly base: Sounds;
  /** The base without its last sound. `last` is that sound. */
  readonly cut: Sounds;
  readonly last: string;
  readonly tail: Sounds;
  readonly suffix: string;
  readonly beforeVowel: boolean;
  readonly yChanged: boolean;
}

/** The changes that the end of a base may undergo before a suffix. All that apply are tried. */
const SOUND_CHANGES: readonly {
  readonly applies: (place: BaseSound) => boolean;
  readonly forms: (place: BaseSound) => readonly Sounds[];
}[] = [
  {
    applies: ({ beforeVowel, last }) => beforeVowel && last === 'ER',
    forms: ({ cut }) => [
      [...cut, 'R'],
      [...cut, 'W', 'R'],
      [...cut, 'ER', 'R'],
    ],
  },
  { applies: ({ beforeVowel, last }) => beforeVowel && last === 'R', forms: ({ cut }) => [[...cut, 'ER']] },
  {
    applies: ({ beforeVowel, last, base }) => beforeVowel && /^[LNM]$/.test(last) && base.at(-2) === 'W',
    forms: ({ base, last }) => [[...base.slice(0, -2), last]],
  },
  { applies: ({ beforeVowel, last }) => beforeVowel && last === 'NG', forms: ({ base }) => [[...base, 'G']] },
  { applies: ({ last, tail }) => last === tail[0], forms: ({ cut }) => [cut] },
  {
    applies: ({ suffix, last, base }) => suffix === 'ly' && last === 'L' && base.at(-2) === 'W',
    forms: ({ base }) => [base.slice(0, -2)],
  },
  {
    applies: ({ beforeVowel, last, base, suffix }) =>
      !beforeVowel && /^[TD]$/.test(last) && base.length > 2 && !/^(s|es|ed)$/.test(suffix),
    forms: ({ cut }) => [cut],
  },
  { applies: ({ yChanged, last }) => yChanged && last === 'IY', forms: ({ cut }) => [[...cut, 'W']] },
  {
    applies: ({ last, suffix, tail }) => last === 'F' && suffix.endsWith('s') && tail[0] === 'Z',
    forms: ({ cut }) => [[...cut, 'V']],
  },
  // allegedly and supposedly have one more syllable than alleged and supposed.
  {
    applies: ({ suffix, last }) => suffix === 'ly' && last === 'D',
    forms: ({ cut }) => [[...cut, 'W', 'D']],
  },
  // The t is silent in soften and fasten.
  {
    applies: ({ suffix, last, base }) => suffix === 'en' && last === 'T' && /^(S|F)$/.test(base.at(-2)!),
    forms: ({ cut }) => [cut],
  },
  {
    applies: ({ last, suffix }) => last === 'TH' && /^(s|y|er|en)$/.test(suffix),
    forms: ({ cut }) => [[...cut, 'DH']],
  },
];

function baseForms(base: Sounds, tail: Sounds, suffix: Suffix, yChanged: boolean): Sounds[] {
  const place = {
    base,
    cut: base.slice(0, -1),
    last: base.at(-1)!,
    tail,
    suffix: suffix.text,
    beforeVowel: VOWEL.test(tail[0]!),
    yChanged,
  };
  const changes = SOUND_CHANGES.filter(({ applies }) => applies(place));
  return [base, ...changes.flatMap(({ forms }) => forms(place))];
}

/** Returns the consonants in order, with one mark for each run of vowels, so that lost and changed vowels do not matter. */
function skeleton(sounds: Sounds): string[] {
  const marks: string[] = [];
  for (const [i, sound] of sounds.entries()) {
    if (sound === 'Y' || (sound === 'R' && sounds[i - 1] === 'ER')) continue;
    if (!VOWEL.test(sound)) {
      // CMUdict writes intention with CH and intentional with SH.
      if (sound !== sounds[i - 1]) marks.push(sound === 'CH' ? 'SH' : sound);
    } else if (marks.at(-1) !== 'V') marks.push('V');
    if (sound === 'ER') marks.push('R');
  }
  return marks;
}

function sameSkeleton(base: Sounds, head: Sounds): boolean {
  const one = skeleton(base);
  const other = skeleton(head);
  return [one, loseWeakVowel(one)].some(
    (marks) =>
      softenedEqual(marks, other) || (marks.at(-1) === 'V' && softenedEqual(marks.slice(0, -1), other)),
  );
}

/** Removes the vowel before a final l, r or n: tiger, tigress. */
function loseWeakVowel(marks: string[]): string[] {
  return marks.length > 2 && marks.at(-2) === 'V' && /^[LRN]$/.test(marks.at(-1)!)
    ? marks.toSpliced(-2, 1)
    : marks;
}

function softenedEqual(one: string[], other: string[]): boolean {
  if (one.length !== other.length) return false;
  return one.every((mark, i) => {
    if (mark === other[i]) return true;
    return i === one.length - 1 && (SOFTENED[mark]?.split(' ').includes(other[i]!) ?? false);
  });
}

/**
 * Whether `whole` has the consonants of `parts` in the same order, whatever the vowels. One vowel may be lost
 * (emotional, emotionally), but none may be added: crook + ed is not crooked. Z and S count as the same (house,
 * housed). So do SH and CH, which CMUdict mixes up (tension, tensions).
 */
export function keepsConsonants(parts: Sounds, whole: Sounds): boolean {
  const lost = beats(parts) - beats(whole);
  return (lost === 0 || lost === 1) && consonants(parts).join(' ') === consonants(whole).join(' ');
}

/** Counts runs of vowels. Two adjacent vowels, like AY ER in fire, count as one. */
function beats(sounds: Sounds): number {
  return sounds.filter((sound, i) => VOWEL.test(sound) && !VOWEL.test(sounds[i - 1] ?? '')).length;
}

const MERGED: Record<string, string> = { Z: 'S', DH: 'TH', CH: 'SH', ER: 'R' };

function consonants(sounds: Sounds): string[] {
  return sounds
    .filter((sound) => sound !== 'Y' && (sound === 'ER' || !VOWEL.test(sound)))
    .map((sound) => MERGED[sound] ?? sound)
    .filter((sound, i, all) => sound !== all[i - 1]);
}
