import { basename } from 'node:path';
import type { Analyzer } from '../analyze/index.ts';
import { decodeText, isText } from '../passage/files/decode-text.ts';
import { FileFault } from '../passage/files/file-fault.ts';
import { speakEnglish } from '../wording/speak-english.ts';
import type { OpenedText } from './opened-text.ts';

// Readers shared with the extension say their faults in its words. Called, since a bundle drops an import of a file for its effects.
speakEnglish();

/** The endings of the files that are read where a folder is given. */
export const TEXT_ENDINGS = ['txt', 'md', 'html', 'htm', 'xhtml', 'docx', 'pdf', 'epub'] as const;

/** More than any book has, in bytes. */
const LARGEST = 64_000_000;

/**
 * Opens the bytes of a file, or of stdin for `-`: what it is says its beginning, else its ending, else it is plain text.
 * What a kind needs takes longer to load than most texts to vet, so it is loaded with the first file of that kind.
 * The engine tells the words that lines of a PDF divide. Rejects with `FileFault`.
 */
export async function openText(path: string, bytes: Uint8Array, engine: () => Analyzer): Promise<OpenedText> {
  const name = path === '-' ? 'stdin' : basename(path).replace(/(?<=.)\.[^.]+$/, '');
  const { title, text } = await readAs(kindOf(path, bytes), bytes, engine);
  return { title: title || name, text };
}

/** Whether a file is plain text, which is read in no time; a small file of another kind may be made to take for ever. */
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

/** The charset a page names near its start. */
function charsetOf(bytes: Uint8Array): string | null {
  const start = Buffer.from(bytes.subarray(0, 2048)).toString('latin1');
  return /charset\s*=\s*["']?\s*([\w-]+)/i.exec(start)?.[1] ?? null;
}
