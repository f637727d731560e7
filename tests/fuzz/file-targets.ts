import fc, { type Arbitrary } from 'fast-check';
import { strFromU8, unzipSync, zipSync } from 'fflate';
import { Window } from 'happy-dom';
import type { Analyzer } from '../../src/analyze/index.ts';
import { readDocx } from '../../src/cli/read-docx.ts';
import { readHtml } from '../../src/cli/read-html.ts';
import { readPdf } from '../../src/cli/read-pdf.ts';
import { FileFault } from '../../src/passage/files/file-fault.ts';
import { openFile } from '../../src/passage/files/open-file.ts';
import { makeColumns, makeDocx, makeEpub, makePdf } from '../desk/make-files.ts';
import { expectFault, type FuzzTarget, target } from './fuzz-target.ts';
import { mutateBytes, mutateText, nastyText, readTexts } from './nasty-inputs.ts';

/** Returns the fuzz targets that open a teacher's files. happy-dom parses the documents, since there is no browser here. */
export async function fileTargets(engine: Analyzer): Promise<readonly FuzzTarget[]> {
  globalThis.DOMParser ??= new Window().DOMParser as unknown as typeof DOMParser;
  const docx = await makeDocx();
  const epub = makeEpub([
    { name: 'one', label: 'The wall', body: '<h1>The wall</h1><p>Bram sat on the wall.</p>' },
    { name: 'two', label: 'The bell', body: '<h1>The bell</h1><p>Wilma rang the bell.</p>' },
  ]);
  const pdfs = [await makePdf(), await makeColumns(['A net and a cod.', 'A red boat.'])];
  const pages = readTexts('pages', '.html').map((page) => page.slice(0, 3000));
  return [
    target({
      name: 'plain texts',
      share: 1,
      input: fc.oneof(fc.uint8Array({ maxLength: 300, size: 'max' }), nastyText.map(strToBytes)),
      check: (bytes) => open(bytes, 'a.txt'),
    }),
    target({
      name: 'web pages',
      share: 0.1,
      input: fc.oneof(mutateText(fc.constantFrom(...pages)), nastyText),
      check: async (html) => {
        readHtml(html);
        await open(strToBytes(html), 'a.html');
      },
    }),
    target({
      name: 'Word documents',
      share: 0.1,
      input: fc.oneof(
        mutateBytes(docx),
        mutateParts(docx, /word\/(document|styles|numbering|footnotes)\.xml$|rels$/),
      ),
      check: (bytes) => faultless(readDocx(bytes)),
    }),
    target({
      name: 'books',
      share: 0.1,
      input: fc.oneof(mutateBytes(epub), mutateParts(epub, /\.(xml|opf|xhtml)$/)),
      check: (bytes) => open(bytes, 'a.epub'),
    }),
    target({
      name: 'PDF',
      share: 0.05,
      input: fc.oneof(...pdfs.map(mutateBytes)),
      check: (bytes) => faultless(readPdf(bytes, engine)),
    }),
  ];
}

/** Makes zip files in which the text of one part is changed. */
function mutateParts(file: Uint8Array, which: RegExp): Arbitrary<Uint8Array> {
  const parts = unzipSync(file);
  const names = Object.keys(parts).filter((name) => which.test(name));
  return fc.oneof(
    ...names.map((name) =>
      mutateText(fc.constant(strFromU8(parts[name]!))).map((text) =>
        zipSync({ ...parts, [name]: strToBytes(text) }, { level: 0 }),
      ),
    ),
  );
}

function open(bytes: Uint8Array, name: string): Promise<void> {
  return faultless(openFile(new File([bytes as BlobPart], name)));
}

async function faultless(work: Promise<unknown>): Promise<void> {
  await work.catch((error: unknown) => expectFault(error, FileFault));
}

function strToBytes(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}
