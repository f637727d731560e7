import { say } from '../../wording/say.ts';
import { writeLines } from '../passage-lines.ts';
import type { ConvertedDocument } from './convert-docx.ts';
import { expectFewTags } from './expect-few-tags.ts';
import { lookForDepth } from './expect-shallow.ts';
import { FileFault } from './file-fault.ts';
import type { FileTime } from './file-time.ts';
import type { OpenedText } from './opened-file.ts';
import { parseHtml } from './parse-html.ts';
import { findHtmlLines } from './read-html-lines.ts';
import { unpackZip } from './unpack-zip.ts';

/**
 * Reads the text of a Word document: headings, paragraphs and lists. Footnotes and pictures are counted and left out.
 * Rejects with `FileFault`.
 */
export async function readDocx(bytes: Uint8Array, name: string, time: FileTime): Promise<OpenedText> {
  const { parts } = await unpackZip(bytes, (part) => /\.(xml|rels)$/i.test(part), time);
  expectFewTags(parts.values());
  // Word writes no document types. The entities of a document type could be made to grow without end.
  for (const part of parts.values())
    if (new TextDecoder().decode(part.subarray(0, 4096)).includes('<!DOCTYPE'))
      throw new FileFault(say('files.notFromWord'));
  const { zipSync } = await import('fflate');
  // The file is packed again without the pictures, so that nothing else is ever unpacked.
  const packed = zipSync(Object.fromEntries(parts), { level: 0 }).buffer as ArrayBuffer;
  const { html, pictures } = await convert(packed, time);
  await time.run(lookForDepth(html));
  const { body } = await time.run(parseHtml(html));
  const notes = [...body.querySelectorAll('li[id^="footnote-"], li[id^="endnote-"]')];
  for (const note of notes) note.remove();
  const lines = await time.run(findHtmlLines(body));
  if (lines.length === 0) throw new FileFault(say('files.noWordsInDocument'));
  return {
    title:
      readTitle(parts.get('docProps/core.xml')) || lines.find(({ kind }) => kind === 'heading')?.text || name,
    text: writeLines(lines),
    leftOut: { pictures, footnotes: notes.length },
  };
}

/**
 * Converts the document in a worker, which is stopped when the file's time is used up. Tests without a browser have no
 * worker and convert directly; a build leaves that code out.
 */
async function convert(packed: ArrayBuffer, time: FileTime): Promise<ConvertedDocument> {
  if (import.meta.env.MODE === 'test') {
    const { convertDocx } = await import('./convert-docx.ts');
    return convertDocx(packed).catch(() => {
      throw new FileFault(say('files.damagedDocument'));
    });
  }
  const { default: Converter } = await import('./convert-docx.worker.ts?worker');
  const worker = new Converter();
  let timer: ReturnType<typeof setTimeout> | undefined;
  try {
    return await new Promise<ConvertedDocument>((resolve, reject) => {
      const refuse = (why: string): void => reject(new FileFault(why));
      timer = setTimeout(() => refuse(say('files.tooSlow')), time.left());
      worker.addEventListener('message', ({ data }: MessageEvent<ConvertedDocument | null>) => {
        if (data) resolve(data);
        else refuse(say('files.damagedDocument'));
      });
      // This error also comes when the worker has no memory left.
      worker.addEventListener('error', () => refuse(say('files.damagedDocument')));
      worker.postMessage(packed, [packed]);
    });
  } finally {
    clearTimeout(timer);
    worker.terminate();
  }
}

/** The greatest length of the part with the title, in bytes. Longer parts were made so on purpose. */
const LONGEST_TITLE = 100_000;

function readTitle(part: Uint8Array | undefined): string {
  if (!part || part.length > LONGEST_TITLE) return '';
  const doc = new DOMParser().parseFromString(new TextDecoder().decode(part), 'application/xml');
  return doc.getElementsByTagName('dc:title')[0]?.textContent?.trim() ?? '';
}
