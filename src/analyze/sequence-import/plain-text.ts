/**
 * HTML names of characters that occur in plans, in addition to character numbers. Source: the HTML standard's list of
 * named character references. Only `schwa` is our own.
 */
const entities: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: ' ',
  ndash: '–',
  mdash: '—',
  bull: '•',
  middot: '·',
  hellip: '…',
  rarr: '→',
  lsquo: '‘',
  rsquo: '’',
  ldquo: '“',
  rdquo: '”',
  amacr: 'ā',
  emacr: 'ē',
  imacr: 'ī',
  omacr: 'ō',
  umacr: 'ū',
  abreve: 'ă',
  ubreve: 'ŭ',
  schwa: 'ə',
};

/** Tags that end a line. `cellTags` end a cell of a table. */
const lineTags =
  /<\/?(?:p|div|li|ul|ol|tr|table|thead|tbody|tfoot|h[1-6]|section|article|dl|dt|dd|caption|blockquote)\b[^<>]*>|<br\s*\/?>/gi;
const cellTags = /<\/t[dh]>\s*(?=<t[dh]\b)/gi;
const otherTags =
  /<\/?(?:t[dh]|span|strong|b|em|i|u|a|font|sup|sub|small|big|mark|code|col|colgroup|html|body|head|meta|style|title|img|hr|center|abbr)(?:\s[^<>]*)?\/?>/gi;

/** Whether a text is the copied source of a page. Its tags come in pairs, unlike `<a>` and `<i>` for letters. */
const isMarkup = (text: string) =>
  /<(?:table|tr|td|th|li|ul|ol|p|div|br|span|h[1-6])\b[^<>]*>/i.test(text) &&
  /<\/(?:table|tr|td|th|li|ul|ol|p|div|span|h[1-6])>|<br\s*\/?>(?!\s*[,;&)])/i.test(text);

/**
 * Returns a pasted text in plain characters. Line ends and blanks are of one kind, the source of a web page loses its
 * tags, and cells of its tables are separated by tabs.
 */
export function plainText(pasted: string): string {
  const lines = pasted
    .normalize('NFC')
    .replace(/\r\n?|\u2028|\u2029/g, '\n')
    .replace(/[\u00a0\u202f\u2007\u2009\ufeff\u200b]/g, (blank) => (/[\ufeff\u200b]/.test(blank) ? '' : ' '));
  return readEntities(isMarkup(lines) ? withoutTags(lines) : lines);
}

function withoutTags(text: string): string {
  return (
    text
      .replace(/<!--[\s\S]{0,2000}?-->/g, ' ')
      // A line break within a cell of a table with bars becomes a semicolon.
      .replace(/^[^\S\n]*\|.*$/gm, (row) => row.replace(/<br\s*\/?>/gi, '; '))
      .replace(/>[^\S\n]*\n\s*(?=<\/?(?:t[drh]|table|thead|tbody|ul|ol|li)\b)/gi, '>')
      .replace(cellTags, '\t')
      .replace(/<li\b[^<>]*>/gi, '\n• ')
      .replace(lineTags, '\n')
      .replace(otherTags, '')
      .replace(/\n{3,}/g, '\n\n')
  );
}

function readEntities(text: string): string {
  return text.replace(/&(?:#(\d{1,6})|#x([\da-f]{1,5})|([a-z]{2,8}));/gi, (whole, decimal, hex, name) => {
    const code =
      decimal !== undefined ? Number(decimal) : hex !== undefined ? Number.parseInt(hex, 16) : null;
    if (code !== null) return code >= 32 && code <= 0x10ffff ? String.fromCodePoint(code) : whole;
    return Object.hasOwn(entities, name.toLowerCase()) ? entities[name.toLowerCase()]! : whole;
  });
}
