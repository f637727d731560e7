import { fstatSync, ftruncateSync, writeSync } from 'node:fs';
import { Writable } from 'node:stream';
import { explainWriting } from './explain-errno.ts';

/** The reason why the output stops, in a sentence. The output written before consists of whole pieces. */
export class OutputFault extends Error {
  override readonly name = 'OutputFault';
}

/** The output of a command. It receives whole pieces: a row, a record, a report. */
export interface Output {
  readonly stream: Writable;
  /**
   * Ends the output after a piece could not be written: removes the partly written piece and writes `foot`. If there is
   * no room for `foot`, whole pieces are removed too. In a pipe nothing can be removed.
   */
  endWhole(foot: string): void;
}

/**
 * Opens the output of this process. Files are written with our own function, since Node treats a partly written piece
 * as written.
 */
export function openOutput(): Output {
  const place = fstatSync(STDOUT);
  if (process.stdout.isTTY || place.isFIFO() || place.isSocket())
    return { stream: process.stdout, endWhole: () => undefined };
  const ends = [place.isFile() ? place.size : 0];
  const stream = new Writable({
    decodeStrings: true,
    write(piece: Buffer, _encoding, done) {
      try {
        writeWhole(piece);
        ends.push(ends.at(-1)! + piece.length);
        done();
      } catch (error) {
        done(error as Error);
      }
    },
  });
  return {
    stream,
    endWhole(foot) {
      if (!place.isFile()) return;
      for (let end = ends.pop()!; ; end = ends.pop()!) {
        ftruncateSync(STDOUT, end);
        if (ends.length === 0) return;
        try {
          return writeWhole(Buffer.from(foot), end);
        } catch {
          // There is no room for `foot` either, so one more piece is removed.
        }
      }
    },
  };
}

/** Prints a text as a whole or not at all. Rejects with `OutputFault`. */
export function printWhole(text: string): Promise<void> {
  const { stream, endWhole } = openOutput();
  return new Promise((resolve, reject) => {
    const fail = (error: Error): void => {
      endWhole('');
      reject(new OutputFault(explainWriting(error)));
    };
    stream.once('error', fail);
    stream.write(text, (error) => (error ? undefined : resolve()));
  });
}

const STDOUT = 1;

function writeWhole(piece: Buffer, position: number | null = null): void {
  for (let at = 0; at < piece.length; )
    at += writeSync(STDOUT, piece, at, piece.length - at, position === null ? null : position + at);
}
