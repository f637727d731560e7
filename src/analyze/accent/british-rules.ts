import type { WordSpelling } from '../build/built-word.ts';
import { findRule, type Rule } from '../rule.ts';
import words from './british-words.json' with { type: 'json' };

/** A spelling in a word, with its American pronunciation. */
export interface AmericanPlace {
  readonly word: string;
  readonly unit: WordSpelling;
  /** The letters and the sound of the spelling: a:EH. */
  readonly spelling: string;
  readonly before: WordSpelling | undefined;
  readonly after: WordSpelling | undefined;
  /** The letters of the spellings before (`ahead`) and after (`rest`) this spelling, without a silent e. */
  readonly ahead: string;
  readonly rest: string;
  /** Whether the a of bath is pronounced as in father. */
  readonly broadBath: boolean;
}

/**
 * A rule for spellings whose British sounds differ from the American sounds. The sounds are still written as in the
 * table, with an r wherever the spelling has one, so that the spelling gets its usual name. `british-sounds.ts` finds
 * the sounds that are heard. Each example gives its spelling.
 */
export interface BritishRule extends Rule<AmericanPlace> {
  readonly gives: (place: AmericanPlace) => readonly WordSpelling[];
}

const bath: ReadonlySet<string> = new Set(words.bath);
const wideA: ReadonlySet<string> = new Set(words.wideA);
const shortOral: ReadonlySet<string> = new Set(words.shortOral);
const VOWEL = /^[aeiouy]/;
/** An r followed by a vowel. */
const R_VOWEL = /^rr?h?[aeiouy]/;
const HAS_VOWEL = /[aeiouy]/;

const say =
  (sound: string) =>
  ({ unit }: AmericanPlace): WordSpelling[] => [{ ...unit, sound }];
const hear =
  (heard: string) =>
  ({ unit }: AmericanPlace): WordSpelling[] => [{ ...unit, heard }];

/** Separates the vowel and the r of or, our and irr: o and r in orange. */
const apart =
  (sound: string) =>
  ({ unit: { letters } }: AmericanPlace): WordSpelling[] => {
    const at = letters.indexOf('r');
    return [
      { letters: letters.slice(0, at), sound },
      { letters: letters.slice(at), sound: 'R' },
    ];
  };

/**
 * Returns whether an o before r is long, as in story, memorial and chorus. Such an o is at the end of its syllable and
 * is not short.
 */
function isLongO({ word, unit, rest, ahead }: AmericanPlace): boolean {
  if (shortOral.has(word) || unit.letters === 'orr') return false;
  if (/^(y|ie[sd]?)$/.test(rest)) return true;
  return (
    /^[ie][aou]/.test(rest) ||
    /^(al|ally|us|uses|um|a|as|ing)$/.test(rest) ||
    /^ee/.test(rest) ||
    ahead === 'ch'
  );
}

/** Returns whether an a before r is pronounced as in air: parent, various and Mary. */
function isWideA({ word, ahead, rest }: AmericanPlace): boolean {
  if (wideA.has(word)) return true;
  return /^r(e?[aou]|i[aou]|ea)/.test(rest)
    ? /^r(i[aou]|ea)/.test(rest)
    : /^r(y|ie[sd]?)$/.test(rest) && isFirst(ahead);
}

const isFirst = (ahead: string): boolean => !HAS_VOWEL.test(ahead);
const soundBefore = ({ before }: AmericanPlace): string => before?.sound.split('.').at(-1) ?? '';

/**
 * The rules in the order in which they are tried. The first rule that applies is used. A spelling without such a rule
 * is pronounced alike in both accents.
 */
export const BRITISH_RULES: readonly BritishRule[] = [
  {
    name: 'or before a vowel is short o and r',
    example: 'orange: o AA r R',
    counterExample: 'story: or OR.R',
    applies: (place) => /^orr?:AO\.R$/.test(place.spelling) && VOWEL.test(place.rest) && !isLongO(place),
    gives: apart('AA'),
  },
  {
    name: 'the o of -ory is weak behind two syllables',
    example: 'category: or AX.R',
    counterExample: 'story: or OR.R',
    applies: ({ spelling, rest, ahead }) =>
      spelling === 'or:AO.R' && /^(y|ies|ily)$/.test(rest) && HAS_VOWEL.test(ahead),
    gives: hear('AX'),
  },
  {
    name: 'o before f, s, th, ng and g is short o',
    example: 'dog: o AA',
    counterExample: 'fork: or OR',
    applies: ({ spelling, rest }) => /^(o|o_e|ou|ho):AO$/.test(spelling) && !/^r/.test(rest),
    // The o_e of gone keeps its catalogue row. Only the sound that is heard changes.
    gives: (place) => (place.unit.letters === 'o_e' ? hear('AA')(place) : say('AA')(place)),
  },
  {
    name: 'our and ur before a vowel are short u and r',
    example: 'courage: ou AH r R',
    counterExample: 'journey: our ER',
    applies: ({ spelling, rest }) => /^(our|urr):ER$/.test(spelling) && VOWEL.test(rest),
    gives: apart('AH'),
  },
  {
    name: 'err before a vowel is short e and r',
    example: 'referral: e EH rr R',
    counterExample: 'fern: er ER',
    applies: ({ spelling, rest }) => spelling === 'err:ER' && VOWEL.test(rest),
    gives: apart('EH'),
  },
  {
    name: 'irr before a vowel is short i and r',
    example: 'squirrel: i IH rr R',
    counterExample: 'bird: ir ER',
    applies: ({ spelling, rest }) => /^irr:ER$/.test(spelling) && VOWEL.test(rest),
    gives: apart('IH'),
  },
  {
    name: 'the a of -ary is weak behind other syllables',
    example: 'secretary: a AX',
    counterExample: 'vary: a EA',
    applies: ({ spelling, rest, ahead }) =>
      spelling === 'a:EH' && /^r(y|ies|ily)$/.test(rest) && HAS_VOWEL.test(ahead),
    gives: say('AX'),
  },
  {
    name: 'the e of -ery is weak behind two syllables',
    example: 'cemetery: e AX',
    counterExample: 'very: e EH',
    applies: ({ spelling, rest, ahead }) =>
      spelling === 'e:EH' && /^r(y|ies)$/.test(rest) && /[aeiouy][^aeiouy]+[aeiouy]/.test(ahead),
    gives: say('AX'),
  },
  {
    name: 'a before r and a vowel is short a',
    example: 'carry: a AE',
    counterExample: 'various: a EA',
    applies: (place) => place.spelling === 'a:EH' && R_VOWEL.test(place.rest) && !isWideA(place),
    gives: say('AE'),
  },
  {
    name: 'the a of bath and grass is as in father, where the group says so',
    example: 'bath: a AR',
    counterExample: 'math: a AE',
    applies: ({ spelling, word, rest, broadBath }) =>
      broadBath &&
      spelling === 'a:AE' &&
      bath.has(word) &&
      /^(f|ph|s|th|ch|nc|nt|nd|nsw|mp|n(a|as)?$|nas?$|v|m)/.test(rest),
    gives: say('AA'),
  },
  {
    name: 'al before f and v is as in father',
    example: 'half: al AR',
    counterExample: 'palm: al AR',
    applies: ({ spelling, rest, broadBath }) => spelling === 'al:AE' && broadBath && /^[fv]/.test(rest),
    gives: say('AA'),
  },
  {
    name: 'au said as short a is as in father',
    example: 'laugh: au AR',
    counterExample: 'haul: au OR',
    applies: ({ spelling, broadBath }) => spelling === 'au:AE' && broadBath,
    gives: say('AR'),
  },
  {
    name: 'au and aw before -rel and -ren are short o',
    example: 'laurel: au AA',
    counterExample: 'aura: au OR',
    applies: ({ spelling, rest }) => /^(au|aw):A[AO]$/.test(spelling) && /^re[ln]/.test(rest),
    gives: hear('AA'),
  },
  {
    name: 'au and aw are aw',
    example: 'auburn: au OR',
    counterExample: 'dock: o AA',
    applies: ({ spelling }) => /^(au|aw):AA$/.test(spelling),
    gives: say('AO'),
  },
  {
    name: 'a after w is short o',
    example: 'what: a AA',
    counterExample: 'wall: a OR',
    applies: (place) =>
      /^a:A[OH]$/.test(place.spelling) &&
      soundBefore(place) === 'W' &&
      !/^(r[^r]|r$|l[^l]|l$|ll$|ll[^aeiou])/.test(place.rest),
    gives: say('AA'),
  },
  {
    name: 'a said ah before two consonants is short a',
    example: 'pasta: a AE',
    counterExample: 'father: a AR',
    applies: (place) =>
      place.spelling === 'a:AA' &&
      soundBefore(place) !== 'W' &&
      /^([bcdfgkmnpstvz][bcdfgkmnpstvz]|zz)/.test(place.rest) &&
      !/^(th|sh|ch|ph)/.test(place.rest),
    gives: say('AE'),
  },
  {
    name: 'a said ah at the end of a longer word is weak',
    example: 'curricula: a AX',
    counterExample: 'spa: a AR',
    applies: ({ spelling, rest, ahead }) =>
      spelling === 'a:AA' && rest === '' && HAS_VOWEL.test(ahead) && !/[pmh]$/.test(ahead),
    gives: say('AX'),
  },
  {
    name: 'long oo after t, d and n is yoo',
    example: 'tune: u_e Y.UW',
    counterExample: 'rule: u_e UW',
    applies: (place) =>
      /^(u|u_e|ue|ew|eu|ui):UW$/.test(place.spelling) && /^(T|D|N)$/.test(soundBefore(place)),
    gives: say('Y.UW'),
  },
  {
    name: 'u before r after t, d and n is yoo',
    example: 'during: u Y.UA',
    counterExample: 'jury: u UA',
    applies: (place) =>
      /^(u:UH|ure:UH\.R)$/.test(place.spelling) &&
      /^(T|D|N)$/.test(soundBefore(place)) &&
      /r/.test(place.unit.letters + place.rest[0]),
    gives: ({ unit }) => [{ ...unit, sound: `Y.${unit.sound}` }],
  },
  {
    name: 'long oo of -sume and behind ex is yoo',
    example: 'assume: u_e Y.UW',
    counterExample: 'rule: u_e UW',
    applies: ({ spelling, rest, ahead }) =>
      (/^u(_e)?:UW$/.test(spelling) && ((/ss?$/.test(ahead) && /^m/.test(rest)) || /ex$/.test(ahead))) ||
      (spelling === 'ue:UW' && /(pur|en)s$/.test(ahead)) ||
      (spelling === 'eu:UW' && /c$/.test(ahead)),
    gives: say('Y.UW'),
  },
  {
    name: 'weak -ile is long i',
    example: 'fragile: i_e AY',
    counterExample: 'engine: i_e AX',
    applies: ({ spelling, rest }) => /^i_e:(AX|IX|IH)$/.test(spelling) && /^l(e?s?|ely|ed)$/.test(rest),
    gives: say('AY'),
  },
  {
    name: 'the t of -ntion is sh',
    example: 'intention: tion SH.AX.N',
    counterExample: 'question: tion CH.AX.N',
    applies: ({ spelling, ahead }) => /^(tion|sion):CH/.test(spelling) && ahead.endsWith('n'),
    gives: ({ unit }) => [{ ...unit, sound: unit.sound.replace('CH', 'SH') }],
  },
  {
    name: 'the i of -ization is long',
    example: 'organization: i AY',
    counterExample: 'hesitation: i AX',
    applies: ({ spelling, rest }) => /^i:(AX|IX)$/.test(spelling) && /^[zs]ation/.test(rest),
    gives: say('AY'),
  },
  {
    name: 'the o of -mony is weak',
    example: 'ceremony: o AX',
    counterExample: 'phony: o OW',
    applies: ({ spelling, rest, ahead }) =>
      spelling === 'o:OW' && /^n(y|ies)$/.test(rest) && /im$|em$|ri?m$/.test(ahead),
    gives: say('AX'),
  },
  {
    name: 'er, or, ar and our at the end of a longer word are weak',
    example: 'sister: er AX',
    counterExample: 'her: er ER',
    applies: ({ spelling, rest, ahead, word }) =>
      /^([eaio]r|our|re|eur|yr|ur):ER$/.test(spelling) &&
      HAS_VOWEL.test(ahead) &&
      /^(s|ed|)$/.test(rest) &&
      !/(f|def|inf|ref|pref|conf|transf|det|av)er$/.test(word.replace(/.*?((^|[^f])fer)$/, '$1')),
    gives: hear('AX'),
  },
  {
    name: 'the ire of a county is weak',
    example: 'shropshire: ire AX',
    counterExample: 'fire: ire AYA',
    applies: ({ spelling, rest, ahead }) =>
      spelling === 'ire:AY.R' && rest === '' && /[aeiouy].*sh$/.test(ahead),
    gives: hear('AX'),
  },
  {
    name: 'er before a vowel is weak',
    example: 'operate: er AX.R',
    counterExample: 'person: er ER',
    applies: ({ spelling, rest }) => /^(er|ar|or|ur|our|eur):ER$/.test(spelling) && VOWEL.test(rest),
    gives: hear('AX'),
  },
  {
    name: 'or and ar, said er, are weak but after w',
    example: 'forgotten: or AX',
    counterExample: 'worm: or ER',
    applies: (place) =>
      /^(or|ar|oar|our|uor):ER$/.test(place.spelling) &&
      (soundBefore(place) !== 'W' || place.unit.letters === 'ar') &&
      !(place.unit.letters === 'our' && isFirst(place.ahead)),
    gives: hear('AX'),
  },
  {
    name: 'er and ur behind other vowels are weak before a consonant, as far as no dictionary says otherwise',
    example: 'energy: er AX',
    counterExample: 'person: er ER',
    applies: ({ spelling, ahead }) => /^(er|ur):ER$/.test(spelling) && HAS_VOWEL.test(ahead),
    gives: hear('AX'),
  },
];

/** The spellings and sounds that a rule may apply to. All others skip the rules. */
const RULED =
  /^(orr?:AO\.R|(o|o_e|ou|ho):AO|(our|urr|irr|err):ER|a:(EH|AE|AA|AO|AH)|e:EH|al:AE|a[uw]:(AE|AA|AO)|ire:AY\.R|(u|u_e|ue|ew|eu|ui):UW|u:UH|ure:UH\.R|i:[AI]X|i_e:[AI][XH]|(tion|sion):CH.*|o:OW|.*:ER)$/;

export interface BritishWays {
  readonly broadBath: boolean;
}

/**
 * Converts a word's own spellings to their British pronunciation. The spellings of the words that it is made of are
 * left out.
 */
export function toBritish(
  word: string,
  spellings: readonly WordSpelling[],
  { broadBath }: BritishWays,
): readonly WordSpelling[] {
  if (!spellings.some(isRuled)) return spellings;
  return spellings.flatMap((_, i) => sayUnit(word, spellings, i, { broadBath }));
}

/**
 * Converts one of a word's spellings to its British pronunciation. Returns two spellings if the vowel and the r are
 * separated.
 */
export function sayUnit(
  word: string,
  spellings: readonly WordSpelling[],
  i: number,
  { broadBath }: BritishWays,
): readonly WordSpelling[] {
  const unit = spellings[i]!;
  if (!isRuled(unit) || unit.heard !== undefined) return [unit];
  const lettersOf = (some: readonly WordSpelling[]): string =>
    some.map(({ letters }) => letters.replace(/_e$/, '')).join('');
  const place: AmericanPlace = {
    word,
    unit,
    spelling: `${unit.letters}:${unit.sound}`,
    before: spellings[i - 1],
    after: spellings[i + 1],
    ahead: lettersOf(spellings.slice(0, i)),
    rest: lettersOf(spellings.slice(i + 1)),
    broadBath,
  };
  return findRule(BRITISH_RULES, place)?.gives(place) ?? [unit];
}

function isRuled(unit: WordSpelling): boolean {
  let is = ruled.get(unit);
  if (is === undefined) {
    is = RULED.test(`${unit.letters}:${unit.sound}`);
    ruled.set(unit, is);
  }
  return is;
}
/** A cache of whether a rule may apply to a spelling. The table has each spelling once, however many words share it. */
const ruled = new WeakMap<WordSpelling, boolean>();
