import type { PatternId } from '../../analyze/types.ts';
import type { KnownWords } from '../known-words.ts';
import type { Picker } from '../picker.ts';
import { type Frame, readableFrames } from './frames.ts';
import { makeSentence } from './make-sentence.ts';
import { createVocabulary, type Vocabulary } from './vocabulary.ts';

/** What sentences are wanted. */
export interface SentenceWish {
  /** The group's own names: they may be who a sentence is about. */
  readonly names: readonly string[];
  /** Patterns a sentence is to practise, where it can. */
  readonly focus?: readonly PatternId[];
  readonly count: number;
  /** Words in a sentence at most; by what the group knows where it is not given. */
  readonly longest?: number;
}

/** Sentences tried for each one wanted, and at least. */
const TRIES = 30;
const LEAST_TRIES = 150;
const FEWEST_WORDS = 4;

/**
 * Short sentences that make sense, made of words the group can read: `The crab hid under the big rock.` Fewer than are
 * wanted, or none, where too little is known. The same picker gives the same sentences.
 */
export function composeSentences(known: KnownWords, wish: SentenceWish, picker: Picker): string[] {
  const focus = wish.focus ?? [];
  const longest = wish.longest ?? usualLength(known.words.length);
  const vocabulary = createVocabulary(known, focus);
  const names = wish.names.filter((name) => /^\p{Lu}[\p{L}'’-]*$/u.test(name) && known.reads(name));
  const frames = readableFrames(vocabulary);
  const made = new Map<string, Frame>();
  const tries = Math.max(LEAST_TRIES, wish.count * TRIES);
  for (let i = 0; i < tries && frames.length > 0; i++) {
    const frame = chooseFrame(frames, picker);
    const sentence = makeSentence(
      frame,
      {
        vocabulary,
        names,
        longest,
        possessives: known.knows('possessive'),
        contractions: known.knows('contraction'),
      },
      picker,
    );
    if (sentence === null || made.has(sentence)) continue;
    const words = sentence.split(' ').length;
    if (words >= FEWEST_WORDS && words <= longest && known.reads(sentence)) made.set(sentence, frame);
  }
  return takeDifferent(made, wish.count, vocabulary);
}

/** A group that knows more reads longer sentences; the figures are ours. */
function usualLength(words: number): number {
  const steps = [120, 500, 1500, 3500, 7000];
  return 5 + steps.filter((step) => words >= step).length;
}

/** People, having and being, and all that swims and rolls come in turn, whatever the number of their frames. */
function chooseFrame(frames: readonly Frame[], picker: Picker): Frame {
  const practising = frames.filter(({ practises }) => practises);
  const from = practising.length > 0 && picker.below(10) < 8 ? practising : frames;
  const groups = new Map<string, Frame[]>();
  for (const frame of from) {
    const name = /^(people|plain)$/.test(frame.group) ? frame.group : 'creatures';
    groups.set(name, [...(groups.get(name) ?? []), frame]);
  }
  const likely = ['people', 'people', 'people', 'plain', 'plain', 'creatures', 'creatures', 'creatures'];
  const here = likely.filter((name) => groups.has(name));
  const group = groups.get(here[picker.below(here.length)]!)!;
  return group[picker.below(group.length)]!;
}

/** Those that practise first; then such as are least like those taken before. */
function takeDifferent(made: ReadonlyMap<string, Frame>, count: number, vocabulary: Vocabulary): string[] {
  const rest = [...made].map(([sentence, frame]) => {
    const words = sentence.toLowerCase().replace(/[.?]/g, '').split(' ');
    return {
      sentence,
      frame,
      words,
      practises: sentence.replace(/[.?]/g, '').split(' ').some(vocabulary.practises),
    };
  });
  const taken: typeof rest = [];
  const seen = new Map<string, number>();
  while (taken.length < count && rest.length > 0) {
    let best = 0;
    let bestCost = Number.POSITIVE_INFINITY;
    for (const [i, { frame, words, practises }] of rest.entries()) {
      const again = words.reduce((sum, word) => sum + (seen.get(word) ?? 0), 0) / words.length;
      const sameFrame = taken.some((other) => other.frame === frame) ? 1 : 0;
      const cost = (practises ? 0 : 3) + sameFrame + again;
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
