import { say } from '../../wording/say.ts';

/**
 * The maximum length of a line, in UTF-16 units. No saved item has a line this long: it would be a book of 3 million
 * words.
 */
const LONGEST_LINE = 50_000_000;

/**
 * Reads the lines of a file one by one, so that a file of any length fits into memory. At a line that is too long for a
 * file of Wordreach, the generator yields null and ends.
 */
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
    // If the caller reads only the first lines, the rest of the file is not read.
    void reader.cancel();
  }
}

interface CountedFile<T> {
  /** Returns the number of items that the first line gives. Throws if the line is not the first line of such a file. */
  readonly readHead: (line: string | null) => number;
  /**
   * Returns the item of a line; the first item has the number 1. Throws if the line is damaged, or null because it is
   * too long.
   */
  readonly readItem: (line: string | null, number: number) => T;
  /** The error that is thrown when the file has another number of items than the first line says. */
  readonly cutOff: (counts: { expected: number; found: number }) => Error;
}

/**
 * Reads a file item by item. The first line gives the number of items, and each item has a line of its own. Empty lines
 * are skipped.
 */
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

/** Returns a name for the line of an item, such as `Line 3 of the file` for item 2. */
export function lineOfItem(number: number): string {
  return say('host.lineOfFile', { number: number + 1 });
}
