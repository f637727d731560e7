import { Unzlib } from 'fflate';
import { say } from '../../wording/say.ts';
import { FileFault } from './file-fault.ts';

/** More than a page's text or picture has, in bytes; what unpacks to more is made to fill the memory. */
const LARGEST = 64_000_000;
/** Fed in small pieces, since a piece may unpack to a thousand times its size before the size is known. */
const PIECE = 16_384;
/** The dictionary before a stream is no longer, in bytes. */
const DICTIONARY = 400;

/**
 * Lets a PDF through in which no stream packed by Flate, also several times over, unpacks to more than there is memory for (ISO 32000-1, 7.4.4).
 * What is broken is left to who reads the file. Throws `FileFault`.
 */
export function expectSmallStreams(pdf: Uint8Array): void {
  const text = new TextDecoder('latin1').decode(pdf);
  for (let at = text.indexOf('stream'); at !== -1; at = text.indexOf('stream', at + 6)) {
    if (text.startsWith('end', at - 3)) continue;
    const start = at + (text.startsWith('stream\r\n', at) ? 8 : 7);
    const end = text.indexOf('endstream', start);
    const before = text.slice(Math.max(0, at - DICTIONARY), at);
    const dictionary = before.slice(Math.max(before.lastIndexOf(' obj'), before.lastIndexOf('endobj'), 0));
    const times = dictionary.match(/\/(?:FlateDecode|Fl)\b/g)?.length ?? 0;
    if (times > 0) unpack(pdf.subarray(start, end === -1 ? pdf.length : end), times);
    if (end === -1) return;
    at = end;
  }
}

/** Unpacks bytes so many times over and forgets them. */
function unpack(bytes: Uint8Array, times: number): void {
  let size = 0;
  const layers: Unzlib[] = [];
  for (let n = 0; n < times; n++)
    layers.push(
      new Unzlib((piece) => {
        size += piece.length;
        if (size > LARGEST) throw new FileFault(say('files.unpacksTooLarge'));
        const next = layers[n + 1];
        if (next) for (let at = 0; at < piece.length; at += PIECE) next.push(piece.subarray(at, at + PIECE));
      }),
    );
  try {
    for (let at = 0; at < bytes.length; at += PIECE) layers[0]!.push(bytes.subarray(at, at + PIECE));
  } catch (error) {
    if (error instanceof FileFault) throw error;
  }
}
