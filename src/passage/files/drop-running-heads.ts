import type { PdfLine } from './pdf-text.ts';

/** The number of lines at the top, and at the foot, of a page that may be running heads. */
const EDGE = 2;

/** Removes page numbers, and lines that come at the top or foot of page after page, such as the title or the date. */
export function dropRunningHeads(pages: readonly (readonly PdfLine[])[]): PdfLine[][] {
  const often = new Map<string, number>();
  for (const lines of pages)
    for (const key of new Set(edgesOf(lines).map(placeAndText))) often.set(key, (often.get(key) ?? 0) + 1);
  const enough = Math.max(2, Math.ceil(pages.length * 0.4));
  return pages.map((lines) => {
    const edges = new Set(edgesOf(lines));
    return lines.filter(
      (line) =>
        !edges.has(line) ||
        !(isPageNumber(line.text) || (pages.length > 1 && often.get(placeAndText(line))! >= enough)),
    );
  });
}

function edgesOf(lines: readonly PdfLine[]): PdfLine[] {
  const byHeight = [...lines].sort((one, other) => other.y - one.y);
  return [...new Set([...byHeight.slice(0, EDGE), ...byHeight.slice(-EDGE)])];
}

/** Returns the same key for the same words at the same height, whatever numbers the words contain. */
function placeAndText({ text, y }: PdfLine): string {
  return `${Math.round(y / 4)} ${text.toLowerCase().replace(/\d+/g, '#')}`;
}

/** 7, - 7 -, Page 7 of 12, vii. */
function isPageNumber(text: string): boolean {
  return /^[-–—\s]*(page\s+)?(\d{1,4}|[ivxl]{1,6})(\s*(of|\/)\s*\d{1,4})?[-–—\s]*$/i.test(text);
}
