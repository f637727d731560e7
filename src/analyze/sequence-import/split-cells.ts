/** Rows of cells. A cell in quotes may contain line breaks and the divider, as spreadsheets write them. */
export type Rows = readonly (readonly string[])[];

/** Cuts delimited text (TSV, CSV) into rows of trimmed cells. A quote that is never closed is an ordinary character. */
export function splitCells(text: string, divider: string): Rows {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at <= text.length) {
    const quoted = text[at] === '"' ? closingQuote(text, at, divider) : -1;
    const end = endOfCell(text, quoted < 0 ? at : quoted + 1, divider);
    const cell = quoted < 0 ? text.slice(at, end) : text.slice(at + 1, quoted).replaceAll('""', '"');
    row.push(cell.trim());
    if (text[end] !== divider) {
      rows.push(row);
      row = [];
    }
    at = end + 1;
  }
  return rows.filter((cells) => cells.some((cell) => cell !== ''));
}

/**
 * Returns the index of the quote that closes the quote at `start`. Returns -1 if there is none, or if the text after
 * the quote shows that it closes nothing.
 */
function closingQuote(text: string, start: number, divider: string): number {
  for (let at = text.indexOf('"', start + 1); at >= 0; at = text.indexOf('"', at + 1)) {
    if (text[at + 1] === '"') at += 1;
    else return at + 1 === text.length || text[at + 1] === '\n' || text[at + 1] === divider ? at : -1;
  }
  return -1;
}

function endOfCell(text: string, start: number, divider: string): number {
  for (let at = start; at < text.length; at++) {
    if (text[at] === divider || text[at] === '\n') return at;
  }
  return text.length;
}
