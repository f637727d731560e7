import { remember, rememberFor } from '../../analyze/index.ts';
import type { PatternId } from '../../analyze/types.ts';
import { inVariety, isForeign } from '../../variety/index.ts';
import type { KnownWords } from '../known-words.ts';
import { irregularPlurals, nounKinds, onlyThe, ownAdjectives } from './nouns.ts';
import phrases from './phrase-classes.json' with { type: 'json' };
import { subjectClasses } from './verb-frames.ts';
import classes from './word-classes.json' with { type: 'json' };
import listed from './written-sentences.json' with { type: 'json' };

/** Words that may take the same place in a sentence, by the name of their class. */
export const wordClasses: Readonly<Record<string, string>> = Object.assign({}, ...Object.values(classes));

/** Ends of sentences and words beside verbs, as they are written, by the name of their class. */
export const phraseClasses: Readonly<Record<string, readonly string[]>> = phrases;

/** A noun the group can read in at least one form; a form that cannot be read is null. */
export interface Noun {
  readonly name: string;
  readonly one: string | null;
  readonly many: string | null;
  /** Adjectives that go with the noun and that the group can read. */
  readonly adjectives: readonly string[];
}

/** The words of the grammar that a group can read. */
export interface Vocabulary {
  /** Returns a text of the grammar in the group's variety of English: harbor for harbour. */
  ours(text: string): string;
  /** Returns whether every word of a phrase can be read. */
  reads(phrase: string): boolean;
  /**
   * Returns whether a form made by rule can be read and is in use: dogs, but neither muds nor a word that the bank
   * lacks.
   */
  readsForm(word: string): boolean;
  /** Returns whether a word of the phrase practises the lesson. */
  practises(phrase: string): boolean;
  /** Returns the nouns of a class. For a word that is no class, returns that word. */
  nouns(nameOfClass: string): readonly Noun[];
  /** Returns the words or phrases of a class as they are. For a word that is no class, returns that word. */
  phrases(nameOfClass: string): readonly string[];
  /** Returns the sentences written by hand that can be read. */
  written(): readonly string[];
}

const kindOf = new Map(
  Object.values(nounKinds).flatMap((kind) => kind.nouns.split(' ').map((noun) => [noun, kind] as const)),
);

/** Words for people of whom everyone has only one, so that a plural would be odd. */
const ONE_OF = new Set('mum dad gran grandad granny boss king queen'.split(' '));
/** Nouns that do not go with old or young: never an old lamb. */
const YOUNG = new Set(
  'lamb pup puppy kitten calf foal chick duckling tadpole kid lad boy girl child lass'.split(' '),
);

/** Returns the words of the grammar that a group can read. `focus` has the patterns of the lesson. */
export function createVocabulary(known: KnownWords, focus: readonly PatternId[]): Vocabulary {
  const practises = remember((phrase: string) => phrase.split(' ').some((word) => practisesWord(word)));
  const practisesWord = remember((word: string) => {
    // The bank has no words with an apostrophe, such as didn't, he's and Wilma's.
    if (/'(?:t|m|re|ll|s)$/.test(word)) {
      return focus.includes(/^(?:he|she|it)'s$|'[^s]/i.test(word) ? 'contraction' : 'possessive');
    }
    const found = known.find(word);
    return (
      found !== undefined &&
      found.standing !== 'by-sight' &&
      !found.homograph &&
      focus.some((id) => found.reading.requires.includes(id))
    );
  });
  return { ...readableFor(known), practises };
}

type Readable = Omit<Vocabulary, 'practises'>;

/** Cached for each group, because a sheet is made again at every press of a button. */
const readableFor = rememberFor(findReadable);
const bankOf = rememberFor((analyses: KnownWords['analyses']) => new Set(analyses.map(({ word }) => word)));

function findReadable(known: KnownWords): Readable {
  const banked = bankOf(known.analyses);
  const readsWord = remember((word: string) =>
    // The words of the bank were judged for the group already, so a look-up is enough.
    banked.has(word)
      ? known.find(word) !== undefined
      : !/^-?$/.test(word) && !isForeign(word, known.accent) && known.reads(word),
  );
  const ours = remember((text: string) => inVariety(text, known.accent));
  const reads = remember((phrase: string) => phrase.split(' ').every(readsWord));
  const readsForm = (word: string): boolean => banked.has(word) && readsWord(word);
  const phrases = remember((name: string): readonly string[] =>
    [...new Set((phraseClasses[name] ?? (wordClasses[name] ?? name).split(' ')).map(ours))].filter(reads),
  );
  const noun = remember((entry: string): Noun | null => {
    const name = nameOf(entry);
    const said = ours(entry);
    const plural = onlyThe.has(name) || ONE_OF.has(name) || said === '' ? '' : pluralOf(said);
    const many = readsForm(plural) ? plural : null;
    const one = reads(said) ? said : null;
    if (one === null && many === null) return null;
    const adjectives = `${kindOf.get(name)?.adjectives ?? ''} ${ownAdjectives[name] ?? ''}`.trim();
    return {
      name,
      one,
      many,
      adjectives: [...new Set(adjectives.split(' ').map(ours))].filter(
        (word) => word !== '' && reads(word) && !(YOUNG.has(name) && /^(?:old|young)$/.test(word)),
      ),
    };
  });
  const nouns = remember((name: string): readonly Noun[] => {
    const found = (wordClasses[name] ?? subjectClasses[name] ?? name)
      .split(' ')
      .flatMap((word) => noun(word) ?? []);
    // The British words lorry and truck become one word in American English.
    return [...new Map(found.map((each) => [each.one ?? each.many, each])).values()];
  });
  let readableSentences: readonly string[] | undefined;
  const written = (): readonly string[] => {
    readableSentences ??= Object.values(listed.sentences).flat().filter(known.reads);
    return readableSentences;
  };
  return { ours, reads, readsForm, nouns, phrases, written };
}

/** The name of a noun in its class: the British one where there are two, such as cot|crib. */
function nameOf(entry: string): string {
  return entry.replace(/\|.*/, '') || entry.slice(1);
}

/** Returns the plural of a noun of the grammar: hats, boxes, ponies, but toys. */
export function pluralOf(noun: string): string {
  if (Object.hasOwn(irregularPlurals, noun)) return irregularPlurals[noun]!;
  if (/(?:s|x|z|ch|sh)$/.test(noun)) return `${noun}es`;
  return /[^aeiou]y$/.test(noun) ? `${noun.slice(0, -1)}ies` : `${noun}s`;
}
