import { say } from '../../wording/say.ts';
import { FileFault } from './file-fault.ts';
import type { FileTime } from './file-time.ts';

/**
 * The largest unpacked size, in bytes. Even a long book has less without its pictures. A file that unpacks to more is
 * made to fill the memory.
 */
const LARGEST = 64_000_000;
/** The largest number of parts in a zip file. No book has more. */
const MOST_PARTS = 20_000;
/**
 * The size of the pieces that are unpacked, in bytes. The pieces are small, since a piece may unpack to a thousand
 * times its size before the size is known.
 */
const PIECE = 16_384;

/**
 * Unpacks the parts of a zip file for whose names `wanted` returns true. Returns these parts by name, and the names of
 * all parts. Rejects with `FileFault` if the file is broken, unpacks to more than a book, or has used up its `time`.
 */
export async function unpackZip(
  bytes: Uint8Array,
  wanted: (name: string) => boolean,
  time?: FileTime,
): Promise<{ readonly parts: Map<string, Uint8Array>; readonly names: readonly string[] }> {
  const { Unzip, UnzipInflate } = await import('fflate');
  const pieces = new Map<string, Uint8Array[]>();
  const ended = new Set<string>();
  const names: string[] = [];
  let size = 0;
  let broken = false;
  const unzip = new Unzip((part) => {
    names.push(part.name);
    if (!wanted(part.name)) return;
    const own: Uint8Array[] = [];
    pieces.set(part.name, own);
    part.ondata = (error, piece, last) => {
      if (error) broken = true;
      else {
        own.push(piece);
        size += piece.length;
        if (last) ended.add(part.name);
      }
    };
    part.start();
  });
  unzip.register(UnzipInflate);
  try {
    for (let at = 0; at < bytes.length && !broken; at += PIECE) {
      unzip.push(bytes.subarray(at, at + PIECE), at + PIECE >= bytes.length);
      await time?.pause();
      if (size > LARGEST || names.length > MOST_PARTS) throw new FileFault(say('files.unpacksTooLarge'));
    }
  } catch (error) {
    if (error instanceof FileFault) throw error;
    broken = true;
  }
  if (broken || names.length === 0 || [...pieces.keys()].some((name) => !ended.has(name)))
    throw new FileFault(say('files.damaged'));
  const parts = new Map([...pieces].map(([name, own]) => [name, join(own)]));
  return { parts, names };
}

function join(pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
