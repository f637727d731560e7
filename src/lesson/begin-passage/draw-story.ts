import { isGrammarWord } from '../../analyze/index.ts';
import { isFirstName } from '../first-names.ts';
import { isLate } from '../fit-words.ts';
import type { KnownWords } from '../known-words.ts';
import type { Picker } from '../picker.ts';
import { createVocabulary } from '../sentences/vocabulary.ts';
import { choosePeople, type PassageWish } from './begin-passage.ts';
import { castFor, type Person } from './people.ts';
import { settings } from './story-classes.ts';
import { readablePlaces } from './story-words.ts';

/** What another writer needs to write a story for a group, and to be held to. */
export interface Story {
  readonly people: readonly [Person, Person];
  /** A place, and how one is there: `dock`, `on`. */
  readonly place: { readonly name: string; readonly at: string };
  /** The words of the wish that the group can read and that are fit for a lesson. Names are as the group writes them. */
  readonly topic: readonly string[];
  /** The words of lessons that the group can read, commonest first. */
  readonly words: readonly string[];
  /** Words among them that practise the focus. */
  readonly practise: readonly string[];
  /**
   * Whether a word, in lower case, is a word of lessons that the group can read, or a form of one with an apostrophe:
   * boat, boat's, won't. The list of those words has none that is unfit for children. Words with a hyphen are not fit,
   * since two fit words may make an unfit one.
   */
  isFit(word: string): boolean;
  /** Whether a word with a capital at the start of a sentence is a name, and not a word too (Will). */
  isName(word: string): boolean;
  /** Whether a word, in lower case, practises the focus. */
  practises(word: string): boolean;
}

/** The fewest words that a story can be written with; our own figure. */
const FEWEST_KNOWN = 100;
/** The full forms of words that lose letters in a contraction: can't, won't, shan't. */
const FULL = new Map([
  ['ca', 'can'],
  ['wo', 'will'],
  ['sha', 'shall'],
  ['i', 'I'],
]);

/**
 * Draws the people and the place of a story, as a begun passage has them. Returns null where the group knows too little
 * for one. The same picker draws the same.
 */
export function drawStory(known: KnownWords, wish: PassageWish, picker: Picker): Story | null {
  const vocabulary = createVocabulary(known, wish.focus);
  const cast = castFor(wish.names, vocabulary.reads);
  const places = settings.flatMap((setting) => readablePlaces(setting, vocabulary));
  const words = known.words.map(({ word }) => word).filter((word) => !isLate(word));
  if (cast.length < 2 || places.length === 0 || words.length < FEWEST_KNOWN) return null;
  const isFit = (word: string): boolean => {
    const [, whole = word] = /^(.+?)(?:n't|'(?:s|d|m|ll|re|ve)?)$/.exec(word) ?? [];
    return known.find(FULL.get(whole) ?? whole) !== undefined;
  };
  const topic = (wish.topic ?? []).flatMap((word) => {
    const name = wish.names.find((each) => each.toLowerCase() === word.toLowerCase());
    if (name !== undefined) return [name];
    return isFit(word.toLowerCase()) && known.reads(word) ? [word.toLowerCase()] : [];
  });
  return {
    people: choosePeople(cast, picker),
    place: places[picker.below(places.length)]!,
    topic: [...new Set(topic)],
    words,
    practise: words.filter(vocabulary.practises),
    isFit,
    isName: (word) => isFirstName(word) && !isGrammarWord(word.toLowerCase()) && !/^(?:Will|May)$/.test(word),
    practises: vocabulary.practises,
  };
}
