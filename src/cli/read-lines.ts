import { finished, type Readable } from 'node:stream';
import { explainReading } from './explain-errno.ts';
import { InputError } from './run-command.ts';

/**
 * The lines of a stream in UTF-8, or in UTF-16 with its byte order mark, as they come, numbered from 1, without those that are blank. Ends early
 * when stopped. Throws `InputError` when the stream cannot be read.
 */
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
    for await (const piece of decode(stream)) {
      const lines = (rest + piece).split('\n');
      rest = lines.pop()!;
      for (const line of lines) {
        number++;
        if (line.trim() !== '') yield { line, number };
      }
    }
    if (rest.trim() !== '') yield { line: rest, number: number + 1 };
  } catch (error) {
    if (!signal.aborted) throw new InputError(`stdin: ${explainReading(error)}`);
  } finally {
    ended();
  }
}

/** The text of a stream; its first two bytes say how it is written. */
async function* decode(stream: AsyncIterable<Buffer>): AsyncGenerator<string> {
  let start: Buffer = Buffer.alloc(0);
  let decoder: TextDecoder | null = null;
  for await (const chunk of stream) {
    start = decoder ? chunk : Buffer.concat([start, chunk]);
    if (start.length < 2) continue;
    decoder ??= new TextDecoder(encodingOf(start));
    yield decoder.decode(start, { stream: true });
  }
  yield decoder ? decoder.decode() : start.toString('utf8');
}

function encodingOf([first, second]: Buffer): string {
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  return first === 0xfe && second === 0xff ? 'utf-16be' : 'utf-8';
}
