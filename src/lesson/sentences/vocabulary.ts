import type { PatternId } from '../../analyze/types.ts';
import type { KnownWords } from '../known-words.ts';
import { irregularPlurals, nounKinds, ownAdjectives } from './nouns.ts';
import { subjectClasses } from './verb-frames.ts';
import { phraseClasses, wordClasses } from './word-classes.ts';

/** A noun the group can read in one form at least; the other form is null. */
export interface Noun {
  readonly name: string;
  readonly one: string | null;
  readonly many: string | null;
  /** That go with it and can be read. */
  readonly adjectives: readonly string[];
}

/** What of the grammar's words a group can read. */
export interface Vocabulary {
  /** Every word of a phrase can be read. */
  reads(phrase: string): boolean;
  /** A word of the phrase practises what the lesson is about. */
  practises(phrase: string): boolean;
  /** The nouns of a class; of a word that is no class, that word. */
  nouns(nameOfClass: string): readonly Noun[];
  /** The words or phrases of a class as they are; of a word that is no class, that word. */
  phrases(nameOfClass: string): readonly string[];
}

const kindOf = new Map(
  Object.values(nounKinds).flatMap((kind) => kind.nouns.split(' ').map((noun) => [noun, kind] as const)),
);

/** What a group can read of the grammar's words; `focus` as the lesson has it. */
export function createVocabulary(known: KnownWords, focus: readonly PatternId[]): Vocabulary {
  const reads = remember((phrase: string) =>
    phrase.split(' ').every((word) => word !== '-' && readsWord(word)),
  );
  const readsWord = remember((word: string) => known.reads(word));
  const practises = remember((phrase: string) => phrase.split(' ').some((word) => practisesWord(word)));
  const practisesWord = remember((word: string) => {
    const found = known.find(word);
    return (
      found !== undefined &&
      found.standing !== 'by-sight' &&
      !found.homograph &&
      focus.some((id) => found.reading.requires.includes(id))
    );
  });
  const phrases = remember((name: string): readonly string[] =>
    (phraseClasses[name] ?? (wordClasses[name] ?? name).split(' ')).filter(reads),
  );
  const noun = remember((name: string): Noun | null => {
    const many = pluralOf(name);
    if (!reads(name) && !reads(many)) return null;
    const adjectives = `${kindOf.get(name)?.adjectives ?? ''} ${ownAdjectives[name] ?? ''}`.trim();
    return {
      name,
      one: reads(name) ? name : null,
      many: reads(many) ? many : null,
      adjectives: [...new Set(adjectives.split(' '))].filter((word) => word !== '' && reads(word)),
    };
  });
  const nouns = remember((name: string): readonly Noun[] =>
    [...new Set((wordClasses[name] ?? subjectClasses[name] ?? name).split(' '))].flatMap(
      (word) => noun(word) ?? [],
    ),
  );
  return { reads, practises, nouns, phrases };
}

/** The plural of a noun of the grammar: hats, boxes, ponies, but toys. */
export function pluralOf(noun: string): string {
  if (Object.hasOwn(irregularPlurals, noun)) return irregularPlurals[noun]!;
  if (/(?:s|x|z|ch|sh)$/.test(noun)) return `${noun}es`;
  return /[^aeiou]y$/.test(noun) ? `${noun.slice(0, -1)}ies` : `${noun}s`;
}

function remember<T>(find: (key: string) => T): (key: string) => T {
  const found = new Map<string, T>();
  return (key) => {
    if (!found.has(key)) found.set(key, find(key));
    return found.get(key)!;
  };
}
