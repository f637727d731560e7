/** Matches a piece between blanks that is a word with its punctuation: “Otto’s, well-kept, tide—but. */
const WORD =
  /^["'“‘«([—–-]*\p{L}[\p{L}\p{M}\u00AD]*(?:['’—–-][\p{L}\p{M}\u00AD]+)*['’]?[)\]"'”’».,;:!?…—–-]*$/u;
/** Matches words that occur in every longer English sentence. Commands and tables have far fewer of these words. */
const EVERYDAY =
  /^(?:an?|and|as|at|but|by|for|from|he|her|his|i|in|is|it|its|my|no|not|of|on|or|our|she|so|that|the|their|then|they|to|was|we|were|when|with|you|your)$/i;

/** The number of characters that is enough to recognize prose. */
const LOOKED_AT = 2000;
/** The least number of words from which prose can be recognized. */
const FEWEST = 6;

/**
 * Returns whether preformatted text is prose or verse, and not code, a table or a log. Prose has at least six words.
 * Nine of ten pieces are words with ordinary punctuation. One of ten words is an everyday word (the, and, of). “The
 * tide is in, the nets are dry” is prose; “npm run build” is not. The figures were chosen on our own examples, no
 * source.
 */
export function isProse(text: string): boolean {
  const pieces = text.slice(0, LOOKED_AT).split(/\s+/).filter(Boolean);
  const words = pieces.filter((piece) => WORD.test(piece));
  const everyday = words.filter((word) => EVERYDAY.test(word.replace(/[^\p{L}]/gu, '')));
  return (
    words.length >= FEWEST && words.length >= pieces.length * 0.9 && everyday.length >= words.length * 0.1
  );
}
