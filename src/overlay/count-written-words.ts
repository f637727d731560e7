import { own } from './own.ts';

const FIELDS = 'textarea, input:not([type]), input[type="text"], input[type="search"]';
const EDITED = '[contenteditable]:not([contenteditable="false"])';
/** The greatest number of characters that are counted. */
const LOOKED_AT = 100_000;

/**
 * Counts the words that the reader writes on the page, in fields and editable parts. These words are not checked. An
 * editor has such words, an article has none.
 */
export function countWrittenWords(doc: Document): number {
  if (doc.designMode === 'on') return countWords(doc.body.textContent ?? '');
  let words = 0;
  for (const field of doc.querySelectorAll<HTMLTextAreaElement | HTMLInputElement>(FIELDS))
    if (field.checkVisibility()) words += countWords(field.value);
  for (const part of doc.querySelectorAll(EDITED)) {
    const isInside = own(part).parentElement?.closest(EDITED) != null;
    if (!isInside && part.checkVisibility()) words += countWords(part.textContent ?? '');
  }
  return words;
}

function countWords(text: string): number {
  return text.slice(0, LOOKED_AT).match(/\p{L}+/gu)?.length ?? 0;
}
