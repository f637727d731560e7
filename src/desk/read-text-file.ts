import type { FoundText } from './new-passage.ts';
import { writeLines } from './passage-lines.ts';
import { readHtmlLines } from './read-pasted.ts';

/** Why a file cannot be read, in a sentence with the next step. */
export class FileFault extends Error {}

/** Larger files are books, in bytes. */
const LARGEST = 25_000_000;

/** Reads the text of a file the teacher chose. Rejects with `FileFault`. */
export async function readTextFile(file: File): Promise<FoundText> {
  if (file.size > LARGEST)
    throw new FileFault('This file is too large for the desk. Copy the part you want and paste it.');
  const name = file.name.replace(/\.[^.]+$/, '');
  const kind = /\.([^.]+)$/.exec(file.name.toLowerCase())?.[1];
  switch (kind) {
    case 'txt':
    case 'md':
      return { title: name, text: tidy(await file.text()) };
    case 'html':
    case 'htm': {
      const doc = new DOMParser().parseFromString(await file.text(), 'text/html');
      return { title: doc.title.trim() || name, text: writeLines(readHtmlLines(doc)) };
    }
    default:
      throw new FileFault(
        'The desk opens text, web pages, Word documents, PDF and EPUB. Copy the text and paste it.',
      );
  }
}

/** One line for each paragraph: lines that a blank line does not part belong together where lines are short. */
function tidy(text: string): string {
  return text
    .replace(/\r\n?/g, '\n')
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .join('\n');
}
