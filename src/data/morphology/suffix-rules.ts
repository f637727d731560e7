import type { Suffix } from '../../analyze/morphology/affixes.ts';
import { findRule, type Rule } from '../../analyze/rule.ts';
import type { SpellingChange } from '../../analyze/types.ts';
import type { Derivation } from './derivation.ts';
import { mentions } from './evidence.ts';
import { type Facts, isLemma, looksLikeName, RAREST, rankOf, shareOne } from './lexical-facts.ts';

/** The evidence for or against one base of one word. */
export interface Evidence {
  readonly word: string;
  readonly stem: string;
  readonly suffix: Suffix;
  readonly change: SpellingChange;
  /** Whether the whole base is heard in the word. */
  readonly same: boolean;
  /** Whether WordNet links word and base. Only a pointer counts if the base is only nearly heard. */
  readonly kin: boolean;
  /** Whether the base is commoner than the word, or nearly as common. */
  readonly commoner: boolean;
  /** The parts of speech of the base, as letters. */
  readonly parts: string;
  /** The parts of speech that WordNet gives the word itself. Empty for most inflected forms. */
  readonly own: string;
  readonly facts: Facts;
  /** The derivations of shorter words. */
  readonly found: ReadonlyMap<string, Derivation>;
}

/** A rule that accepts or rejects a base. Examples give word, base and suffix, and `no` if the base is rejected. */
export interface SuffixBaseRule extends Rule<Evidence> {
  readonly believes: boolean | ((place: Evidence) => boolean);
}

/**
 * Suffixes that hardly ever mislead if the base sounds the same: -ness, -less, -ful and others. The few exceptions are
 * in the deny list.
 */
const TRUSTED = new Set(['ness', 'less', 'ful', 'ally', 'hood']);

/** Suffixes that are trusted if the base is also commoner than the word. */
const NATIVE = new Set('able dom ish like ment ship some teen ward wards wise'.split(' '));

/** The words of definitions for a ship. */
const VESSELS = ['ship', 'vessel', 'aircraft', 'spacecraft', 'warship'];

const isS = ({ suffix }: Evidence): boolean => suffix.text === 's' || suffix.text === 'es';
const isEr = ({ suffix }: Evidence): boolean => suffix.text === 'er';
const isPast = ({ suffix }: Evidence): boolean => suffix.text === 'ed' || suffix.text === 'ing';
const isVerbal = (place: Evidence): boolean => isPast(place) || isEr(place) || place.suffix.text === 'est';

/**
 * Rules that decide whether base and suffix form a word or match by chance, by letters and sounds. They are our own
 * rules, measured against WordNet.
 */
export const SUFFIX_BASE_RULES: readonly SuffixBaseRule[] = [
  {
    name: 'leaves: a noun heard whole, whose f becomes v',
    example: 'leaves = leaf + es',
    counterExample: 'chiefs = chief + s',
    applies: (place) => isS(place) && place.change === 'f-to-v',
    believes: ({ same, stem, facts }) => same && facts.lemmas.get(stem)!.has('n'),
  },
  {
    name: 'central: a base in consonant and re, whose r is heard alone',
    example: 'central = centre + al: no',
    counterExample: 'massacring = massacre + ing',
    applies: ({ stem, suffix, change }) =>
      change === 'drop-e' && /[^aeiouy]re$/.test(stem) && !suffix.inflection,
    believes: false,
  },
  {
    name: '-s on a base that is neither listed nor built: a longer, commoner one',
    example: 'germans = german + s',
    counterExample: 'leaves = leaf + es',
    applies: (place) => isS(place) && !isKnown(place),
    believes: ({ stem, commoner }) => stem.length > 3 && commoner,
  },
  {
    name: '-s: no name that is commoner than the base',
    example: 'wales = wale + s: no',
    counterExample: 'things = thing + s',
    applies: (place) => isS(place) && !place.commoner && (place.facts.names?.has(place.word) ?? false),
    believes: false,
  },
  {
    name: '-s: no word with a capital that is commoner than a base of two letters, or of other sounds',
    example: 'tis = ti + s: no',
    counterExample: 'days = day + s',
    applies: (place) =>
      isS(place) && !place.commoner && isCapitalised(place) && !(place.same && place.stem.length > 2),
    believes: false,
  },
  {
    name: '-s: no base with other sounds, where the base is short or the listed word is commoner',
    example: 'does = doe + s: no',
    counterExample: 'days = day + s',
    applies: (place) =>
      isS(place) && !place.same && !place.commoner && (place.stem.length < 4 || place.own !== ''),
    believes: false,
  },
  {
    name: '-s: forms that are not listed themselves, or whose base is commoner, kin or heard whole',
    example: 'things = thing + s',
    counterExample: 'wales = wale + s: no',
    applies: (place) => isS(place),
    believes: ({ own, commoner, kin, same, stem }) =>
      own === '' || commoner || kin || (same && stem.length > 2),
  },
  {
    name: 'muddier: -er and -est on an adjective whose y becomes i',
    example: 'happier = happy + er',
    counterExample: 'harder = hard + er',
    applies: (place) => comparesAdjective(place),
    believes: true,
  },
  {
    name: '-ed, -ing, -er, -est on what looks like a name: as words no list counts',
    example: 'parker = park + er: no',
    counterExample: 'teacher = teach + er',
    applies: (place) => isVerbal(place) && isNameLike(place),
    believes: isUnseenForm,
  },
  {
    name: '-er on a form that is not listed itself: of a verb or adjective, or a longer, commoner base',
    example: 'harder = hard + er',
    counterExample: 'teacher = teach + er',
    applies: (place) => isEr(place) && place.own === '',
    believes: ({ parts, commoner, stem }) => shareOne('av', parts) || (commoner && stem.length > 3),
  },
  {
    name: '-er: WordNet ties word and base',
    example: 'teacher = teach + er',
    counterExample: 'flower = flow + er: no',
    applies: (place) => isEr(place) && place.kin,
    believes: true,
  },
  {
    name: '-er: no other sounds than the base',
    example: 'flower = flow + er: no',
    counterExample: 'teacher = teach + er',
    applies: (place) => isEr(place) && !place.same,
    believes: false,
  },
  {
    name: '-er: a base of six letters and more is no accident',
    example: 'prisoner = prison + er',
    counterExample: 'corner = corn + er: no',
    applies: (place) => isEr(place) && place.stem.length > 5,
    believes: true,
  },
  {
    name: '-er: no rarer and no very short base',
    example: 'corner = corn + er: no',
    counterExample: 'older = old + er',
    applies: (place) => isEr(place) && (!place.commoner || place.stem.length < 3),
    believes: false,
  },
  {
    name: '-er: words that are no nouns or verbs',
    example: 'older = old + er',
    counterExample: 'offer = off + er: no',
    applies: (place) => isEr(place) && !/[nv]/.test(place.own),
    believes: true,
  },
  {
    name: '-er: words by themselves that are plain comparatives too',
    example: 'sharper = sharp + er',
    counterExample: 'offer = off + er: no',
    applies: (place) =>
      isEr(place) &&
      (place.facts.lemmas.get(place.stem)?.has('a') ?? false) &&
      (place.stem.length > 3 || place.change === 'double'),
    believes: true,
  },
  {
    name: '-er: nouns of a longer verb',
    example: 'ranger = range + er',
    counterExample: 'sharper = sharp + er',
    applies: (place) => isEr(place),
    believes: ({ parts, own, stem }) => parts.includes('v') && !own.includes('v') && stem.length > 3,
  },
  {
    name: '-est: forms that are not listed, or whose base is commoner or kin',
    example: 'greatest = great + est',
    counterExample: 'happiest = happy + est',
    applies: (place) => place.suffix.text === 'est',
    believes: ({ own, commoner, kin }) => own === '' || commoner || kin,
  },
  {
    name: '-ed and -ing: no nouns with ee that are not kin',
    example: 'seed = see + ed: no',
    counterExample: 'agreed = agree + ed',
    applies: (place) => isPast(place) && place.stem.endsWith('ee') && place.own.includes('n') && !place.kin,
    believes: false,
  },
  {
    name: 'talented: -ed on longer nouns, heard whole',
    example: 'talented = talent + ed',
    counterExample: 'wanted = want + ed',
    applies: (place) => isPast(place) && !place.parts.includes('v'),
    believes: ({ suffix, same, stem, own }) =>
      suffix.text === 'ed' && same && stem.length > 3 && !/[nv]/.test(own),
  },
  {
    name: '-ed and -ing: forms that are not listed, or that WordNet ties to the base',
    example: 'going = go + ing',
    counterExample: 'wanted = want + ed',
    applies: (place) => isPast(place) && (place.own === '' || place.kin),
    believes: true,
  },
  {
    name: '-ed and -ing: words by themselves, where the base is commoner or long enough',
    example: 'wanted = want + ed',
    counterExample: 'going = go + ing',
    applies: (place) => isPast(place),
    believes: isLongVerb,
  },
  {
    name: 'any other ending on what looks like a name: as words no list counts',
    example: 'sunday = sundae + y: no',
    counterExample: 'sunny = sun + y',
    applies: (place) => looksLikeName(place.word, place.facts),
    believes: isUnseenForm,
  },
  {
    name: '-en on a form that is not listed: of a commoner verb heard whole',
    example: 'eaten = eat + en',
    counterExample: 'taken = take + en',
    applies: (place) => place.own === '' && place.suffix.text === 'en',
    believes: ({ same, commoner, parts, change }) =>
      same && commoner && parts.includes('v') && change !== 'double',
  },
  {
    name: 'words that are not listed: of a longer, commoner base heard whole',
    example: 'crunchy = crunch + y',
    counterExample: 'sunny = sun + y',
    applies: (place) => place.own === '',
    believes: ({ same, commoner, stem, suffix }) =>
      same && commoner && stem.length > 3 && (TRUSTED.has(suffix.text) || stem.length > 4),
  },
  {
    name: 'no word of another part of speech than the ending makes',
    example: 'probably = probable + y: no',
    counterExample: 'crunchy = crunch + y',
    applies: (place) => !shareOne(place.suffix.makes, place.own),
    believes: false,
  },
  {
    name: '-ship: no ships, which are compounds',
    example: 'spaceship = space + ship: no',
    counterExample: 'friendship = friend + ship',
    applies: (place) =>
      place.suffix.text === 'ship' && VESSELS.some((vessel) => mentions(place.word, vessel, place.facts)),
    believes: false,
  },
  {
    name: 'WordNet ties word and base, and the base is heard whole, longer or commoner',
    example: 'really = real + ly',
    counterExample: 'partly = part + ly',
    applies: (place) => place.kin,
    believes: ({ same, stem, commoner }) => same || stem.length > 3 || commoner,
  },
  {
    name: 'no base of two letters, and none that is very rare',
    example: 'guess = gu + ess: no',
    counterExample: 'witness = wit + ness',
    applies: (place) => place.stem.length < 3 || rankOf(place.stem, place.facts) >= RAREST,
    believes: false,
  },
  {
    name: 'a base of six letters and more, or a trusted ending, on a base heard whole',
    example: 'beautiful = beauty + ful',
    counterExample: 'sunny = sun + y',
    applies: (place) => place.same && (place.stem.length > 5 || TRUSTED.has(place.suffix.text)),
    believes: true,
  },
  {
    name: '-ly on an adjective heard whole: an adverb or adjective, or the rarer word',
    example: 'hardly = hard + ly',
    counterExample: 'partly = part + ly',
    applies: (place) => place.same && place.suffix.text === 'ly' && place.parts.includes('a'),
    believes: ({ own, commoner }) => /[ar]/.test(own) || commoner,
  },
  {
    name: 'partly: -ly on a commoner noun, which makes no verb',
    example: 'partly = part + ly',
    counterExample: 'hardly = hard + ly',
    applies: (place) => place.same && place.suffix.text === 'ly',
    believes: ({ parts, own, commoner, stem }) =>
      parts.includes('n') && /[ar]/.test(own) && !own.includes('v') && commoner && !stem.endsWith('l'),
  },
  {
    name: '-y: adjectives alone, whose base is commoner or longer',
    example: 'sunny = sun + y',
    counterExample: 'crunchy = crunch + y',
    applies: (place) => place.same && place.suffix.text === 'y',
    believes: ({ own, commoner, stem }) => own === 'a' && (commoner || stem.length > 4),
  },
  {
    name: 'brighten: -en on a commoner adjective or verb, which makes no noun',
    example: 'taken = take + en',
    counterExample: 'eaten = eat + en',
    applies: (place) => place.same && place.suffix.text === 'en',
    believes: ({ commoner, change, own, parts }) =>
      commoner && change !== 'double' && !own.includes('n') && shareOne('va', parts),
  },
  {
    name: '-al follows -ic',
    example: 'medical = medic + al',
    counterExample: 'musical = music + al',
    applies: (place) => place.same && place.suffix.text === 'al',
    believes: ({ stem }) => stem.endsWith('ic'),
  },
  {
    name: '-ish: adjectives of a commoner base',
    example: 'foolish = fool + ish',
    counterExample: 'finish = fine + ish: no',
    applies: (place) => place.same && place.suffix.text === 'ish',
    believes: ({ commoner, own }) => commoner && own === 'a',
  },
  {
    name: '-ify on a commoner adjective',
    example: 'justify = just + ify',
    counterExample: 'simplify = simple + ify',
    applies: (place) => place.same && place.suffix.text === 'ify',
    believes: ({ commoner, parts }) => commoner && parts.includes('a'),
  },
  {
    name: '-ist and -th on a longer, commoner base',
    example: 'warmth = warm + th',
    counterExample: 'growth = grow + th',
    applies: (place) => place.same && /^(ist|th)$/.test(place.suffix.text),
    believes: ({ commoner, stem }) => commoner && stem.length > 3,
  },
  {
    name: '-age, -ance, -ation, -ery and -ian on a commoner base of five letters',
    example: 'bravery = brave + ery',
    counterExample: 'bakery = bake + ery',
    applies: (place) => place.same && /^(age|ance|ation|ery|ian)$/.test(place.suffix.text),
    believes: ({ commoner, stem }) => commoner && stem.length > 4,
  },
  {
    name: 'any other ending on a base heard whole: native ones, on a commoner base',
    example: 'otherwise = other + wise',
    counterExample: 'bravery = brave + ery',
    applies: (place) => place.same,
    believes: ({ commoner, suffix }) => commoner && NATIVE.has(suffix.text),
  },
  {
    name: 'other sounds than a base of five letters or less',
    example: 'honey = hone + y: no',
    counterExample: 'sunny = sun + y',
    applies: (place) => place.stem.length < 6,
    believes: false,
  },
  {
    name: '-ion with other sounds: on verbs in -ate and -ct',
    example: 'direction = direct + ion',
    counterExample: 'question = quest + ion',
    applies: (place) => place.suffix.text === 'ion',
    believes: ({ stem, parts }) => /(ate|ct)$/.test(stem) && parts.includes('v'),
  },
  {
    name: '-ic with other sounds: on nouns',
    example: 'periodic = period + ic',
    counterExample: 'heroic = hero + ic',
    applies: (place) => place.suffix.text === 'ic',
    believes: ({ parts }) => parts === 'n',
  },
  {
    name: '-able, -ent and -ence with other sounds: on verbs',
    example: 'admirable = admire + able',
    counterExample: 'washable = wash + able',
    applies: (place) => /^(able|ent|ence)$/.test(place.suffix.text),
    believes: ({ parts }) => parts.includes('v'),
  },
  {
    name: '-ity with other sounds: on adjectives',
    example: 'serenity = serene + ity',
    counterExample: 'sanity = sane + ity',
    applies: (place) => place.suffix.text === 'ity',
    believes: ({ parts }) => parts === 'a',
  },
  {
    name: 'any other ending with other sounds',
    example: 'original = origin + al: no',
    counterExample: 'medical = medic + al',
    applies: () => true,
    believes: false,
  },
];

/** Whether a base formed the word, according to the first rule that applies. */
export function isPlausibleBase(place: Evidence): boolean {
  const { believes } = findRule(SUFFIX_BASE_RULES, place)!;
  return typeof believes === 'boolean' ? believes : believes(place);
}

/** Whether WordNet has the base, or the base is itself derived. */
function isKnown({ stem, facts, found }: Evidence): boolean {
  return isLemma(stem, facts) || found.has(stem);
}

function isCapitalised({ word, facts }: Evidence): boolean {
  return facts.capitalised?.has(word) ?? false;
}

/**
 * Whether a word that no list counts (rare, or a surname) may still be derived. Only plain endings of known verbs and
 * adjectives are trusted.
 */
function isUnseenForm({ word, stem, suffix, same, facts }: Evidence): boolean {
  const unseen = !facts.rank.has(word) && !facts.names?.has(word);
  if (!unseen || !/^(ed|ing|ly|ness)$/.test(suffix.text) || !same) return false;
  return isLemma(stem, facts) && rankOf(stem, facts) < RAREST;
}

/**
 * Whether a word compares an adjective: muddier, rosiest; not barrier or terrier. Lists may lack such forms or have
 * them only as names, but their base is an adjective.
 */
function comparesAdjective({ word, stem, suffix, change, same, own, facts }: Evidence): boolean {
  if (!/^(er|est)$/.test(suffix.text) || change !== 'y-to-i' || !same) return false;
  return (
    /^a?$/.test(own) && isLemma(stem, facts) && facts.lemmas.get(stem)!.has('a') && !facts.names?.has(word)
  );
}

function isNameLike(place: Evidence): boolean {
  const { word, facts } = place;
  return looksLikeName(word, facts) && (!facts.rank.has(word) || isNamesake(place));
}

/**
 * Whether a word is mostly written with a capital and so is a name. Verb forms that often begin a sentence (supposing)
 * are excepted.
 */
function isNamesake(place: Evidence): boolean {
  if (!isCapitalised(place)) return false;
  const { word, stem, same, parts, facts } = place;
  const verbForm = isPast(place) && same && stem.length > 3 && parts.includes('v');
  return !verbForm || (facts.names?.has(word) ?? false);
}

function isLongVerb({ stem, suffix, change, same, commoner }: Evidence): boolean {
  const long = stem.length > (suffix.text === 'ed' || change === 'double' ? 2 : 3);
  return commoner ? stem.length > 2 : stem.length > (same ? 0 : 4) && long;
}
