import { hasVowel, isLong } from '../alignment/sounds.ts';
import { isRegular } from '../patterns/name-pattern.ts';
import { findRule, type Rule } from '../rule.ts';
import type { SyllableType } from '../types.ts';
import { affixSyllables } from './affix-syllables.ts';
import type { PlacedSpelling } from './cut-place.ts';

/** A syllable, with the spelling that has its vowel. */
interface TypePlace {
  readonly vowel: PlacedSpelling;
  /**
   * The vowel's letters, or the letters before an ending changed them. A remaining single u keeps its own letter: the u
   * of valuable, from ue.
   */
  readonly letters: string;
  /** Spellings after the vowel. They include spellings of the next syllable that extend into this one. */
  readonly behind: readonly PlacedSpelling[];
  /** The consonants in `behind` that close the vowel. */
  readonly after: readonly PlacedSpelling[];
  /** The letters of the syllable. */
  readonly text: string;
  readonly end: number;
  readonly word: string;
}

/** A rule for the type of one syllable. Its examples give the types of all syllables in a word. */
export interface TypeRule extends Rule<TypePlace> {
  readonly type: SyllableType | ((place: TypePlace) => SyllableType);
}

const WEAK = new Set(['AX', 'IX', 'Y.AX']);
const SHORT: Readonly<Record<string, string>> = { a: 'AE', e: 'EH', i: 'IH', o: 'AA AO', u: 'AH', y: 'IH' };

const isSplit = ({ letters }: TypePlace): boolean => letters[1] === '_';
/** True if the vowel is a single letter whose spelling lost its silent e to an ending. */
const isLetterOfSplit = (place: TypePlace): boolean => isSplit(place) && place.vowel.letters.length === 1;
const isOne = ({ letters }: TypePlace): boolean => /^[a-z]$/.test(letters);
const isClosed = ({ after }: TypePlace): boolean => after.some((one) => !one.ending);

/**
 * The rules for the type of a syllable (common practice, no source):
 *
 * - `closed`: one vowel letter, short or weak, with a consonant after it
 * - `open`: one vowel letter at the end, long or weak
 * - `vce`, `team`, `r-controlled`, `consonant-le`: by the spelling of the vowel
 * - `other`: any sound that a reader would not expect from the type
 *
 * An ending does not close a vowel.
 */
export const TYPE_RULES: readonly TypeRule[] = [
  {
    name: 'an r that went over to the next syllable leaves no r-controlled one',
    example: 'sto.ry (other, open)',
    counterExample: 'for.ty (r-controlled, open)',
    applies: ({ letters, text }) => /r/.test(letters) && !text.includes('r'),
    type: 'other',
  },
  {
    name: 'consonant-le',
    example: 'ta.ble (open, consonant-le)',
    counterExample: 'ho.tel (open, closed)',
    applies: ({ vowel }) => vowel.spells === 'le' && vowel.sound === 'AX.L',
    type: 'consonant-le',
  },
  {
    name: 'an ending inside a base has the type of the ending',
    example: 'fig.ure (closed, r-controlled)',
    counterExample: 'hun.dred (closed, closed)',
    applies: (place) => endingType(place) !== undefined,
    type: (place) => endingType(place)!,
  },
  {
    name: 'a vowel that its letters do not regularly say, or with a silent e behind it, is of no type',
    example: 'said (other)',
    counterExample: 'rain (team)',
    applies: ({ letters, vowel, behind }) =>
      !isRegular(letters, vowel.sound) || behind.some((one) => one.letters === 'e' && one.sound === '-'),
    type: 'other',
  },
  {
    name: 'a long vowel whose silent e an ending took, at the end of the syllable, is open',
    example: 'fa.mous (open, other)',
    counterExample: 'hope.ful (vce, closed)',
    applies: (place) => isLetterOfSplit(place) && place.vowel.end === place.end && isLong(place.vowel.sound),
    type: 'open',
  },
  {
    name: 'a weak vowel whose silent e an ending took is closed before a consonant, else open',
    example: 'en.gin.eer (closed, closed, r-controlled)',
    counterExample: 'en.gine (closed, other)',
    applies: (place) => isLetterOfSplit(place) && WEAK.has(place.vowel.sound),
    type: ({ after }) => (after.length > 0 ? 'closed' : 'open'),
  },
  {
    name: 'a vowel with a silent e that is not long is of no type, nor are o_e in lose and i_e in police',
    example: 'po.lice (open, other)',
    counterExample: 'nice (vce)',
    applies: (place) =>
      isSplit(place) &&
      (!isLong(place.vowel.sound) ||
        (place.letters === 'o_e' && place.vowel.sound !== 'OW') ||
        place.letters + place.vowel.sound === 'i_eIY'),
    type: 'other',
  },
  {
    name: 'a long vowel with a silent e behind its consonant is vowel-consonant-e',
    example: 'in.side (closed, vce)',
    counterExample: 'give (other)',
    applies: isSplit,
    type: 'vce',
  },
  {
    name: 'ture, sure and ssure are of no type',
    example: 'pic.ture (closed, other)',
    counterExample: 'cure (r-controlled)',
    applies: ({ letters }) => /^s?s?[ts]ure$/.test(letters),
    type: 'other',
  },
  {
    name: 'a vowel spelt with r that is heard as r is r-controlled',
    example: 'har.bor (r-controlled, r-controlled)',
    counterExample: 'car.ry (closed, open)',
    applies: ({ letters, vowel }) =>
      /r/.test(letters) && (vowel.sound.endsWith('R') || vowel.sound.endsWith('ER')),
    type: 'r-controlled',
  },
  {
    name: 'a, e, i or au before an r of its own is r-controlled where the r does not only close a short vowel',
    example: 'di.no.saur (open, open, r-controlled)',
    counterExample: 'spir.it (closed, closed)',
    applies: (place) => /^(au|[aei])$/.test(place.letters) && place.after.length > 0 && endsInR(place),
    type: 'r-controlled',
  },
  {
    name: 'one vowel letter before a last consonant that is spelt with an e is of no type',
    example: 'have (other)',
    counterExample: 'hand (closed)',
    applies: (place) => isOne(place) && isClosed(place) && endsInMuteE(place),
    type: 'other',
  },
  {
    name: 'one vowel letter, short or weak, with a consonant behind it is closed',
    example: 'nap.kin (closed, closed)',
    counterExample: 'old (other)',
    applies: (place) =>
      isOne(place) && isClosed(place) && (isShort(place) || isWeak(place) || isBeforeR(place)),
    type: 'closed',
  },
  {
    name: 'one vowel letter at the end of the syllable, long or weak, is open',
    example: 'spi.der (open, r-controlled)',
    counterExample: 'fa.ther (other, r-controlled)',
    applies: (place) => isOne(place) && !isClosed(place) && isOpen(place),
    type: 'open',
  },
  {
    name: 'one vowel letter of any other value is of no type',
    example: 'old (other)',
    counterExample: 'odd (closed)',
    applies: isOne,
    type: 'other',
  },
  {
    name: 'a vowel team before a gh that is heard is of no type',
    example: 'tough (other)',
    counterExample: 'caught (team)',
    applies: ({ letters, after }) => isTeam(letters) && after[0]?.letters === 'gh',
    type: 'other',
  },
  {
    name: 'two vowel letters, and those with gh, are a vowel team',
    example: 'rain (team)',
    counterExample: 'ran (closed)',
    applies: ({ letters }) => isTeam(letters),
    type: 'team',
  },
  {
    name: 'any other spelling of a vowel is of no type',
    example: 'talk (other)',
    counterExample: 'tall (other)',
    applies: () => true,
    type: 'other',
  },
];

/**
 * Returns the type of the syllable from `start` to `end`, which are offsets into the word. `inside` has the spellings
 * of the syllable.
 */
export function classifySyllable(
  inside: readonly PlacedSpelling[],
  start: number,
  end: number,
  word: string,
): SyllableType {
  const at = inside.findIndex(
    (one) => one.start >= start && hasVowel(one.sound) && /[aeiouy]/.test(one.spells),
  );
  const vowel = inside[at];
  if (!vowel) return 'other';
  // In valuable, an ending left only the u of ue.
  const letters = vowel.letters.length === 1 && vowel.spells[1] !== '_' ? vowel.letters : vowel.spells;
  const behind = inside.slice(at + 1);
  const after = behind.filter((one) => one.start < end && closes(one));
  const place: TypePlace = { vowel, letters, behind, after, text: word.slice(start, end), end, word };
  const { type } = findRule(TYPE_RULES, place)!;
  return typeof type === 'string' ? type : type(place);
}

/**
 * Returns the type of an ending that is one syllable and has one spelling with a vowel and other sounds: the ic of
 * music. air is excluded, because it may be a word.
 */
function endingType({ letters, vowel: { sound } }: TypePlace): SyllableType | undefined {
  if (letters.length < 2 || !sound.includes('.') || sound === 'EH.R') return undefined;
  const types = affixSyllables('suffix', letters, sound)?.types;
  return types?.length === 1 ? types[0] : undefined;
}

/**
 * True for an r at the end or before a consonant (dinosaur, souvenir). Also true for an r after an a pronounced as in
 * care, before -y, -ian or -ious (li.brar.y, a.quar.i.um). False for the r of spir.it and char.i.ty, which only closes
 * a short vowel.
 */
function endsInR({ vowel, behind, end, word }: TypePlace): boolean {
  const r = behind[0];
  if (r?.letters !== 'r' || r.sound !== 'R') return false;
  const next = word.slice(end);
  if (vowel.letters === 'a' && vowel.sound === 'EH' && /^(y|i[aeou]|ily|ea)/.test(next)) return true;
  return !(r.end === end && /^[aeiouy]/.test(next));
}

function endsInMuteE({ after, text }: TypePlace): boolean {
  const closing = after.filter((one) => !one.ending);
  return closing.length === 1 && /^(.|th)e$/.test(closing[0]!.letters) && text.endsWith('e');
}

function isShort({ vowel: { letters, sound } }: TypePlace): boolean {
  return SHORT[letters]?.split(' ').includes(sound) ?? false;
}

function isWeak({ vowel }: TypePlace): boolean {
  return WEAK.has(vowel.sound);
}

function isBeforeR({ vowel, after }: TypePlace): boolean {
  return after.find((one) => !one.ending)?.letters[0] === 'r' && /^(EH|IH|UH)$/.test(vowel.sound);
}

/** True for a long or weak vowel, for y, and for a vowel that r makes less than long: he.ro, ju.ry. */
function isOpen(place: TypePlace): boolean {
  const { letters, sound } = place.vowel;
  const longBeforeR = (letters === 'e' && sound === 'IH') || (letters === 'u' && /UH$/.test(sound));
  return isLong(sound) || isWeak(place) || longBeforeR || letters === 'y' || sound === 'Y.UH';
}

function isTeam(letters: string): boolean {
  return /^[aeiou][aeiouwy]$|gh$|^uy$|^ye$/.test(letters);
}

/**
 * True if a spelling closes its syllable. Silent gh, h and e leave a syllable open (high). A letter pronounced only
 * once together with the next letter closes the syllable: the l of fully.
 */
function closes({ letters, sound }: PlacedSpelling): boolean {
  return sound !== '-' || !/^(gh|h|w|[aeiou]+|')$/.test(letters);
}
