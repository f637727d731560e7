import { Unzlib } from 'fflate';
import { say } from '../../wording/say.ts';
import { FileFault } from './file-fault.ts';

/**
 * The largest size that a stream may unpack to, in bytes. The text or picture of a page is smaller. A stream that
 * unpacks to more was made to fill the memory.
 */
const LARGEST = 64_000_000;
/**
 * The largest size that all streams of a file may unpack to, in bytes. The pictures of a file that can be opened are
 * smaller.
 */
const LARGEST_IN_ALL = 10 * LARGEST;
/** The most layers of packing that a stream may have. Nobody needs more. */
const MOST_LAYERS = 8;
/**
 * The size of the pieces that are unpacked, in bytes. Pieces are small because a piece may unpack to a thousand times
 * its size before the size is known.
 */
const PIECE = 16_384;
/** The greatest length of the dictionary before a stream, in bytes. */
const DICTIONARY = 400;

/**
 * Checks that no stream of a PDF unpacks to more than there is memory for, and that all streams together do not either
 * (ISO 32000-1, 7.4). A stream's own bytes tell whether the stream is packed by Flate, even several times over. The
 * stream's dictionary is not asked, since it may state the packing in many ways. A broken stream is left to the reader
 * of the file. Throws `FileFault`.
 */
export function expectSmallStreams(pdf: Uint8Array): void {
  const text = new TextDecoder('latin1').decode(pdf);
  let total = 0;
  for (let at = text.indexOf('stream'); at !== -1; at = text.indexOf('stream', at + 6)) {
    if (text.startsWith('end', at - 3)) continue;
    const start = at + (text.startsWith('stream\r\n', at) ? 8 : 7);
    const end = text.indexOf('endstream', start);
    const size = sizeUnpacked(pdf.subarray(start, end === -1 ? pdf.length : end));
    const before = text.slice(Math.max(0, at - DICTIONARY), at);
    const dictionary = before.slice(Math.max(before.lastIndexOf(' obj'), before.lastIndexOf('endobj'), 0));
    // With run-length coding, each two bytes may unpack to 128 bytes.
    const grown = /\/(?:RunLengthDecode|RL)\b/.test(dictionary) ? size * 64 : size;
    total += grown;
    if (grown > LARGEST || total > LARGEST_IN_ALL) throw new FileFault(say('files.unpacksTooLarge'));
    if (end === -1) return;
    at = end;
  }
}

/** Returns the number of bytes in the largest layer of a stream. Throws `FileFault` if a layer has more than `LARGEST`. */
function sizeUnpacked(bytes: Uint8Array): number {
  let largest = bytes.length;
  const layers: Unzlib[] = [];
  const sizes: number[] = [];
  const feed = (layer: number, piece: Uint8Array): void => {
    if (piece.length === 0) return;
    const isFirst = sizes[layer] === undefined;
    sizes[layer] = (sizes[layer] ?? 0) + piece.length;
    largest = Math.max(largest, sizes[layer]!);
    if (largest > LARGEST) throw new FileFault(say('files.unpacksTooLarge'));
    if (isFirst && layer < MOST_LAYERS && isPacked(piece))
      layers[layer] = new Unzlib((unpacked) => feed(layer + 1, unpacked));
    const packed = layers[layer];
    if (packed) for (let at = 0; at < piece.length; at += PIECE) packed.push(piece.subarray(at, at + PIECE));
  };
  try {
    for (let at = 0; at < bytes.length; at += PIECE) feed(0, bytes.subarray(at, at + PIECE));
  } catch (error) {
    if (error instanceof FileFault) throw error;
  }
  return largest;
}

/** Checks for the two bytes with which a packed stream begins (RFC 1950, 2.2). */
function isPacked([first = 0, second = 0]: Uint8Array): boolean {
  return (first & 15) === 8 && first >> 4 <= 7 && (first * 256 + second) % 31 === 0 && (second & 32) === 0;
}
