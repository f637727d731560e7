import { writeLines } from '../passage-lines.ts';
import { readHtmlLines } from './read-html-lines.ts';

/** The text of a piece of HTML with its headings, paragraphs and lists. Nothing of it is run or loaded. */
export function readPasted(html: string): string {
  return writeLines(readHtmlLines(new DOMParser().parseFromString(html, 'text/html').body));
}
