import { own } from './own.ts';
import { countWords, namesOf, type StoryBlock, squeeze } from './story-blocks.ts';

/**
 * Matches a line or piece that names the source of a picture. “Photo: Bram Falk” matches, “The picture shows the ferry”
 * does not. Common practice, no source.
 */
export const CREDIT =
  /^\W*(?:photo|photograph|picture|image|illustration|credit|source|file photo|video|screenshot|photos)s?(?: ?(?:by|from|credit|courtesy|via|illustration)\b|\s*[:|/©])|^\W*courtesy (?:of|photo)|^\W*(?:ap|getty|reuters) photo|\b(?:getty images|shutterstock|ap photo|istock)\b[^.]{0,25}$/i;
/** Matches two names with a slash between them, under a picture. */
export const AGENCY = /^\p{Lu}[^.!?]{2,50}\/[^.!?]{2,40}$/u;

/** Matches a link beside a heading that lets readers edit the text. */
const EDIT = /^\[?\s*edit(?: source)?\s*\]?$/i;
/** Matches labels for readers who cannot see the picture. */
const PICTURE = /^(?:image|photo|picture|credit|caption)s?:?$/i;
const NAMED = new Set(['credit', 'credits', 'photographer', 'copyright', 'attribution', 'editsection']);
/** The greatest number of words in a credit. */
const MOST = 14;

/**
 * Returns the texts of a block without the pieces that do not belong to its line: the credit in a caption, or `[edit]`
 * beside a heading.
 */
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

/** Returns the elements between a text and its line, the innermost first. */
function piecesAround(text: Text, line: Element): Element[] {
  const found: Element[] = [];
  for (let at = text.parentElement; at && at !== line; at = own(at).parentElement) found.push(at);
  return found;
}
