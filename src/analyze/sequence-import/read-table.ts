import type { CellKind } from './column-kinds.ts';
import { findColumns, isHeadAgain } from './find-columns.ts';
import type { FoundTable } from './find-rows.ts';
import { type LaidCell, type LaidStep, type Layout, LONGEST_TITLE } from './layout.ts';
import { readStepHeading } from './step-heading.ts';

/**
 * Reads the rows of a table into steps, one a row. A row without a step's name continues the step before it. Column
 * names are kept as notes of the first step. `chosen` are the kinds of columns that the teacher has set.
 */
export function readTable(table: FoundTable, chosen: readonly CellKind[] = []): Layout {
  const { before, rows } = table;
  const { head, columns } = findColumns(table);
  const names = columns.map(({ name }) => name);
  // Rows above the column names are the title of the whole text, if they fill few cells.
  const above = head > 0 && head <= MOST_ABOVE ? rows.slice(0, head) : [];
  const titled = above.every((row) => row.filter((cell) => cell !== '').length * 2 <= columns.length);
  const opening = titled ? above : [];
  const body = rows.filter((_, i) => i !== head && i >= opening.length);
  const kinds = columns.map(({ kind }, i) => chosen[i] ?? kind);
  const steps: { title: string; cells: LaidCell[]; open: boolean }[] = [];
  const headCell: LaidCell = { text: names.filter((name) => name !== '').join(' | '), kind: 'notes' };
  // Repeated column names go to the step below them.
  let again: LaidCell[] = [];
  for (const [place, row] of body.entries()) {
    if (isHeadAgain(row, names)) {
      again.push(headCell);
      continue;
    }
    // A list may follow the table: "• tch, dge".
    const bullet =
      columns.length > 1 && row.filter((cell) => cell !== '').length === 1 ? listed.exec(row[0]!) : null;
    if (bullet !== null && steps.length > 0) {
      steps.at(-1)!.cells.push({ text: row[0]!.slice(bullet[0].length), kind: 'patterns' });
      continue;
    }
    const filled = row.filter((cell) => cell !== '');
    const named = (wanted: CellKind) =>
      row.flatMap((cell, i) => (kinds[i] === wanted && cell !== '' ? [stepTitle(cell, names[i] ?? '')] : []));
    const titles = named('step');
    const about = titles.filter((title) => !/\d/.test(title)).join(', ');
    const own = row.flatMap((text, i): LaidCell[] => {
      const kind = kinds[i] ?? 'patterns';
      // The column name is a heading for its cells: "Suffixes" above er, est.
      const named = kind === 'patterns' || kind === 'title' ? (names[i] ?? '') : '';
      return text === '' || kind === 'step'
        ? []
        : [{ text, kind, row: place, about: named === '' ? about : `${named}\n${about}` }];
    });
    const cells = own.length > 0 ? [...again, ...own] : own;
    if (own.length > 0) again = [];
    const focus = named('title')
      .map(plainTitle)
      .filter((title) => title !== '');
    const last = steps.at(-1);
    const alone = filled.length === 1 ? readStepHeading(filled[0]!) : null;
    if (alone !== null && cells.length > 0) {
      steps.push({ title: filled[0]!, cells: [], open: true });
    } else if (last?.open === true && last.cells.length === 0 && titles.length > 0) {
      // The row above only names a unit. Its name goes before the name of the unit's first week.
      last.title = [last.title, ...titles, ...focus].join(' · ');
      last.cells.push(...cells);
      last.open = cells.length === 0;
    } else if (last !== undefined && titles.length === 0 && kinds.includes('step')) {
      last.cells.push(...cells);
    } else {
      steps.push({
        title: [...titles, ...focus].join(' · '),
        cells,
        open: cells.length === 0 && filled.length < columns.length && isUnit(titles),
      });
    }
  }
  const last = steps.at(-1);
  if (last !== undefined) last.cells.push(...again);
  if (steps.length === 0) steps.push({ title: '', cells: [], open: false });
  if (head >= 0) steps[0]!.cells.unshift(headCell);
  return {
    title: [...before.map((line) => line.trim()), ...opening.flat().filter((cell) => cell !== '')].join(
      ' · ',
    ),
    steps: steps.map(({ title, cells }): LaidStep => ({ title, cells })),
  };
}

const listed = /^\s*[•◦▪●○*–-]\s+(?=\S)/u;

/** The most rows above the names of the columns. */
const MOST_ABOVE = 4;

/** Adds the name of the column to a bare number: 3 under Week is "Week 3". Without a column name the number stays bare. */
function stepTitle(cell: string, name: string): string {
  return /^\d+[a-z]?$/i.test(cell) && /^\p{L}/u.test(name) ? `${name} ${cell}` : cell;
}

function isUnit(titles: readonly string[]): boolean {
  const kind = titles.length === 1 ? readStepHeading(titles[0]!)?.kind : undefined;
  return kind !== undefined && kind !== 'week' && kind !== 'step' && kind !== 'lesson';
}

/** Returns a title on one line. A text too long for a title is left to the items. */
function plainTitle(cell: string): string {
  const line = cell.replace(/\s+/g, ' ').trim();
  return line.length <= LONGEST_TITLE ? line : '';
}
