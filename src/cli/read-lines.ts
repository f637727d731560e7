import { finished, type Readable } from 'node:stream';

/** The lines of a stream as they come, numbered from 1, without those that are blank. Ends early when stopped. */
export async function* readLines(
  stream: Readable,
  signal: AbortSignal,
): AsyncGenerator<{ line: string; number: number }> {
  const stop = (): void => void stream.destroy();
  signal.addEventListener('abort', stop);
  const ended = finished(stream, () => signal.removeEventListener('abort', stop));
  let number = 0;
  let rest = '';
  try {
    for await (const chunk of stream.setEncoding('utf8') as AsyncIterable<string>) {
      const lines = (rest + chunk).split('\n');
      rest = lines.pop()!;
      for (const line of lines) {
        number++;
        if (line.trim() !== '') yield { line, number };
      }
    }
    if (rest.trim() !== '') yield { line: rest, number: number + 1 };
  } catch (error) {
    if (!signal.aborted) throw error;
  } finally {
    ended();
  }
}
