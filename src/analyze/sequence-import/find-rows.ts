import { findColumnKind, findHeadKind } from './column-kinds.ts';
import { type Rows, splitCells } from './split-cells.ts';
import { markDates, readStepHeading } from './step-heading.ts';

/** The rows of the table in a text, with the lines before the table. */
export interface FoundTable {
  readonly before: readonly string[];
  readonly rows: Rows;
  /** Index of the row that names the columns, if the table was found by this row. */
  readonly head?: number;
}

/**
 * Finds the table in a text. Returns null if the text is a list or prose. Cells may be separated in these ways:
 * - by tabs or bars
 * - by commas, semicolons or wide gaps, under a head
 * - by line ends, as some pages copy their cells
 * If the steps are side by side, the columns become rows.
 */
export function findRows(text: string): FoundTable | null {
  const table = findDivided(text);
  return table === null ? null : (turnRows(table) ?? table);
}

function findDivided(pasted: string): FoundTable | null {
  const text = pasted.replace(bulletTab, '$1 ');
  const lines = text.split('\n').filter((line) => line.trim() !== '');
  const tabbed = lines.filter((line) => line.trim().includes('\t')).length;
  if (tabbed >= 2 || (tabbed === 1 && lines.length === 1)) return tabRows(text);
  const barred = lines.filter((line) =>
    line
      .trim()
      .replace(/^\||\|$/g, '')
      .includes('|'),
  ).length;
  if (barred >= 2 && barred * 2 >= lines.length) return barRows(lines);
  const undated = markDates(lines);
  for (const divider of [',', ';']) {
    // A line with a colon is a list: "Tricky words: no, she".
    const head = lines.findIndex(
      (line, i) =>
        // A line that begins with a date or number is no head either: "9/21 short u, short e".
        !/[:()]|^\s*\d/.test(line) &&
        line === undated[i] &&
        (readStepHeading(line)?.rest ?? '') === '' &&
        namesColumns(line.split(divider)),
    );
    const below = lines.slice(head + 1).filter((line) => line.includes(divider));
    if (head >= 0 && head < lines.length - 1 && below.length * 2 >= lines.length - head - 1)
      return { before: lines.slice(0, head), rows: splitCells(lines.slice(head).join('\n'), divider) };
  }
  return quotedRows(text) ?? slashRows(lines) ?? gapRows(lines) ?? stackedRows(lines) ?? countedRows(lines);
}

/** A bullet or number with the tab that word processors copy after it. These are not cells. */
const bulletTab = /^([ \t]*(?:[•◦▪●○‣·*–-]|\(?(?:\d{1,3}|[A-Za-z])[.)]))\t/gm;

/**
 * Turns a table whose steps are side by side, so that each step becomes a row: `Week 1 | Week 2` above `sh | ch`. The
 * table may consist of several such pieces below each other. Returns null for other tables.
 */
function turnRows({ before, rows }: FoundTable): FoundTable | null {
  const isHead = (row: readonly string[]) => {
    const [corner = '', ...steps] = row;
    const named = steps.filter((cell) => cell !== '');
    return (
      readStepHeading(corner) === null &&
      named.length >= 2 &&
      named.every((cell) => (readStepHeading(cell)?.kind ?? 'number') !== 'number')
    );
  };
  if (rows.length < 2 || !isHead(rows[0]!)) return null;
  const names: string[] = [];
  const turned: string[][] = [];
  let steps: string[][] = [];
  let used = new Set<number>();
  for (const row of rows) {
    if (isHead(row)) {
      steps = row.slice(1).map((cell) => [cell]);
      turned.push(...steps);
      used = new Set();
      if (names.length === 0) names.push(row[0]!);
      continue;
    }
    let place = names.findIndex((name, i) => i > 0 && name === row[0] && !used.has(i));
    if (place < 0) place = names.push(row[0] ?? '') - 1;
    used.add(place);
    row.slice(1).forEach((cell, i) => {
      const step = steps[i] ?? [''];
      if (steps[i] === undefined) turned.push(step);
      steps[i] = step;
      while (step.length < place) step.push('');
      step[place] = cell;
    });
  }
  return { before, rows: [names, ...turned.filter((row) => row.some((cell) => cell !== ''))], head: 0 };
}

/**
 * Whether cells name columns. At least two cells must be names, and one of these must be an exact name. At most one
 * cell may be something else. In the first row of a table, about half of the cells may be something else.
 */
export function namesColumns(cells: readonly string[], first = false): boolean {
  const filled = cells.filter((cell) => cell.trim() !== '');
  // "Week 4" beside "Assessment" is a row, not the names of columns.
  const counted = (cell: string) => /\d/.test(readStepHeading(cell)?.title ?? '');
  if (filled.some(counted)) return false;
  const named = filled.filter((cell) => findHeadKind(cell) !== null).length;
  const enough = first ? named * 2 >= filled.length - 1 : named >= filled.length - 1;
  return filled.some((cell) => findColumnKind(cell) !== null) && named >= 2 && enough;
}

/**
 * Finds rows with quoted cells, as spreadsheets save them. The rows must have equal numbers of cells. The names in the
 * head do not matter.
 */
function quotedRows(text: string): FoundTable | null {
  if (!/(?:^|,)"[^"\n]*,[^"\n]*"(?:,|$)/m.test(text)) return null;
  const rows = splitCells(text, ',').filter((row) => row.some((cell) => cell !== ''));
  const width = rows[0]?.length ?? 0;
  const even = rows.filter((row) => row.length === width).length;
  return width >= 3 && rows.length >= 4 && even * 10 >= rows.length * 9 ? { before: [], rows } : null;
}

function tabRows(text: string): FoundTable {
  const first = text.split('\n').findIndex((line) => line.trim().includes('\t'));
  const lines = text.split('\n');
  return {
    before: lines.slice(0, first).filter((line) => line.trim() !== ''),
    rows: splitCells(lines.slice(first).join('\n'), '\t'),
  };
}

function barRows(lines: readonly string[]): FoundTable {
  const first = lines.findIndex((line) => line.includes('|'));
  // If the first row has no bars at its ends, a bar at the end of another row is beside an empty cell.
  const top = lines[first]!.trim();
  const inside = (row: string) =>
    row.slice(
      top.startsWith('|') && row.startsWith('|') ? 1 : 0,
      top.endsWith('|') && row.endsWith('|') ? -1 : row.length,
    );
  const rows = lines
    .slice(first)
    // Skips the line under a Markdown head: |---|:--:|
    .filter((line) => !/^[\s|:+=-]+$/.test(line))
    .map((line) =>
      inside(line.trim())
        .split('|')
        .map((cell) => cell.trim()),
    );
  return { before: lines.slice(0, first), rows };
}

/**
 * Finds lines that begin with a step's number and continue after slashes: `3 / f, b / short i / it, in`. The line above
 * them may contain the names of the columns.
 */
function slashRows(lines: readonly string[]): FoundTable | null {
  const split = (line: string) => line.trim().split(/\s+\/(?:\s+|$)/);
  const isRow = ([first = '', ...others]: readonly string[]) =>
    others.length > 0 && (/^#?\d{1,3}[.)]?$/.test(first) || readStepHeading(first)?.rest === '');
  const all = lines.map(split);
  const first = all.findIndex(isRow);
  const rows = all.filter(isRow);
  const width = Math.max(...rows.map((row) => row.length), 0);
  if (rows.length < 4 || width < 3 || rows.length * 10 < (all.length - first) * 8) return null;
  const head = (all[first - 1] ?? []).map((cell) => cell.replace(/^.*[.:]\s+/, ''));
  const names = head.length === width - 1 ? ['', ...head] : head;
  const named = names.length === width && namesColumns(names);
  // A dash is an empty cell.
  const body = all.slice(first).map((row) => row.map((cell) => (/^[-–—]$/.test(cell) ? '' : cell)));
  return named
    ? { before: lines.slice(0, first - 1), rows: [names, ...body], head: 0 }
    : { before: lines.slice(0, first), rows: body };
}

/** Finds columns separated by two spaces or more, under a head whose names are separated in the same way. */
function gapRows(lines: readonly string[]): FoundTable | null {
  const split = (line: string) => line.trim().split(/\s{2,}/);
  const head = lines.findIndex((line) => namesColumns(split(line)));
  if (head < 0) return null;
  const starts = [...lines[head]!.matchAll(/(?<=^|\s{2})\S/g)].map(({ index }) => index);
  const wraps = findColumnKind(split(lines[head]!)[0]!) === 'step';
  const rows: string[][] = [];
  for (const line of lines.slice(head)) {
    // A line that is indented further continues the cells above it.
    const cells = split(line);
    // A number in the second column is the next step of the unit above.
    const goesOn =
      wraps && rows.length > 1 && line.search(/\S/) > starts[0]! + 1 && !/^\d{1,3}$/.test(cells[0]!);
    if (!goesOn) rows.push(cells.length === starts.length ? cells : placeCells(line, starts));
    else addTo(rows.at(-1)!, placeCells(line, starts));
  }
  return { before: lines.slice(0, head), rows };
}

/** Places the cells of a line, from left to right, in the columns whose start is nearest. */
function placeCells(line: string, starts: readonly number[]): string[] {
  const cells = starts.map((): string[] => []);
  let last = -1;
  for (const { index, 0: text } of line.matchAll(/\S+(?:\s\S+)*/g)) {
    const away = starts.map((start) => Math.abs(start - index));
    const nearest = away.indexOf(Math.min(...away));
    const column = Math.min(Math.max(nearest, last + 1), starts.length - 1);
    cells[column]!.push(text);
    last = column;
  }
  return cells.map((texts) => texts.join(' '));
}

function addTo(row: string[], more: readonly string[]): void {
  more.forEach((text, i) => {
    if (text === '') return;
    const before = row[i] ?? '';
    // A text such as "ie" continues the list "ee, ea,". A text with a capital begins a new line.
    const joint = before === '' ? '' : /[,;:/+&(-]$/.test(before) || !/^\p{Lu}/u.test(text) ? ' ' : '\n';
    row[i] = before + joint + text;
  });
}

/** The most column names that a table with one cell a line may have. */
const MOST_NAMES = 6;

/**
 * Finds tables with one cell a line and rows of different lengths, as pages of a file are copied. The names of the
 * columns also have one line each. The rows begin with the numbers 1, 2, 3. Repeated names and repeated lines above
 * them are left out.
 */
function countedRows(lines: readonly string[]): FoundTable | null {
  const all = lines.map((line) => line.trim());
  const first = all.findIndex(
    (_, i) =>
      findColumnKind(all[i]!) === 'step' &&
      findColumnKind(all[i + 1] ?? '') !== null &&
      all[i + 1] !== all[i],
  );
  if (first < 0) return null;
  let width = 1;
  while (width < MOST_NAMES && findHeadKind(all[first + width] ?? '') !== null) width += 1;
  const names = all.slice(first, first + width);
  if (width < 3 || new Set(names).size < width) return null;
  const above = new Set(all.slice(0, first));
  const rows: string[][] = [];
  for (let i = first + width; i < all.length; i++) {
    const line = all[i]!;
    if (names.every((name, n) => all[i + n] === name)) {
      i += width - 1;
      continue;
    }
    if (above.has(line) || /^(?:page )?\d+ of \d+$|^page \d+$/i.test(line)) continue;
    const last = rows.at(-1);
    if (Number.parseInt(line, 10) === rows.length + 1 && /^\d+[.)]?$/.test(line)) rows.push([line]);
    else if (last === undefined) return null;
    else if (last.length === width) last[width - 1] += ` ${line}`;
    else last.push(line);
  }
  return rows.length < 4 ? null : { before: all.slice(0, first), rows: [names, ...rows], head: 0 };
}

/** Finds tables with one cell a line: first the names of the columns, then the same number of lines for each row. */
function stackedRows(lines: readonly string[]): FoundTable | null {
  const kinds = lines.slice(0, 6).map((line) => findColumnKind(line));
  const width = kinds.indexOf(null);
  if (width < 2 || lines.length % width !== 0 || new Set(kinds.slice(0, width)).size < width) return null;
  const rows = Array.from({ length: lines.length / width }, (_, i) =>
    lines.slice(i * width, (i + 1) * width),
  );
  return { before: [], rows: rows.map((row) => row.map((cell) => cell.trim())) };
}
