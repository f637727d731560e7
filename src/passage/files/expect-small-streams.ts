import { Unzlib } from 'fflate';
import { say } from '../../wording/say.ts';
import { FileFault } from './file-fault.ts';

/** More than a page's text or picture has, in bytes; what unpacks to more is made to fill the memory. */
const LARGEST = 64_000_000;
/** More than the pictures of a file have that can be opened, in bytes. */
const LARGEST_IN_ALL = 10 * LARGEST;
/** Packed several times over; nobody needs more. */
const MOST_LAYERS = 8;
/** Fed in small pieces, since a piece may unpack to a thousand times its size before the size is known. */
const PIECE = 16_384;
/** The dictionary before a stream is no longer, in bytes. */
const DICTIONARY = 400;

/**
 * Lets a PDF through in which no stream unpacks to more than there is memory for, nor all of them together (ISO 32000-1, 7.4). A stream's own
 * bytes say whether it is packed by Flate, also several times over, since its dictionary may say so in many ways. A
 * broken stream is left to the reader of the file. Throws `FileFault`.
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
    // Each two bytes may stand for 128.
    const grown = /\/(?:RunLengthDecode|RL)\b/.test(dictionary) ? size * 64 : size;
    total += grown;
    if (grown > LARGEST || total > LARGEST_IN_ALL) throw new FileFault(say('files.unpacksTooLarge'));
    if (end === -1) return;
    at = end;
  }
}

/** How many bytes come out, of the layer with most; at least one more than `LARGEST` where there would be more. */
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

/** The two bytes with which a packed stream begins (RFC 1950, 2.2). */
function isPacked([first = 0, second = 0]: Uint8Array): boolean {
  return (first & 15) === 8 && first >> 4 <= 7 && (first * 256 + second) % 31 === 0 && (second & 32) === 0;
}
