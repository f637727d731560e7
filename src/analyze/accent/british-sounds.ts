import { hasVowel } from '../alignment/sounds.ts';
import type { BuiltWord, WordSpelling } from '../build/built-word.ts';

/** The sounds of vowels before an r that is not heard. */
const WITHOUT_R: Readonly<Record<string, string>> = {
  AA: 'AR',
  AO: 'OR',
  EH: 'EA',
  IH: 'IA',
  IY: 'IA',
  UH: 'UA',
  AY: 'AYA',
  AW: 'AWA',
};

/**
 * Returns the sound that is heard in British English for each spelling of a whole word. An r is heard only before a
 * vowel. If the r is not heard, the vowel before the r changes.
 */
export function hearBritish({ parts }: BuiltWord): string[] {
  const spellings = parts.flatMap(({ role, spellings: own }, i) => {
    if (role === 'base') return own;
    // If the r is not heard, aren't and weren't have one syllable each.
    const afterR = /R$/.test(parts[i - 1]?.spellings.at(-1)?.sound ?? '');
    return own.map((one) => {
      if (role === 'clitic' && afterR && one.letters === "n't") return { ...one, heard: 'N.T' };
      return one.sound === 'ER' ? { ...one, heard: 'AX' } : one;
    });
  });
  const heard: string[] = [];
  let beforeVowel = false;
  for (let i = spellings.length - 1; i >= 0; i--) {
    const one = spellings[i]!;
    const said = hearOne(one, spellings[i - 1], spellings[i + 1], beforeVowel, heard[i + 1] === '-');
    heard[i] = said;
    if (said !== '-') beforeVowel = hasVowel(said.split('.')[0]!);
  }
  return heard;
}

/** A spelling and its neighbours. */
interface Place extends WordSpelling {
  readonly before: WordSpelling | undefined;
  readonly after: WordSpelling | undefined;
  /** Whether a vowel is heard next. */
  readonly beforeVowel: boolean;
  /** Whether the next letters are silent. */
  readonly beforeSilent: boolean;
  /** The r that is heard between this spelling and a vowel: `.R`, or an empty string. */
  readonly r: string;
}

/** Rules for spellings whose sound depends on their neighbours. The first rule that applies is used. */
const BY_PLACE: readonly {
  readonly applies: (place: Place) => boolean;
  readonly hears: (place: Place) => string;
}[] = [
  { applies: ({ heard }) => heard !== undefined, hears: ({ heard, r }) => heard! + r },
  // In bury and irregular, a short vowel and the r of the next syllable are heard.
  {
    applies: ({ letters, sound }) => /^(ur:EH|ir:IH)\.R$/.test(`${letters}:${sound}`),
    hears: ({ sound }) => sound,
  },
  {
    applies: ({ letters, sound }) => /^[aeo]ry$/.test(letters) && sound.endsWith('R.IY'),
    hears: () => 'AX.R.IY',
  },
  {
    applies: ({ sound }) => sound === 'R',
    hears: ({ before, beforeVowel }) => (beforeVowel || before === undefined ? 'R' : '-'),
  },
  { applies: ({ sound }) => sound === 'ER', hears: ({ r }) => `ER${r}` },
  {
    applies: ({ letters, sound, before, after, beforeSilent }) =>
      /^(a:EH|e:IH|ae:EH|ey:EH)$/.test(`${letters}:${sound}`) &&
      after?.sound === 'R' &&
      (before !== undefined || beforeSilent || sound === 'EH'),
    hears: ({ sound }) => (sound === 'EH' ? 'EA' : 'IA'),
  },
  {
    applies: ({ letters, sound, after }) =>
      /^(u|eu|ou):(Y\.)?UH$/.test(`${letters}:${sound}`) && after?.sound === 'R',
    hears: ({ sound }) => sound.replace('UH', 'UA'),
  },
  // In souvenir and where, the vowel is heard without the r.
  {
    applies: ({ sound, after, beforeSilent }) =>
      beforeSilent && after?.sound === 'R' && WITHOUT_R[sound] !== undefined,
    hears: ({ sound }) => WITHOUT_R[sound]!,
  },
  {
    applies: ({ letters, sound }) => `${letters}:${sound}` === 'ure:UH.R',
    hears: ({ r }) => `OR${r}`,
  },
];

function hearOne(
  spelling: WordSpelling,
  before: WordSpelling | undefined,
  after: WordSpelling | undefined,
  beforeVowel: boolean,
  beforeSilent: boolean,
): string {
  const { letters, sound, heard } = spelling;
  if (heard === undefined && isSaidAlike(sound)) return sound;
  const r = beforeVowel && /r(e|h|rh)?$/.test(letters) ? '.R' : '';
  const place: Place = { ...spelling, before, after, beforeVowel, beforeSilent, r };
  const known = BY_PLACE.find(({ applies }) => applies(place));
  return known ? known.hears(place) : hearParts(place);
}

/** Converts a spelling sound by sound. An r is heard only before a vowel. */
function hearParts({ letters, sound, before, beforeVowel }: Place): string {
  const parts = sound.split('.');
  const said: string[] = [];
  for (const [i, part] of parts.entries()) {
    const next = parts[i + 1];
    const nextIsVowel = next === undefined ? beforeVowel : hasVowel(next);
    if (part === 'R' && i > 0) {
      if (nextIsVowel) said.push('R');
      continue;
    }
    if (part === 'ER') said.push(parts.length > 1 ? 'AX' : 'ER', ...(nextIsVowel ? ['R'] : []));
    else if (next === 'R' && WITHOUT_R[part]) said.push(WITHOUT_R[part]!);
    else if (part === 'AO') said.push('OR');
    else if (part === 'AA') said.push(isShortO(letters, before) ? 'AA' : 'AR');
    else said.push(part);
  }
  return said.join('.');
}

/**
 * Returns whether the sound AA is pronounced as in dock. This is so if an o or a w spells the sound (swan, knowledge).
 * Otherwise the sound is pronounced as in father (spa).
 */
function isShortO(letters: string, before: WordSpelling | undefined): boolean {
  if (/o/.test(letters) && !letters.startsWith('oi')) return true;
  return letters === 'a' ? /(^|\.)W$/.test(before?.sound ?? '') : /^(au|en|e)/.test(letters);
}

/**
 * Returns whether a sound is pronounced alike in both accents. Such a sound has no r and none of the vowels that
 * change.
 */
function isSaidAlike(sound: string): boolean {
  let is = alike.get(sound);
  if (is === undefined) {
    is = !/A[AO]|R\b|EH|IH|UH/.test(sound);
    alike.set(sound, is);
  }
  return is;
}
/** A cache of the results for the few hundred unit sounds. */
const alike = new Map<string, boolean>();
