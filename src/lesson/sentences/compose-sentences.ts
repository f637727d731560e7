import type { PatternId } from '../../analyze/types.ts';
import type { KnownWords } from '../known-words.ts';
import type { Picker } from '../picker.ts';
import { type Frame, readableFrames } from './frames.ts';
import { makeSentence } from './make-sentence.ts';
import { createVocabulary } from './vocabulary.ts';

/** Options for the sentences to be composed. */
export interface SentenceWish {
  /** The group's own names, which may be the subjects of sentences. */
  readonly names: readonly string[];
  /** Patterns that a sentence should practise where possible. */
  readonly focus?: readonly PatternId[];
  readonly count: number;
  /** The most words in a sentence. If not given, the limit depends on what the group knows. */
  readonly longest?: number;
}

/** For each sentence wanted, this many sentences that practise the lesson's patterns are made before the choice. */
const SPARE = 2;
/** For each sentence wanted, at most this many sentences are made where few practise the lesson's patterns. */
const MOST_SPARE = 8;
/** The most tries for each sentence wanted. After these the sentences already made must be enough. */
const MOST_TRIES = 150;
const FEWEST_WORDS = 4;

/**
 * Returns short sentences that make sense, of words the group can read: `The crab hid under the big rock.` Some are
 * written by hand, and the others are made by the grammar. Returns fewer than wanted, or none, where the group knows
 * too little. The same picker gives the same sentences.
 */
export function composeSentences(known: KnownWords, wish: SentenceWish, picker: Picker): string[] {
  const focus = wish.focus ?? [];
  const longest = wish.longest ?? usualLength(known.words.length);
  const vocabulary = createVocabulary(known, focus);
  const names = wish.names.filter((name) => /^\p{Lu}[\p{L}'’-]*$/u.test(name) && known.reads(name));
  const frames = readableFrames(vocabulary);
  const ingredients = {
    vocabulary,
    names,
    longest,
    possessives: known.knows('possessive'),
    contractions: known.knows('contraction'),
  };
  const chooseFrame = frameChooser(frames, picker);
  const made = new Map<string, Frame | null>();
  const practises = (sentence: string): boolean => vocabulary.practises(sentence.replace(/[.?]$/, ''));
  const fits = (sentence: string): boolean => {
    const words = sentence.split(' ').length;
    return words >= FEWEST_WORDS && words <= longest;
  };
  let practising = 0;
  let besides = wish.count * SPARE;
  for (const sentence of picker.shuffle(vocabulary.written())) {
    if (!fits(sentence)) continue;
    if (practises(sentence)) practising++;
    else if (besides-- <= 0) continue;
    made.set(sentence, null);
  }
  for (let tries = 0; tries < wish.count * MOST_TRIES && frames.length > 0; tries++) {
    if (practising >= wish.count * SPARE || made.size >= wish.count * MOST_SPARE) break;
    const frame = chooseFrame();
    const sentence = makeSentence(frame, ingredients, picker);
    if (sentence === null || made.has(sentence)) continue;
    if (!fits(sentence) || !known.reads(sentence)) continue;
    made.set(sentence, frame);
    if (practises(sentence)) practising++;
  }
  return takeDifferent(made, wish.count, practises);
}

/** Returns the usual length of a sentence. A group that knows more reads longer sentences. The figures are our own. */
function usualLength(words: number): number {
  const steps = [120, 500, 1500, 3500, 7000];
  return 5 + steps.filter((step) => words >= step).length;
}

/**
 * Returns a function that chooses frames. Three kinds of frames come in turn, regardless of their number: frames about
 * people, frames about having and being, and frames about anything that swims or rolls.
 */
function frameChooser(frames: readonly Frame[], picker: Picker): () => Frame {
  const sortOf = ({ group }: Frame): string => (/^(?:people|plain)$/.test(group) ? group : 'creatures');
  const group = (some: readonly Frame[]): (readonly Frame[])[] =>
    ['people', 'plain', 'creatures']
      .map((sort) => some.filter((frame) => sortOf(frame) === sort))
      .filter((each) => each.length > 0);
  const all = group(frames);
  const practising = group(frames.filter(({ practises }) => practises));
  return () => {
    const from = practising.length > 0 && picker.below(10) < 8 ? practising : all;
    const sort = from[picker.below(from.length)]!;
    return sort[picker.below(sort.length)]!;
  };
}

/** The share of the sentences that may contain the same word of the lesson. */
const MOST_OF_A_SHEET = 0.15;
/**
 * The cost of each further sentence whose words of the lesson have all been used as often as `MOST_OF_A_SHEET` allows.
 * Our own figure.
 */
const OWN_AGAIN = 1.6;

/** The cost of a sentence made by the grammar, because a written sentence makes more sense. Our own figure. */
const MADE = 2;

/**
 * Takes sentences that practise and are written first, then sentences that are least like the sentences already taken.
 * Written sentences have no frame.
 */
function takeDifferent(
  made: ReadonlyMap<string, Frame | null>,
  count: number,
  practises: (sentence: string) => boolean,
): string[] {
  const rest = [...made].map(([sentence, frame]) => {
    const words = sentence.toLowerCase().replace(/[.?]/g, '').split(' ');
    return {
      sentence,
      frame,
      words,
      practises: practises(sentence),
      // The words of the lesson in the sentence. Once all of them have been used, another sentence is better. Short
      // forms are left out, because they are few.
      own: words.filter((word) => practises(word) && !word.includes("'")),
    };
  });
  const often = Math.ceil(count * MOST_OF_A_SHEET);
  const taken: typeof rest = [];
  const seen = new Map<string, number>();
  while (taken.length < count && rest.length > 0) {
    let best = 0;
    let bestCost = Number.POSITIVE_INFINITY;
    for (const [i, { frame, words, practises, own }] of rest.entries()) {
      const again = words.reduce((sum, word) => sum + (seen.get(word) ?? 0), 0) / words.length;
      const ofFrame = frame ? MADE + taken.filter((other) => other.frame === frame).length : 0;
      const saidOften = own.length === 0 ? 0 : Math.min(...own.map((word) => seen.get(word) ?? 0));
      const cost = (practises ? 0 : 3) + ofFrame + again + OWN_AGAIN * Math.max(0, saidOften - often);
      if (cost < bestCost) {
        best = i;
        bestCost = cost;
      }
    }
    const [next] = rest.splice(best, 1);
    taken.push(next!);
    for (const word of next!.words) if (word.length > 3) seen.set(word, (seen.get(word) ?? 0) + 1);
  }
  return taken.map(({ sentence }) => sentence);
}
