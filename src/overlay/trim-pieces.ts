import { own } from './own.ts';
import { countWords, namesOf, type StoryBlock, squeeze } from './story-blocks.ts';

/** A line or piece that says who a picture is by: Photo: Bram Falk. Not: The picture shows the ferry. Common practice, no source. */
export const CREDIT =
  /^\W*(?:photo|photograph|picture|image|illustration|credit|source|file photo|video|screenshot|photos)s?(?: ?(?:by|from|credit|courtesy|via|illustration)\b|\s*[:|/©])|^\W*courtesy (?:of|photo)|^\W*(?:ap|getty|reuters) photo|\b(?:getty images|shutterstock|ap photo|istock)\b[^.]{0,25}$/i;
/** Two names with a stroke between, under a picture. */
export const AGENCY = /^\p{Lu}[^.!?]{2,50}\/[^.!?]{2,40}$/u;

/** A link beside a heading that lets readers write. */
const EDIT = /^\[?\s*edit(?: source)?\s*\]?$/i;
/** Labels for those who cannot see the picture. */
const PICTURE = /^(?:image|photo|picture|credit|caption)s?:?$/i;
const NAMED = new Set(['credit', 'credits', 'photographer', 'copyright', 'attribution', 'editsection']);
/** More words are no credit. */
const MOST = 14;

/** The texts of a block without pieces of its line that are no part of it: the credit in a caption, `[edit]` beside a heading. */
export function leaveOutPieces({ texts, line, tags }: StoryBlock): Text[] {
  const isCaption = tags.has('FIGCAPTION') || tags.has('FIGURE');
  let isOver = false;
  return texts.filter((text) => {
    const pieces = piecesAround(text, line);
    const isCredit = pieces.some((piece) => {
      const says = squeeze(piece.textContent ?? '');
      if (EDIT.test(says)) return true;
      if (countWords(says) > MOST) return false;
      if (namesOf(piece).some((name) => NAMED.has(name))) return true;
      if (!isCaption) return false;
      // The name follows the label.
      isOver ||= /^credit:?$/i.test(says);
      return isOver || PICTURE.test(says) || CREDIT.test(says);
    });
    return !isCredit && !(isOver && isCaption);
  });
}

/** The elements between a text and its line, the innermost first. */
function piecesAround(text: Text, line: Element): Element[] {
  const found: Element[] = [];
  for (let at = text.parentElement; at && at !== line; at = own(at).parentElement) found.push(at);
  return found;
}
