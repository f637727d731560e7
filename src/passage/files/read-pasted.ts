import { writeLines } from '../passage-lines.ts';
import { readHtmlLines } from './read-html-lines.ts';

/** Returns the text of a piece of HTML with its headings, paragraphs and lists. Nothing in the HTML is run or loaded. */
export function readPasted(html: string): string {
  return writeLines(readHtmlLines(new DOMParser().parseFromString(html, 'text/html').body));
}
