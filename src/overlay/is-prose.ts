/** A piece between blanks that is a word with the marks of writing around it: “Otto’s, well-kept, tide—but. */
const WORD =
  /^["'“‘«([—–-]*\p{L}[\p{L}\p{M}\u00AD]*(?:['’—–-][\p{L}\p{M}\u00AD]+)*['’]?[)\]"'”’».,;:!?…—–-]*$/u;
/** Words no English sentence does long without, and no command or table has in such number. */
const EVERYDAY =
  /^(?:an?|and|as|at|but|by|for|from|he|her|his|i|in|is|it|its|my|no|not|of|on|or|our|she|so|that|the|their|then|they|to|was|we|were|when|with|you|your)$/i;

/** Enough to see which of the two a text is, in characters. */
const LOOKED_AT = 2000;
/** Fewer words than this do not show what they are. */
const FEWEST = 6;

/**
 * Whether preformatted text is prose or verse, not code, a table or a log: at least six words, nine of ten pieces
 * are words with ordinary marks, and one of ten is an everyday word (the, and, of). “The tide is in, the nets are
 * dry” is; “npm run build” is not. Figures chosen on our own examples, no source.
 */
export function isProse(text: string): boolean {
  const pieces = text.slice(0, LOOKED_AT).split(/\s+/).filter(Boolean);
  const words = pieces.filter((piece) => WORD.test(piece));
  const everyday = words.filter((word) => EVERYDAY.test(word.replace(/[^\p{L}]/gu, '')));
  return (
    words.length >= FEWEST && words.length >= pieces.length * 0.9 && everyday.length >= words.length * 0.1
  );
}
