import type { PatternId } from '../../analyze/types.ts';
import type { KnownWords } from '../known-words.ts';
import type { Picker } from '../picker.ts';
import { type Frame, readableFrames } from './frames.ts';
import { makeSentence } from './make-sentence.ts';
import { createVocabulary } from './vocabulary.ts';

/** The wishes for sentences. */
export interface SentenceWish {
  /** The group's own names: they may be who a sentence is about. */
  readonly names: readonly string[];
  /** Patterns a sentence is to practise, where it can. */
  readonly focus?: readonly PatternId[];
  readonly count: number;
  /** Words in a sentence at most; by what the group knows where it is not given. */
  readonly longest?: number;
}

/** So many times as many sentences as are wanted practise the lesson's patterns before the choice is made. */
const SPARE = 2;
/** And no more than so many times as many, where few practise what the lesson is about. */
const MOST_SPARE = 8;
/** After so many tries for each one wanted, what there is must do. */
const MOST_TRIES = 150;
const FEWEST_WORDS = 4;

/**
 * Short sentences that make sense, of words the group can read: `The crab hid under the big rock.` Some are written by hand, the others made
 * by the grammar. Fewer than are wanted, or none, where too little is known. The same picker gives the same sentences.
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

/** A group that knows more reads longer sentences; the figures are ours. */
function usualLength(words: number): number {
  const steps = [120, 500, 1500, 3500, 7000];
  return 5 + steps.filter((step) => words >= step).length;
}

/** People, having and being, and all that swims and rolls come in turn, whatever the number of their frames. */
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

/** In so many of the sentences a word of the lesson may be. */
const MOST_OF_A_SHEET = 0.15;
/** What it costs each time more that a sentence has no word of the lesson but such; our own figure. */
const OWN_AGAIN = 1.6;

/** What it costs a sentence that it is made by the grammar: one that is written makes more sense. Our own figure. */
const MADE = 2;

/** Sentences that practise and are written come first; then such as are least like those taken before. Written ones have no frame. */
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
      // The words of the lesson in it; once they have all been said, another sentence is better; short forms are few.
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
