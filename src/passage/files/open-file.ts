import { say } from '../../wording/say.ts';
import { decodeText, isText } from './decode-text.ts';
import { FileFault, LARGEST_FILE } from './file-fault.ts';
import { startFileTime } from './file-time.ts';
import type { OpenedBook, OpenedText } from './opened-file.ts';
import { readPlainText } from './read-plain-text.ts';

/**
 * Opens a file that the teacher chose. The first bytes of the file decide its kind, or else its file extension. The
 * code for each kind but plain text is loaded with the first file of that kind. Rejects with `FileFault`.
 */
export async function openFile(file: File): Promise<OpenedText | OpenedBook> {
  if (file.size === 0) throw new FileFault(say('files.empty'));
  if (file.size > LARGEST_FILE) throw new FileFault(say('files.tooLarge'));
  const bytes = await file.arrayBuffer().then(
    (buffer) => new Uint8Array(buffer),
    () => {
      throw new FileFault(say('files.unreadable'));
    },
  );
  const name = file.name.replace(/\.[^.]+$/, '') || file.name;
  try {
    return await readAs(kindOf(bytes, file.name), bytes, name);
  } catch (error) {
    if (error instanceof FileFault) throw error;
    throw new FileFault(say('files.unknownMake'));
  }
}

/** The most lines that a text may have. A long book has a third of this number. */
const MOST_LINES = 300_000;

function hasMoreLines(text: string, most: number): boolean {
  let lines = 1;
  for (let at = text.indexOf('\n'); at !== -1 && lines <= most; at = text.indexOf('\n', at + 1)) lines++;
  return lines > most;
}

type Kind = 'text' | 'page' | 'docx' | 'pdf' | 'epub';

async function readAs(kind: Kind, bytes: Uint8Array, name: string): Promise<OpenedText | OpenedBook> {
  const time = startFileTime();
  switch (kind) {
    case 'page':
      return (await import('./read-page-file.ts')).readPageFile(bytes, name, time);
    case 'docx':
      return (await import('./read-docx.ts')).readDocx(bytes, name, time);
    case 'pdf':
      return (await import('./read-pdf.ts')).readPdf(bytes, name);
    case 'epub':
      return (await import('./read-epub.ts')).readEpub(bytes, name, time);
    case 'text': {
      const decoded = decodeText(bytes);
      if (!isText(decoded)) throw new FileFault(say('files.noText'));
      if (hasMoreLines(decoded, MOST_LINES)) throw new FileFault(say('files.tooManyLines'));
      const text = readPlainText(decoded);
      if (text === '') throw new FileFault(say('files.noWords'));
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
    throw new FileFault(say('files.packed'));
  }
  // The format of Word before 2007, and of Word files locked by a password.
  if (start.startsWith('\xd0\xcf\x11\xe0')) throw new FileFault(say('files.lockedOrOldDocument'));
  if (start.startsWith('{\\rtf')) throw new FileFault(say('files.richText'));
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
      throw new FileFault(say('files.misnamed', { ending }));
    default:
      throw new FileFault(say('files.otherKind'));
  }
}
