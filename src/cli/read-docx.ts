import { zipSync } from 'fflate';
import mammoth from 'mammoth';
import { expectFewTags } from '../passage/files/expect-few-tags.ts';
import { FileFault } from '../passage/files/file-fault.ts';
import { unpackZip } from '../passage/files/unpack-zip.ts';
import type { OpenedText } from './opened-text.ts';
import { readHtml } from './read-html.ts';

/**
 * Returns the text of a Word document without its footnotes. The first heading becomes the title. Rejects with
 * `FileFault`.
 */
export async function readDocx(bytes: Uint8Array): Promise<OpenedText> {
  const { parts } = await unpackZip(bytes, (part) => /\.(xml|rels)$/i.test(part));
  expectFewTags(parts.values());
  // Word never writes document types. Their entities could be built to expand without end.
  for (const part of parts.values())
    if (Buffer.from(part.subarray(0, 4096)).includes('<!DOCTYPE'))
      throw new FileFault('This is not a document that Word wrote. Save it from Word as .docx.');
  // The file is packed again without the pictures, so that nothing else is ever unpacked.
  const buffer = Buffer.from(zipSync(Object.fromEntries(parts), { level: 0 }));
  const html = await mammoth
    .convertToHtml({ buffer }, { styleMap: ["p[style-name='Title'] => h1:fresh"] })
    .catch(() => {
      throw new FileFault('This Word document is damaged. Open it in Word, and save it again.');
    });
  return readHtml(
    html.value.replace(/<li id="(?:foot|end)note-.*?<\/li>|<sup><a href="#(?:foot|end)note-.*?<\/sup>/gs, ''),
  );
}
