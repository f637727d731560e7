import { type Judge, remember, settleCapital } from '../analyze/index.ts';
import type { Standing, WordKey } from '../analyze/types.ts';
import { type CutLine, cutLine } from './cut-line.ts';
import { type Steps, takeSteps } from './take-steps.ts';

/** A word of a line with its standing for the group. Offsets are UTF-16 units into the line. */
export interface ShadedWord {
  readonly start: number;
  readonly end: number;
  readonly key: WordKey;
  readonly standing: Standing;
}

export interface ShadedLine extends CutLine {
  readonly words: readonly ShadedWord[];
}

/** Returns the shaded words of one line of a text. */
export type ShadeLine = (line: string) => ShadedLine;

/** Returns the function that shades the lines of a text. */
export interface Shader {
  (text: string): ShadeLine;
  /** Does the same work a line at a time. A long text takes longer than a page may be kept waiting. */
  inSteps(text: string): Steps<ShadeLine>;
}

/** Returns the shaded words of all lines of a text. Offsets are into the whole text. */
export function shadeText(text: string, shade: ShadeLine): ShadedWord[] {
  let at = 0;
  return text.split('\n').flatMap((line) => {
    const from = at;
    at += line.length + 1;
    return shade(line).words.map((word) => ({ ...word, start: word.start + from, end: word.end + from }));
  });
}

/** The maximum number of cached lines. */
const MOST = 20_000;

/**
 * Creates a function that shades the lines of a text. The whole text decides whether a word with a capital is a name.
 * For example, `Biscuit sat` is about a cat if another line has a cat called Biscuit. Two texts with the same decisions
 * get the same function. Lines are cached, so that typing costs only one line.
 */
export function createShader(judge: Judge): Shader {
  const cut = remember(cutLine, MOST);
  let settled = '';
  let last: ShadeLine | undefined;
  function* inSteps(text: string): Generator<undefined, ShadeLine> {
    const keys = yield* findSettled(text, cut);
    const now = [...keys.values()].sort().join(' ');
    if (last && now === settled) return last;
    settled = now;
    last = createLineShader(judge, cut, keys);
    return last;
  }
  return Object.assign((text: string) => takeSteps(inSteps(text)), { inSteps });
}

function createLineShader(
  judge: Judge,
  cut: (line: string) => CutLine,
  settled: ReadonlyMap<WordKey, WordKey>,
): ShadeLine {
  return remember((line) => {
    const { words, skipped } = cut(line);
    return {
      words: words.map((word) => {
        const key = settled.get(word.key) ?? word.key;
        return { ...word, key, standing: judge(key).standing };
      }),
      skipped,
    };
  }, MOST);
}

/** Returns the new keys of the words with a capital that the rest of the text decides about. */
function* findSettled(
  text: string,
  cut: (line: string) => CutLine,
): Generator<undefined, ReadonlyMap<WordKey, WordKey>> {
  const counts = new Map<WordKey, number>();
  for (const line of text.split('\n')) {
    for (const { key } of cut(line).words) counts.set(key, (counts.get(key) ?? 0) + 1);
    yield;
  }
  const countOf = (key: WordKey): number => counts.get(key) ?? 0;
  const settled = new Map<WordKey, WordKey>();
  for (const key of counts.keys()) {
    const as = settleCapital(key, countOf);
    if (as !== key) settled.set(key, as);
  }
  return settled;
}
