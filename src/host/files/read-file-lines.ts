/** Nothing that is saved has a line this long, in UTF-16 units: a book of 3 million words. */
const LONGEST_LINE = 50_000_000;

/** The lines of a file one by one, so that one of any length fits into memory; null, and no more, at a line too long to be ours. */
export async function* readFileLines(file: Blob): AsyncGenerator<string | null> {
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
