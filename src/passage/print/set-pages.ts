import { cutLines } from './cut-lines.ts';
import { cutPages, type PageRow } from './cut-pages.ts';
import { findLineStarts } from './find-line-starts.ts';
import { numberLines } from './number-lines.ts';
import { PAPERS, type SheetChoices } from './sheet-choices.ts';
import type { SetLine, SheetPart, SheetPiece } from './sheet-parts.ts';

/**
 * The height in millimetres that the margins of print.css take from a page. A small allowance is included, because
 * lines are slightly higher on paper than on the screen.
 */
const MARGINS = 39;
const PIXELS = 96 / 25.4;

interface Row extends PageRow {
  readonly part: number;
  readonly line: SetLine | null;
}

/**
 * Returns the pages of a sheet. `paper` contains all parts of the sheet on one endless page, laid out at the final
 * width. Each part has the attribute `data-part`. The line breaks of the browser are kept, so that the pages are the
 * same on paper.
 */
export function setPages(
  paper: Element,
  parts: readonly SheetPart[],
  { margin, paper: size }: Pick<SheetChoices, 'margin' | 'paper'>,
): SheetPiece[][] {
  const rows = measureRows(paper, parts, margin);
  const foot = paper.querySelector('.sheet-foot')!.getBoundingClientRect().height;
  const starts = cutPages(rows, (PAPERS[size].height - MARGINS) * PIXELS - foot);
  if (starts.length === 0) return [[]];
  return starts.map((start, i) => {
    const onPage = rows.slice(start, starts[i + 1] ?? rows.length);
    const goesOn = rows[start - 1]?.part === rows[start]!.part;
    return [...new Set(onPage.map(({ part }) => part))].map((part, n) => {
      const lines = onPage.filter((row) => row.part === part).flatMap(({ line }) => line ?? []);
      return { part: parts[part]!, lines: lines.length > 0 ? lines : null, goesOn: n === 0 && goesOn };
    });
  });
}

function measureRows(paper: Element, parts: readonly SheetPart[], margin: SheetChoices['margin']): Row[] {
  const blocks = [...paper.querySelectorAll('[data-part]')];
  const broken = blocks.map((block, i) =>
    isBroken(parts[i]!)
      ? { text: block.textContent ?? '', starts: findLineStarts(block) }
      : { text: '', starts: [] },
  );
  const numbers = numberLines(broken, margin);
  return blocks.flatMap((block, i): Row[] => {
    const part = parts[i]!;
    const { top, bottom } = block.getBoundingClientRect();
    if (part.kind !== 'text' || part.line.kind === 'heading') {
      const box = block.closest('.sheet-box');
      // Each page draws its own box around its story words.
      const [above, below] = box ? edgesOf(box) : [0, 0];
      const isFirst = box?.querySelector('[data-part]') === block;
      return [
        {
          top: box && isFirst ? box.getBoundingClientRect().top : top - above,
          bottom: bottom + below,
          holdsNext: part.kind !== 'story-word',
          part: i,
          line: null,
        },
      ];
    }
    const lines = cutLines(part.line.runs, broken[i]!.starts);
    const height = (bottom - top) / lines.length;
    return lines.map((runs, n) => ({
      top: top + n * height,
      bottom: top + (n + 1) * height,
      // At least two lines of a paragraph stay together before and after a page break.
      holdsNext: (n === 0 && lines.length > 1) || n === lines.length - 2,
      part: i,
      line: { runs, number: numbers[i]![n]! },
    }));
  });
}

function isBroken(part: SheetPart): boolean {
  return part.kind === 'text' && part.line.kind !== 'heading';
}

function edgesOf(box: Element): [number, number] {
  const { paddingTop, paddingBottom, borderTopWidth, borderBottomWidth } = getComputedStyle(box);
  const sum = (...lengths: string[]) => lengths.reduce((all, length) => all + Number.parseFloat(length), 0);
  return [sum(paddingTop, borderTopWidth), sum(paddingBottom, borderBottomWidth)];
}
