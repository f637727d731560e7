import { findRule, type Rule } from '../rule.ts';
import { type CutPlace, type PlacedSpelling, placeBetween } from './cut-place.ts';

/** A rule for where a syllable ends. Its examples and counter-examples have a dot at every cut. */
export interface CutRule extends Rule<CutPlace> {
  /** Offset of the cut in the word. */
  readonly cut: (place: CutPlace) => number;
}

const STAYS_LEFT = /^(x|ck|tch|dge|dg|ng)$/;
const DIGRAPH = /^(th|ch|sh|ph|wh|gh|kn|wr|gn|rh|gu|qu|su|tch)$/;
/** The beginnings that a syllable may have with l, r or w as the second letter: a.pron, re.ply, be.tween. */
const LIQUID_ONSET = /^([bcfgkp]l|[bcdfgkpt]r|phr|thr|shr|chr|tw|chl|phl)$/;
const ONSET = /^(s[ckmnptw]|sph|sch|squ|s[cpt]r|spl|[bcfgkps]l|[bcdfgkpt]r|thr|shr|chr|phr|tw|qu|chl|phl)$/;

const beforeNext = ({ next }: CutPlace): number => next.start;
const beforeFirst = ({ first }: CutPlace): number => first!.start;
const afterFirst = ({ first }: CutPlace): number => first!.end;
const insideFirst = ({ first }: CutPlace): number => first!.start + 1;
const beforeLast = ({ last }: CutPlace): number => last!.start;
const insideLast = ({ last }: CutPlace): number => last!.start + 1;

/**
 * The rules for cutting a word between two vowels. They follow common practice, no source; dictionaries differ in
 * details. Consonants are counted as pronounced spellings: ck, sh and ff each count as one.
 */
export const CUT_RULES: readonly CutRule[] = [
  {
    name: 'before consonant-le, ck, x, tch, dge and ng stay with the vowel',
    example: 'tack.le',
    counterExample: 'ta.ble',
    applies: (place) => isConsonantLe(place) && (!place.last || STAYS_LEFT.test(place.last.letters)),
    cut: beforeNext,
  },
  {
    name: 'before consonant-le, two letters of one sound are split',
    example: 'rid.dle',
    counterExample: 'ti.tle',
    applies: (place) => isConsonantLe(place) && isSplittable(place.last!.letters),
    cut: insideLast,
  },
  {
    name: 'consonant-le, and a final -re, take one consonant with them',
    example: 'a.cre',
    counterExample: 'car.ry',
    applies: isConsonantLe,
    cut: beforeLast,
  },
  {
    name: 'the endings ty and fy begin with their consonant',
    example: 'safe.ty',
    counterExample: 'hast.y',
    applies: ({ next }) => /^[tf]y$/.test(next.letters),
    cut: beforeNext,
  },
  {
    name: 'ss before a final syllable that is one unit is split',
    example: 'mis.sion',
    counterExample: 'lo.tion',
    applies: ({ next }) => isFinalSyllable(next) && /^ss/.test(next.letters),
    cut: ({ next }) => next.start + 1,
  },
  {
    name: 'a final syllable that is one unit begins with its consonant',
    example: 'lo.tion',
    counterExample: 'fa.mous',
    applies: ({ next }) => isFinalSyllable(next),
    cut: beforeNext,
  },
  {
    name: 'a silent e after the consonant ends the syllable',
    example: 'juke.box',
    counterExample: 'rep.tile',
    applies: ({ vowel, first }) => vowel.letters[1] === '_' && first !== undefined,
    cut: ({ vowel, consonants }) => closingE(vowel, consonants),
  },
  {
    name: 'an r that is spelt with the vowel goes over to the next vowel',
    example: 'sto.ry',
    counterExample: 'gen.er.al',
    applies: ({ first, vowel, next }) => !first && sharesR(vowel, next),
    cut: ({ vowel }) => vowel.end - 1,
  },
  {
    name: 'two vowels without a consonant are parted',
    example: 'po.em',
    counterExample: 'sto.ry',
    applies: ({ first }) => !first,
    cut: beforeNext,
  },
  {
    name: 'a double letter is split',
    example: 'muf.fin',
    counterExample: 'riv.er',
    applies: ({ first }) => isDouble(first!.letters),
    cut: insideFirst,
  },
  {
    name: 'xc, xh, dj and cqu are split',
    example: 'ex.cite',
    counterExample: 'tax.i',
    applies: ({ first }) => /^(xc|xh|dj|cqu)$/.test(first!.letters),
    cut: insideFirst,
  },
  {
    name: 'x stays with the vowel',
    example: 'tax.i',
    counterExample: 'ba.con',
    applies: ({ last }) => /^xi?$/.test(last!.letters),
    cut: insideLast,
  },
  {
    name: 'a silent p is parted from b or t',
    example: 'cup.board',
    counterExample: 'clip.board',
    applies: ({ last }) => /^p[bt]$/.test(last!.letters),
    cut: insideLast,
  },
  {
    name: 'a short or weak i after the first letter keeps a single s',
    example: 'dis.as.ter',
    counterExample: 'bi.son',
    applies: ({ consonants, vowel, first }) => consonants.length === 1 && isDis(vowel, first!),
    cut: afterFirst,
  },
  {
    name: 'one consonant spelt ck, tch, dge or ng goes left',
    example: 'rock.et',
    counterExample: 'ro.dent',
    applies: ({ consonants, first }) => consonants.length === 1 && STAYS_LEFT.test(first!.letters),
    cut: afterFirst,
  },
  {
    name: 'one consonant goes right after a vowel that is not short',
    example: 'spi.der',
    counterExample: 'riv.er',
    applies: ({ consonants, short }) => consonants.length === 1 && !short,
    cut: beforeFirst,
  },
  {
    name: 'gu and su are split after a short vowel',
    example: 'jag.uar',
    counterExample: 'lan.guage',
    applies: ({ consonants, first }) => consonants.length === 1 && /^[gs]u$/.test(first!.letters),
    cut: insideFirst,
  },
  {
    name: 'qu is split after a short vowel',
    example: 'liq.uid',
    counterExample: 'e.qual',
    applies: ({ consonants, first, short }) =>
      consonants.length === 1 && first!.letters === 'qu' && first!.sound === 'K.W' && short,
    cut: insideFirst,
  },
  {
    name: 'two letters of one sound that are no digraph are split after a short vowel',
    example: 'lis.ten',
    counterExample: 'fath.om',
    applies: ({ consonants, first }) => consonants.length === 1 && isSplittable(first!.letters),
    cut: insideFirst,
  },
  {
    name: 'one consonant goes left after a short vowel',
    example: 'riv.er',
    counterExample: 'spi.der',
    applies: ({ consonants }) => consonants.length === 1,
    cut: afterFirst,
  },
  {
    name: 'of two consonants, a first ck, x, tch, dge or ng goes left',
    example: 'ex.pect',
    counterExample: 'nap.kin',
    applies: ({ pair, first }) => pair !== '' && STAYS_LEFT.test(first!.letters),
    cut: afterFirst,
  },
  {
    name: 'sc, sp and st go right after an r-controlled vowel, sc of scope and sph of sphere always',
    example: 'per.spire',
    counterExample: 'pars.nip',
    applies: ({ pair, vowel, next }) => isKeptPair(pair, vowel, next),
    cut: beforeFirst,
  },
  {
    name: 'a consonant and an i said like y go right after a long vowel',
    example: 'ju.nior',
    counterExample: 'on.ion',
    applies: ({ pair, short, last }) => pair !== '' && !short && last!.letters === 'i' && last!.sound === 'Y',
    cut: beforeFirst,
  },
  {
    name: 'a pair with l, r or w that can begin a word goes right after a long or weak vowel',
    example: 'se.cret',
    counterExample: 'fab.ric',
    applies: ({ pair, short }) => !short && LIQUID_ONSET.test(pair),
    cut: beforeFirst,
  },
  {
    name: 'sl goes right after a first letter',
    example: 'a.sleep',
    counterExample: 'pars.ley',
    applies: ({ pair, short, vowel }) => !short && pair === 'sl' && vowel.start === 0,
    cut: beforeFirst,
  },
  {
    name: 'a pair that can begin a word goes right after a first long or weak e',
    example: 'be.speak',
    counterExample: 'es.cape',
    applies: (place) => !place.short && followsFirstE(place) && ONSET.test(place.pair),
    cut: beforeFirst,
  },
  {
    name: 'of two consonants one goes each way',
    example: 'nap.kin',
    counterExample: 'a.pron',
    applies: ({ pair }) => pair !== '',
    cut: beforeLast,
  },
  {
    name: 'a first trans stays whole before a consonant',
    example: 'trans.mit',
    counterExample: 'tran.sit',
    applies: ({ vowel, consonants }) =>
      vowel.start === 2 &&
      vowel.letters === 'a' &&
      consonants[0]!.letters === 'n' &&
      consonants[1]!.letters === 's',
    cut: ({ consonants }) => consonants[1]!.end,
  },
  {
    name: 'three consonants that can begin a word go right after a first long or weak e',
    example: 'de.stroy',
    counterExample: 'mon.ster',
    applies: (place) => !place.short && followsFirstE(place) && ONSET.test(lettersOf(place.consonants)),
    cut: beforeFirst,
  },
  {
    name: 'of three consonants and more, the longest run that can begin a word goes right, and not the first',
    example: 'pump.kin',
    counterExample: 'nap.kin',
    applies: () => true,
    cut: ({ consonants }) =>
      consonants.find((_, i) => i > 0 && ONSET.test(lettersOf(consonants.slice(i))))?.start ??
      consonants.at(-1)!.start,
  },
];

/**
 * Returns the offset in the word where the syllable of `vowel` ends. The spellings `between` come before the vowel
 * `next`.
 */
export function cutBetween(
  vowel: PlacedSpelling,
  between: readonly PlacedSpelling[],
  next: PlacedSpelling,
  firstInWord: boolean,
  onset = '',
): number {
  const place = placeBetween(vowel, between, next, firstInWord, onset);
  return findRule(CUT_RULES, place)!.cut(place);
}

function isConsonantLe({ next }: CutPlace): boolean {
  return next.spells === 'le' || (next.letters === 're' && next.sound === 'ER');
}

/** Returns whether the vowel is the first e of a word and follows a consonant: destroy, not escape. */
function followsFirstE({ firstInWord, vowel }: CutPlace): boolean {
  return firstInWord && vowel.letters === 'e' && vowel.start > 0;
}

function lettersOf(consonants: readonly PlacedSpelling[]): string {
  return consonants.map(({ letters }) => letters).join('');
}

/** Returns whether a pair with s stays together and begins a syllable: per.spire, tele.scope, bio.sphere. */
function isKeptPair(pair: string, vowel: PlacedSpelling, next: PlacedSpelling): boolean {
  if (/^s[cpt]$/.test(pair) && /r$/.test(vowel.letters)) return true;
  return (pair === 'sc' && next.letters === 'o_e') || (pair === 'sph' && /^er/.test(next.letters));
}

/** Returns whether a unit is a last syllable that begins with a consonant: tion, ture, cian; not ous. */
function isFinalSyllable({ letters, sound }: PlacedSpelling): boolean {
  return /^[bcdfgst]+[aeiou]/.test(letters) && /^(SH|CH|ZH|JH|S)\.|^(CH|ZH|SH)\.ER$/.test(sound);
}

function closingE(vowel: PlacedSpelling, consonants: readonly PlacedSpelling[]): number {
  const width = (one: PlacedSpelling): number => one.end - one.start - one.letters.length;
  const closed = consonants.find((one) => width(one) > 0);
  return (closed ?? consonants[0] ?? vowel).end;
}

/** Returns whether a consonant is doubled: the ff of muffin, the cch of zucchini. */
function isDouble(letters: string): boolean {
  return /^(.)\1(e|h)?$/.test(letters);
}

/** Returns whether letters can be split because they form no digraph: the st of castle, the bt of subtle. */
function isSplittable(letters: string): boolean {
  return letters.length > 1 && !DIGRAPH.test(letters) && !STAYS_LEFT.test(letters);
}

/** Returns whether the vowel and the next spelling belong to dis- at the start of a word: dis.ap.point, dis.ease. */
function isDis(vowel: PlacedSpelling, next: PlacedSpelling): boolean {
  return vowel.start === 1 && vowel.letters === 'i' && next.letters === 's' && /^I[HX]$/.test(vowel.sound);
}

/**
 * Returns whether the r of a vowel spelling goes to the next vowel: mir.ror, his.to.ry, sto.ries, nat.u.ral; not
 * gen.er.al.
 */
function sharesR(vowel: PlacedSpelling, next: PlacedSpelling): boolean {
  return /rr$|^ur$/.test(vowel.letters) || (vowel.letters === 'or' && next.spells === 'y');
}
