import nlp from 'compromise';
import type { Usage } from '../../analyze/types.ts';
import type { Derivation } from '../morphology/derivation.ts';
import type { Facts } from '../morphology/lexical-facts.ts';
import { readSourceRows } from '../read-source-rows.ts';

/** The rank up to which a word counts as common, unless it is mostly written with a capital. */
const COMMON = 12_000;
/**
 * Endings that make no new word: biscuit and biscuits have the same usage. -er is not included: Baker and Miller are
 * names.
 */
const ENDINGS: ReadonlySet<string> = new Set(['s', 'es', 'ed', 'd', 'ing', 'est', 'ly', 'ness']);
/** The tags of compromise for words that are no things, and so are nobody's name: although, hey, whereas. */
const NO_THINGS = /Expression|QuestionWord|Conjunction|Preposition|Superlative|PresentTense|Gerund/;
const NAMES =
  /FirstName|MaleName|FemaleName|LastName|Person|Place|City|Country|Region|Demonym|Organization|Month|WeekDay|ProperNoun/;

export interface UsageSources {
  readonly facts: Required<Pick<Facts, 'rank' | 'lemmas' | 'names' | 'capitalised'>>;
  readonly derivations: ReadonlyMap<string, Derivation>;
  /** Words with a pronunciation of our own. They always count as words. */
  readonly own: ReadonlyMap<string, unknown>;
}

/**
 * Returns a function that tells the usage of a word. The frequency list has each word in one form only. Many words have
 * a capital there because they begin sentences (although) or are also names (mark). A word with a capital in the list
 * still counts as ordinary in these cases:
 * - WordNet has it in lower case.
 * - It is a form of such a word (drew).
 * - The word list of compromise says that it is not a noun.
 * - ordinary-words.tsv lists it.
 */
export function createUsage({ facts, derivations, own }: UsageSources): (word: string) => Usage {
  const { rank, lemmas, names, capitalised } = facts;
  const lexicon = (nlp.model() as { one: { lexicon: Record<string, string | string[]> } }).one.lexicon;
  const listed = new Set(readSourceRows('ordinary-words.tsv').map(([word]) => word!));
  const tagsOf = (word: string): string =>
    Object.hasOwn(lexicon, word) ? [lexicon[word]].flat().join(' ') : '';
  const isLemma = (word: string): boolean => lemmas.has(word) && !names.has(word);

  /** Whether a capital mostly means that the word begins a sentence, and hardly ever that it is a name. */
  function opensSentences(word: string): boolean {
    if (listed.has(word)) return true;
    const tags = tagsOf(word);
    if (NAMES.test(tags)) return false;
    return NO_THINGS.test(tags) || (isLemma(word) && !lemmas.get(word)!.has('n'));
  }

  function usageOf(word: string): Usage {
    const ranked = rank.get(word) ?? Infinity;
    const isMostlyCapital = capitalised.has(word) && !opensSentences(word);
    if ((ranked <= COMMON && !isMostlyCapital) || listed.has(word)) return 'common';
    const derivation = derivations.get(word);
    const isFormed = derivation !== undefined && usageOf(derivation.base) !== 'name';
    const isForm = isFormed && derivation.kind === 'suffix' && ENDINGS.has(derivation.affix);
    if (isForm && !isMostlyCapital) return 'common';
    if (isFormed || isLemma(word) || own.has(word) || (ranked < Infinity && !isMostlyCapital)) return 'rare';
    return 'name';
  }

  return usageOf;
}
