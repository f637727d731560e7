import { say } from '../../wording/say.ts';
import { FileFault } from './file-fault.ts';

/**
 * The most tags that a document may have. A long novel has a tenth of this number. Parsing a document with more takes
 * longer than anybody waits.
 */
const MOST = 1_000_000;

/**
 * Checks that a page, or the parts of a document or book, have no more tags in all than can be read in some seconds.
 * Throws `FileFault` otherwise.
 */
export function expectFewTags(parts: Iterable<Uint8Array>, fault = say('files.unpacksTooLarge')): void {
  let tags = 0;
  for (const part of parts)
    for (let at = part.indexOf(TAG); at !== -1; at = part.indexOf(TAG, at + 1))
      if (++tags > MOST) throw new FileFault(fault);
}

/** The code of the character `<`. */
const TAG = 0x3c;
