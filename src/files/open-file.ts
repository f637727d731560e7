import { decodeText, isText } from './decode-text.ts';
import { FileFault } from './file-fault.ts';
import type { OpenedBook, OpenedText } from './opened-file.ts';
import { readPlainText } from './read-plain-text.ts';

/** Larger files are no passages, in bytes. */
const LARGEST = 25_000_000;

/**
 * Opens a file the teacher chose; what it is says its beginning, else its ending. What each kind needs is loaded with the
 * first file of that kind. Rejects with `FileFault`.
 */
export async function openFile(file: File): Promise<OpenedText | OpenedBook> {
  if (file.size === 0) throw new FileFault('This file is empty. Choose another.');
  if (file.size > LARGEST)
    throw new FileFault('This file is larger than 25 MB. Copy the part you want and paste it.');
  const bytes = await file.arrayBuffer().then(
    (buffer) => new Uint8Array(buffer),
    () => {
      throw new FileFault(
        'The browser cannot read this file. See that it is still where it was, and choose it again.',
      );
    },
  );
  const name = file.name.replace(/\.[^.]+$/, '') || file.name;
  try {
    return await readAs(kindOf(bytes, file.name), bytes, name);
  } catch (error) {
    if (error instanceof FileFault) throw error;
    throw new FileFault(
      'This file is damaged or made in a way the desk does not know. Copy its text and paste it.',
    );
  }
}

type Kind = 'text' | 'page' | 'docx' | 'pdf' | 'epub';

async function readAs(kind: Kind, bytes: Uint8Array, name: string): Promise<OpenedText | OpenedBook> {
  switch (kind) {
    case 'page':
      return (await import('./read-page-file.ts')).readPageFile(bytes, name);
    case 'docx':
      return (await import('./read-docx.ts')).readDocx(bytes, name);
    case 'pdf':
      return (await import('./read-pdf.ts')).readPdf(bytes, name);
    case 'epub':
      return (await import('./read-epub.ts')).readEpub(bytes, name);
    case 'text': {
      const decoded = decodeText(bytes);
      if (!isText(decoded))
        throw new FileFault(
          'This file is not a text. Open it in the program that made it, and copy and paste its text.',
        );
      const text = readPlainText(decoded);
      if (text === '') throw new FileFault('There are no words in this file. Choose another.');
      return { title: name, text, leftOut: { pictures: 0, footnotes: 0 } };
    }
  }
}

function kindOf(bytes: Uint8Array, name: string): Kind {
  const ending = /\.([^.]+)$/.exec(name.toLowerCase())?.[1] ?? '';
  const start = String.fromCharCode(...bytes.subarray(0, 1024));
  if (start.includes('%PDF-')) return 'pdf';
  if (start.startsWith('PK\x03\x04')) {
    if (start.includes('mimetypeapplication/epub+zip')) return 'epub';
    if (ending === 'epub' || ending === 'docx') return ending;
    throw new FileFault('This is a packed file of another kind. Unpack it, and open the file inside.');
  }
  // How Word wrote before 2007, and how it writes what a password locks.
  if (start.startsWith('\xd0\xcf\x11\xe0'))
    throw new FileFault(
      'This document is locked by a password or from an old Word. Open it in Word and save it as .docx without a password.',
    );
  if (start.startsWith('{\\rtf'))
    throw new FileFault('This is a rich text file. Open it in Word, and save it as .docx.');
  switch (ending) {
    case 'txt':
    case 'md':
      return 'text';
    case 'html':
    case 'htm':
      return 'page';
    case 'docx':
    case 'pdf':
    case 'epub':
      throw new FileFault(
        `This file is named .${ending} but is something else, or damaged. Get it again, or copy its text and paste it.`,
      );
    default:
      throw new FileFault(
        'The desk opens text, web pages, Word documents, PDF and EPUB. For other files, copy the text and paste it.',
      );
  }
}
