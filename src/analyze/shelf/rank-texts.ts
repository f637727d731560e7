import type { Climber } from '../climb/create-climber.ts';
import { percentRead } from '../standing/vet.ts';
import type { NumberedWords, WordNumbers } from './number-words.ts';

/** The steps of all numbered words for one group. */
export interface WordSteps {
  /** How many steps the group's sequence has. */
  readonly steps: number;
  /**
   * Finds the steps of words met since the last call, at most so many, since words may have to be analysed for it; true when
   * all are found.
   */
  follow(most?: number): boolean;
  /** From which step on a word is read, and is a running word, by its number; `steps + 1` for never. */
  readonly reads: Uint16Array;
  readonly counts: Uint16Array;
}

/** How a text fits a group. */
export interface Fit {
  /** Percent of running words the group reads now, one decimal; what `tallyText` says. */
  readonly reach: number;
  /** Running words now: all but names and skipped. */
  readonly running: number;
  /** Running words that the group reads since the step it is at, and did not before. */
  readonly opened: number;
  readonly now: boolean;
  /**
   * Where the text reads now, the step since which it has; else the next step from which it will, null where none of
   * the sequence is enough.
   */
  readonly step: number | null;
}

/** Follows the words of a list through a group's sequence; the step the group is at does not matter. */
export function stepsOfWords(numbers: WordNumbers, climber: Climber): WordSteps {
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
        const climb = climber(keys[done]!);
        reads[done] = climb.reads ?? never;
        counts[done] = climb.counts ?? never;
      }
      return done === keys.length;
    },
  };
}

/**
 * How each text fits a group at a step, in the order given; a text reads with a reach of `mark` percent. All words must have been
 * followed. One pass over the words of all texts: three million words take some 20 ms.
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
  /** Where the reach came to the mark and has not left it again; -1 while it is below. */
  let since = -1;
  for (let at = 0; at <= steps; at++) {
    readable += opens[at]!;
    running += starts[at]!;
    if (at === step) {
      reach = percentRead(readable, running);
      runningNow = running;
    }
    // Far below the mark, the figure itself does not matter.
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
