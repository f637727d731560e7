import { basename } from 'node:path';
import type { Analyzer } from '../analyze/index.ts';
import { decodeText, isText } from '../passage/files/decode-text.ts';
import { FileFault } from '../passage/files/file-fault.ts';
import { speakEnglish } from '../wording/speak-english.ts';
import type { OpenedText } from './opened-text.ts';

// The readers shared with the extension take their error messages from its wording. This is an explicit call, since a
// bundler drops an import that has only side effects.
speakEnglish();

/** The file endings that are read in a given folder. */
export const TEXT_ENDINGS = ['txt', 'md', 'html', 'htm', 'xhtml', 'docx', 'pdf', 'epub'] as const;

/** The largest file size, in bytes. No book is larger. */
const LARGEST = 64_000_000;

/**
 * Opens the bytes of a file, or of stdin for `-`. The first bytes determine the kind of the file, otherwise the ending.
 * Any other file is plain text. Each kind's reader is loaded with the first file of that kind, since loading takes
 * longer than vetting most texts. The engine recognises words that a PDF divides at line ends. Rejects with
 * `FileFault`.
 */
export async function openText(path: string, bytes: Uint8Array, engine: () => Analyzer): Promise<OpenedText> {
  const name = path === '-' ? 'stdin' : basename(path).replace(/(?<=.)\.[^.]+$/, '');
  const { title, text } = await readAs(kindOf(path, bytes), bytes, engine);
  return { title: title || name, text };
}

/** Whether a file is plain text, which is read very quickly. A small file of another kind may be built to take forever. */
export function isPlainText(path: string, bytes: Uint8Array): boolean {
  return kindOf(path, bytes) === 'text';
}

type Kind = 'text' | 'page' | 'docx' | 'pdf' | 'epub';

async function readAs(kind: Kind, bytes: Uint8Array, engine: () => Analyzer): Promise<OpenedText> {
  if ((kind === 'text' || kind === 'page') && bytes.length > LARGEST)
    throw new FileFault('This file is larger than 64 MB. Give it in parts.');
  switch (kind) {
    case 'page':
      return (await import('./read-html.ts')).readHtml(decodeText(bytes, charsetOf(bytes)));
    case 'docx':
      return (await import('./read-docx.ts')).readDocx(bytes);
    case 'pdf':
      return (await import('./read-pdf.ts')).readPdf(bytes, engine());
    case 'epub':
      return (await import('./read-epub.ts')).readEpub(bytes);
    case 'text': {
      const text = decodeText(bytes);
      if (!isText(text))
        throw new FileFault('This file is not a text. Give txt, md, html, docx, pdf or epub.');
      return { title: '', text };
    }
  }
}

function kindOf(path: string, bytes: Uint8Array): Kind {
  const ending = /\.([^.]+)$/.exec(path.toLowerCase())?.[1] ?? '';
  const start = decodeText(bytes.subarray(0, 1024));
  if (start.includes('%PDF-')) return 'pdf';
  if (start.startsWith('PK\x03\x04')) {
    if (start.includes('mimetypeapplication/epub+zip') || ending === 'epub') return 'epub';
    if (ending === 'docx') return 'docx';
    throw new FileFault('This is a packed file of another kind. Unpack it, and give the files inside.');
  }
  if (ending === 'docx' || ending === 'pdf' || ending === 'epub')
    throw new FileFault(`This file is named .${ending} but is something else, or damaged. Get it again.`);
  return /^x?html?$/.test(ending) || /^\s*(<!doctype html|<html)/i.test(start) ? 'page' : 'text';
}

/** Returns the charset named near the start of a page. */
function charsetOf(bytes: Uint8Array): string | null {
  const start = Buffer.from(bytes.subarray(0, 2048)).toString('latin1');
  return /charset\s*=\s*["']?\s*([\w-]+)/i.exec(start)?.[1] ?? null;
}
