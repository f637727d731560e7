// Control characters but tab, halves of surrogate pairs and noncharacters: XML 1.0 forbids most of them
// (production 2, Char), and none is for the eye.
const UNPRINTABLE =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what it is about
  /[\0-\x08\x0B\x0C\x0E-\x1F\x7F-\x9F\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;

/** A piece of text as it may be in any document: one line, without what cannot be printed. */
export function cleanText(text: string): string {
  return text.replace(/[\t\n\r\u2028\u2029]+/g, ' ').replace(UNPRINTABLE, '');
}
