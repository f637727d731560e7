import { finished, type Readable } from 'node:stream';
import { explainReading } from './explain-errno.ts';
import { InputError } from './run-command.ts';

/**
 * Yields the non-blank lines of a stream as they arrive, numbered from 1. The stream is in UTF-8, or in UTF-16 with a
 * byte order mark. Ends early when the signal is aborted. Throws `InputError` if the stream cannot be read.
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

/** Decodes the text of a stream. The first two bytes tell the encoding. */
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
