import { say } from '../../wording/say.ts';
import { writeLines } from '../passage-lines.ts';
import { expectFewTags } from './expect-few-tags.ts';
import { FileFault } from './file-fault.ts';
import type { OpenedText } from './opened-file.ts';
import { readHtmlLines } from './read-html-lines.ts';
import { unpackZip } from './unpack-zip.ts';

/**
 * The text of a Word document: headings, paragraphs and lists; footnotes and pictures are counted and left out. Rejects with
 * `FileFault`.
 */
export async function readDocx(bytes: Uint8Array, name: string): Promise<OpenedText> {
  const { parts } = await unpackZip(bytes, (part) => /\.(xml|rels)$/i.test(part));
  expectFewTags(parts.values());
  // Word writes no document types; their entities could be made to grow without end.
  for (const part of parts.values())
    if (new TextDecoder().decode(part.subarray(0, 4096)).includes('<!DOCTYPE'))
      throw new FileFault(say('files.notFromWord'));
  const [{ zipSync }, { default: mammoth }] = await Promise.all([import('fflate'), import('mammoth')]);
  // Packed anew without the pictures, so that nothing else is ever unpacked.
  const arrayBuffer = zipSync(Object.fromEntries(parts), { level: 0 }).buffer as ArrayBuffer;
  let pictures = 0;
  const html = await mammoth
    .convertToHtml(
      { arrayBuffer },
      {
        convertImage: mammoth.images.imgElement(async () => {
          pictures++;
          return { src: '' };
        }),
        styleMap: ["p[style-name='Title'] => h1:fresh", "p[style-name='Subtitle'] => p:fresh"],
      },
    )
    .then(
      ({ value }) => value,
      () => {
        throw new FileFault(say('files.damagedDocument'));
      },
    );
  const { body } = new DOMParser().parseFromString(html, 'text/html');
  const notes = [...body.querySelectorAll('li[id^="footnote-"], li[id^="endnote-"]')];
  for (const note of notes) note.remove();
  const lines = readHtmlLines(body);
  if (lines.length === 0) throw new FileFault(say('files.noWordsInDocument'));
  return {
    title:
      readTitle(parts.get('docProps/core.xml')) || lines.find(({ kind }) => kind === 'heading')?.text || name,
    text: writeLines(lines),
    leftOut: { pictures, footnotes: notes.length },
  };
}

function readTitle(part: Uint8Array | undefined): string {
  if (!part) return '';
  const doc = new DOMParser().parseFromString(new TextDecoder().decode(part), 'application/xml');
  return doc.getElementsByTagName('dc:title')[0]?.textContent?.trim() ?? '';
}
