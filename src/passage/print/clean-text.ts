// Characters that cannot be printed: control characters except tab and line breaks, unpaired surrogates and
// noncharacters. XML 1.0 forbids most of these characters (production 2, Char), and none is visible.
const UNPRINTABLE =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what it is about
  /[\0-\x08\x0B\x0C\x0E-\x1F\x7F-\x9F\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;

/** Returns a text as one line without unprintable characters, so that any document can contain the text. */
export function cleanText(text: string): string {
  return text.replace(/[\t\n\r\u2028\u2029]+/g, ' ').replace(UNPRINTABLE, '');
}
