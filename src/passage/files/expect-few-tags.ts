import { say } from '../../wording/say.ts';
import { FileFault } from './file-fault.ts';

/** A long novel has a tenth of them; a document of more takes longer to take apart than anybody waits. */
const MOST = 1_000_000;

/** Lets the parts of a document or book through, or a page, that have no more tags in all than can be read in some seconds. Throws `FileFault`. */
export function expectFewTags(parts: Iterable<Uint8Array>, fault = say('files.unpacksTooLarge')): void {
  let tags = 0;
  for (const part of parts)
    for (let at = part.indexOf(TAG); at !== -1; at = part.indexOf(TAG, at + 1))
      if (++tags > MOST) throw new FileFault(fault);
}

/** The sign `<`. */
const TAG = 0x3c;
