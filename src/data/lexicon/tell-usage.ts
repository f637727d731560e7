import nlp from 'compromise';
import type { Usage } from '../../analyze/types.ts';
import type { Derivation } from '../morphology/derivation.ts';
import type { Facts } from '../morphology/lexical-facts.ts';
import { readSourceRows } from '../read-source-rows.ts';

/** Rank up to which a word counts as common, unless it is mostly written with a capital. */
const COMMON = 12_000;
/** Endings that make no new word: a biscuit and biscuits are of one use. Not -er: Baker and Miller are names. */
const ENDINGS: ReadonlySet<string> = new Set(['s', 'es', 'ed', 'd', 'ing', 'est', 'ly', 'ness']);
/** The tags of compromise for words that are no things, and so are nobody's name: although, hey, whereas. */
const NO_THINGS = /Expression|QuestionWord|Conjunction|Preposition|Superlative|PresentTense|Gerund/;
const NAMES =
  /FirstName|MaleName|FemaleName|LastName|Person|Place|City|Country|Region|Demonym|Organization|Month|WeekDay|ProperNoun/;

export interface UsageSources {
  readonly facts: Required<Pick<Facts, 'rank' | 'lemmas' | 'names' | 'capitalised'>>;
  readonly derivations: ReadonlyMap<string, Derivation>;
  /** Words with a pronunciation of our own are words. */
  readonly own: ReadonlyMap<string, unknown>;
}

/**
 * Tells how a word is met. The frequency list writes each word in one form only, and many a word with a capital because it begins
 * sentences (although) or is a name as well (mark). So a word it has with a capital is ordinary all the same where WordNet has it
 * with a small letter, where it is a form of such a word (drew), where compromise's word list says that it is no
 * thing, or where ordinary-words.tsv says so.
 */
export function createUsage({ facts, derivations, own }: UsageSources): (word: string) => Usage {
  const { rank, lemmas, names, capitalised } = facts;
  const lexicon = (nlp.model() as { one: { lexicon: Record<string, string | string[]> } }).one.lexicon;
  const listed = new Set(readSourceRows('ordinary-words.tsv').map(([word]) => word!));
  const tagsOf = (word: string): string =>
    Object.hasOwn(lexicon, word) ? [lexicon[word]].flat().join(' ') : '';
  const isLemma = (word: string): boolean => lemmas.has(word) && !names.has(word);

  /** True where a capital says that a sentence begins, and hardly ever that it is a name. */
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
