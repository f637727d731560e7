import { say } from '../../wording/say.ts';

/** Nothing that is saved has a line this long, in UTF-16 units: a book of 3 million words. */
const LONGEST_LINE = 50_000_000;

/** The lines of a file one by one, so that one of any length fits into memory; null, and no more, at a line too long to be ours. */
async function* readFileLines(file: Blob): AsyncGenerator<string | null> {
  const reader = file.stream().pipeThrough(new TextDecoderStream()).getReader();
  let rest = '';
  try {
    while (true) {
      const { value, done } = await reader.read();
      if (done) break;
      const lines = (rest + value).split('\n');
      rest = lines.pop()!;
      yield* lines;
      if (rest.length > LONGEST_LINE) {
        yield null;
        return;
      }
    }
    yield rest;
  } finally {
    // Who reads only the first lines leaves the rest of the file alone.
    void reader.cancel();
  }
}

interface CountedFile<T> {
  /** How many items the first line says there are; throws where it is not that of such a file. */
  readonly readHead: (line: string | null) => number;
  /** The item of a line, the first of which has the number 1; throws where it is damaged, or null because the line is too long. */
  readonly readItem: (line: string | null, number: number) => T;
  /** The error that is thrown when the file has another number of them. */
  readonly cutOff: (counts: { expected: number; found: number }) => Error;
}

/** Reads a file item by item: a first line that counts them, then a line for each; empty lines are none. */
export async function* readCountedLines<T>(
  file: Blob,
  { readHead, readItem, cutOff }: CountedFile<T>,
): AsyncGenerator<T> {
  let expected: number | null = null;
  let found = 0;
  for await (const line of readFileLines(file)) {
    if (expected === null) expected = readHead(line);
    else if (line?.trim() !== '') yield readItem(line, ++found);
  }
  expected ??= 0;
  if (found !== expected) throw cutOff({ expected, found });
}

/** `Line 3 of the file`, for an item by its number. */
export function lineOfItem(number: number): string {
  return say('host.lineOfFile', { number: number + 1 });
}
