import type { Prefix } from '../../analyze/morphology/affixes.ts';
import { findRule, type Rule } from '../../analyze/rule.ts';
import type { Derivation } from './derivation.ts';
import { mentions, pointsTo } from './evidence.ts';
import { type Facts, isLemma, partsOf, rankOf, shareOne } from './lexical-facts.ts';

/** The evidence for or against prefix and base of one word. */
interface PrefixEvidence {
  readonly prefix: Prefix;
  readonly base: string;
  /** Whether the word sounds like prefix and base. */
  readonly same: boolean;
  /** `parts`: the parts of speech of the base. `own`: the parts of speech that WordNet gives the word itself. */
  readonly parts: string;
  readonly own: string;
  /** Whether the base is commoner than the word. */
  readonly commoner: boolean;
  /**
   * `points`: whether WordNet points from word to base. `linked`: whether at least the definition of the word contains
   * the base.
   */
  readonly points: boolean;
  readonly linked: boolean;
  /** Whether the definition contains the meaning of the prefix. */
  readonly means: boolean;
  /** The derivation of the base. */
  readonly made: Derivation | undefined;
}

/** A rule that accepts or rejects a prefix. Examples give word, prefix and base, and `no` if the prefix is rejected. */
export interface PrefixRule extends Rule<PrefixEvidence> {
  readonly believes: boolean | ((place: PrefixEvidence) => boolean);
}

const isNot = ({ prefix }: PrefixEvidence): boolean => /^i[nmlr]$/.test(prefix.text);

/**
 * Rules that decide whether prefix and base form a word or match by chance. They are our own rules, measured against
 * WordNet.
 */
export const PREFIX_RULES: readonly PrefixRule[] = [
  {
    name: 'no base of a part of speech that the prefix does not join',
    example: 'until = un + til: no',
    counterExample: 'unhappy = un + happy',
    applies: (place) => !shareOne(place.prefix.joins, place.parts),
    believes: false,
  },
  {
    name: 'over-, under-, out- and up-: no nouns, which are compounds',
    example: 'overcome = over + come',
    counterExample: 'disappear = dis + appear',
    applies: (place) => /^(over|under|out|up)$/.test(place.prefix.text),
    believes: ({ base, own }) =>
      base.length > 2 && (own === '' || (shareOne('va', own) && (own.includes('v') || !own.includes('n')))),
  },
  {
    name: 'no base with other sounds that WordNet does not tie to the word, but for un-, in-, im-, il- and ir-',
    example: 'present = pre + sent: no',
    counterExample: 'preview = pre + view',
    applies: (place) => !place.same && !place.linked && !/^(un|i[nmlr])$/.test(place.prefix.text),
    believes: false,
  },
  {
    name: 'un-: the base is a word of the same kind, or commoner or built',
    example: 'unhappy = un + happy',
    counterExample: 'until = un + til: no',
    applies: (place) => place.prefix.text === 'un',
    believes: ({ base, own, commoner, made, parts }) =>
      base.length > 1 && (own === '' ? commoner || made !== undefined : shareOne(own, parts)),
  },
  {
    name: 'words that are not listed, such as past forms: of a longer, commoner base',
    example: 'researching = re + searching',
    counterExample: 'return = re + turn',
    applies: (place) => place.own === '',
    believes: ({ base, commoner, prefix }) =>
      base.length > 3 && commoner && /^(re|dis|mis|over|under|non|pre)$/.test(prefix.text),
  },
  {
    name: 'in- and its like: no words of another kind than the base; a noun only along with its adjective',
    example: 'indeed = in + deed: no',
    counterExample: 'insane = in + sane',
    applies: (place) => isNot(place) && !shareOne(place.own.replace('v', ''), place.parts),
    believes: false,
  },
  {
    name: 'in- and its like: WordNet points from word to base',
    example: 'insane = in + sane',
    counterExample: 'inhuman = in + human',
    applies: (place) => isNot(place) && place.points,
    believes: true,
  },
  {
    name: 'in- and its like: a base of six letters and more is an adjective or made with a suffix',
    example: 'independence = in + dependence',
    counterExample: 'inhuman = in + human',
    applies: (place) => isNot(place) && place.base.length > 5 && place.made?.affix !== 'ing',
    believes: ({ parts, made }) => parts.includes('a') || made?.kind === 'suffix',
  },
  {
    name: 'in- and its like: an adjective of five letters where the definition says not',
    example: 'inhuman = in + human',
    counterExample: 'insane = in + sane',
    applies: (place) => isNot(place),
    believes: ({ base, parts, means }) => base.length > 4 && parts.includes('a') && means,
  },
  {
    name: 'dis-, mis- and en-: verbs of a commoner verb',
    example: 'disappear = dis + appear',
    counterExample: 'disability = dis + ability',
    applies: (place) =>
      /^(dis|mis|en)$/.test(place.prefix.text) &&
      place.parts.includes('v') &&
      place.own.includes('v') &&
      place.base.length > 2 &&
      place.commoner,
    believes: true,
  },
  {
    name: 'dis-: a longer, commoner base where the definition says not',
    example: 'disability = dis + ability',
    counterExample: 'disappear = dis + appear',
    applies: (place) => place.prefix.text === 'dis' && place.means && place.commoner && place.base.length > 3,
    believes: true,
  },
  {
    name: 're-, mis-, de- and dis- on a word of another kind: only where WordNet ties them',
    example: 'remain = re + main: no',
    counterExample: 'return = re + turn',
    applies: (place) => /^(re|mis|de|dis)$/.test(place.prefix.text) && !shareOne(place.own, place.parts),
    believes: ({ linked }) => linked,
  },
  {
    name: 're-: verbs of a longer, commoner verb that is whole',
    example: 'return = re + turn',
    counterExample: 'reaction = re + action',
    applies: (place) =>
      place.prefix.text === 're' &&
      place.own.includes('v') &&
      place.parts.includes('v') &&
      place.commoner &&
      place.base.length > 3 &&
      place.made === undefined,
    believes: true,
  },
  {
    name: 'WordNet ties word and base, or the base is commoner and the definition says what the prefix means',
    example: 'midnight = mid + night',
    counterExample: 'return = re + turn',
    applies: () => true,
    believes: ({ linked, commoner, base, means }) => linked || (commoner && base.length > 2 && means),
  },
];

/** Whether a prefix and a base form the word, according to the first rule that applies. */
export function isPlausiblePrefix(
  word: string,
  base: string,
  prefix: Prefix,
  same: boolean,
  facts: Facts,
  found: ReadonlyMap<string, Derivation>,
): boolean {
  const points = pointsTo(word, base, facts);
  const place: PrefixEvidence = {
    prefix,
    base,
    same,
    parts: partsOf(base, facts, found),
    own: isLemma(word, facts) ? [...facts.lemmas.get(word)!].join('') : '',
    commoner: rankOf(base, facts) < rankOf(word, facts),
    points,
    linked: points || mentions(word, base, facts),
    means: prefix.means.test(facts.glosses?.get(word) ?? ''),
    made: found.get(base),
  };
  const { believes } = findRule(PREFIX_RULES, place)!;
  return typeof believes === 'boolean' ? believes : believes(place);
}
