import type { ListClimber } from '../climb/create-climber.ts';
import { percentRead } from '../standing/vet.ts';
import type { NumberedWords, WordNumbers } from './number-words.ts';

/** The steps of all numbered words, for one group. */
export interface WordSteps {
  /** Number of steps in the group's sequence. */
  readonly steps: number;
  /**
   * Finds the steps of words added since the last call. `most` limits the number of words, because words may have to be
   * analysed. Returns true when the steps of all words are known.
   */
  follow(most?: number): boolean;
  /**
   * The first step at which each word is read, and the first at which it is a running word, by the word's number.
   * `steps + 1` means never.
   */
  readonly reads: Uint16Array;
  readonly counts: Uint16Array;
}

/** The fit of a text to a group. */
export interface Fit {
  /** Percent of running words the group reads now, with one decimal. The same as the result of `tallyText`. */
  readonly reach: number;
  /** Number of running words now: all words except names and skipped words. */
  readonly running: number;
  /** Number of running words that the group first reads at its current step. */
  readonly opened: number;
  readonly now: boolean;
  /**
   * For a text that is readable now, the step since which it has been readable. For any other text, the next step from
   * which it will be readable. Null if no step of the sequence is enough.
   */
  readonly step: number | null;
}

/** Follows the words of a list through a group's sequence. The current step of the group makes no difference. */
export function stepsOfWords(numbers: WordNumbers, climber: ListClimber): WordSteps {
  const never = climber.steps + 1;
  let reads = new Uint16Array(1024);
  let counts = new Uint16Array(1024);
  let done = 0;
  return {
    steps: climber.steps,
    get reads() {
      return reads;
    },
    get counts() {
      return counts;
    },
    follow(most = Infinity) {
      const { keys } = numbers;
      const end = Math.min(keys.length, done + most);
      if (end > reads.length) {
        reads = enlarge(reads, keys.length);
        counts = enlarge(counts, keys.length);
      }
      for (; done < end; done++) {
        const climb = climber.at(keys, done);
        reads[done] = climb.reads ?? never;
        counts[done] = climb.counts ?? never;
      }
      return done === keys.length;
    },
  };
}

/**
 * Computes the fit of each text to a group at a step, in the given order. A text is readable if its reach is at least
 * `mark` percent. All words must have been followed first. One pass covers the words of all texts: three million words
 * take some 20 ms.
 */
export function rankTexts(
  texts: readonly NumberedWords[],
  words: WordSteps,
  { step, mark }: { readonly step: number; readonly mark: number },
): Fit[] {
  const { steps, reads, counts } = words;
  const opens = new Int32Array(steps + 2);
  const starts = new Int32Array(steps + 2);
  return texts.map((text) => {
    opens.fill(0);
    starts.fill(0);
    let all = 0;
    for (let i = 0; i < text.length; i += 2) {
      const word = text[i]!;
      const count = text[i + 1]!;
      opens[reads[word]!]! += count;
      all += count;
      const start = counts[word]!;
      if (start === 0) continue;
      starts[start]! += count;
      all -= count;
    }
    starts[0] = all;
    return fitAt(opens, starts, { step, mark, steps });
  });
}

function fitAt(
  opens: Int32Array,
  starts: Int32Array,
  { step, mark, steps }: { step: number; mark: number; steps: number },
): Fit {
  let readable = 0;
  let running = 0;
  let reach = 100;
  let runningNow = 0;
  /** The step at which the reach rose to the mark and has stayed there since; -1 while the reach is below the mark. */
  let since = -1;
  for (let at = 0; at <= steps; at++) {
    readable += opens[at]!;
    running += starts[at]!;
    if (at === step) {
      reach = percentRead(readable, running);
      runningNow = running;
    }
    // Far below the mark, the exact figure makes no difference.
    const isFar = readable * 100 < running * (mark - 1);
    if (isFar || percentRead(readable, running) < mark) since = -1;
    else if (since < 0) since = at;
    if (at >= step && since >= 0) break;
  }
  const now = since >= 0 && since <= step;
  return { reach, running: runningNow, opened: opens[step]!, now, step: since < 0 ? null : since };
}

function enlarge(list: Uint16Array<ArrayBuffer>, wanted: number): Uint16Array<ArrayBuffer> {
  const larger = new Uint16Array(Math.max(wanted, list.length * 2));
  larger.set(list);
  return larger;
}
