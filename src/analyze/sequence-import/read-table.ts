import { type CellKind, findHeadKind } from './column-kinds.ts';
import { commonWords } from './common-words.ts';
import { type FoundTable, namesColumns } from './find-rows.ts';
import type { LaidCell, LaidStep, Layout } from './layout.ts';
import { readWords } from './read-words.ts';
import type { Rows } from './split-cells.ts';
import { readStepHeading } from './step-heading.ts';

/**
 * Reads the rows of a table into steps: one a row; a row without a step's name goes on with the step before it.
 * Column names are kept as notes of the first step.
 */
export function readTable({ before, rows }: FoundTable): Layout {
  const head = rows.findIndex(namesColumns);
  const names = head < 0 ? [] : rows[head]!;
  const body = rows.filter((_, i) => i !== head);
  const kinds = columnKinds(names, head < 0 ? body : body.slice(head));
  const steps: { title: string; cells: LaidCell[]; open: boolean }[] = [];
  for (const row of body) {
    const filled = row.filter((cell) => cell !== '');
    const titles = row.flatMap((cell, i) =>
      kinds[i] === 'step' && cell !== '' ? [stepTitle(cell, names[i] ?? '')] : [],
    );
    const cells = row.flatMap((text, i): LaidCell[] => {
      const kind = kinds[i] ?? 'patterns';
      return text === '' || kind === 'step' ? [] : [{ text, kind }];
    });
    const last = steps.at(-1);
    const alone = filled.length === 1 ? readStepHeading(filled[0]!) : null;
    if (alone !== null && cells.length > 0) {
      steps.push({ title: filled[0]!, cells: [], open: true });
    } else if (last?.open === true && last.cells.length === 0 && titles.length > 0) {
      // A row that only names a unit: its name goes before that of the first week in it.
      last.title = [last.title, ...titles].join(' · ');
      last.cells.push(...cells);
      last.open = cells.length === 0;
    } else if (last !== undefined && titles.length === 0 && kinds.includes('step')) {
      last.cells.push(...cells);
    } else {
      steps.push({
        title: titles.join(' · '),
        cells,
        open: cells.length === 0 && filled.length < row.length && isUnit(titles),
      });
    }
  }
  const headCell: LaidCell[] =
    head < 0 ? [] : [{ text: names.filter((name) => name !== '').join(' | '), kind: 'notes' }];
  if (steps.length === 0) steps.push({ title: '', cells: [], open: false });
  steps[0]!.cells.unshift(...headCell);
  return {
    title: before.map((line) => line.trim()).join(' · '),
    steps: steps.map(({ title, cells }): LaidStep => ({ title, cells })),
  };
}

/** Bare numbers take the name of their column: 3 under Week is "Week 3"; without one they stay bare. */
function stepTitle(cell: string, name: string): string {
  return /^\d+[a-z]?$/i.test(cell) && /^\p{L}/u.test(name) ? `${name} ${cell}` : cell;
}

function isUnit(titles: readonly string[]): boolean {
  const kind = titles.length === 1 ? readStepHeading(titles[0]!)?.kind : undefined;
  return kind !== undefined && kind !== 'week' && kind !== 'step' && kind !== 'lesson';
}

function columnKinds(names: readonly string[], body: Rows): readonly CellKind[] {
  const width = Math.max(names.length, ...body.slice(0, 200).map((row) => row.length));
  const named = Array.from({ length: width }, (_, i) => findHeadKind(names[i] ?? ''));
  if (names.length > 0) {
    // A column with a name of its own ("Teacher") is a note, unless no other column holds the patterns.
    const open = !named.includes('patterns');
    const unnamed = (i: number) => (open || (names[i] ?? '') === '' ? contentKind(body, i) : 'notes');
    return named.map((kind, i) => kind ?? unnamed(i));
  }
  return named.map((_, i) => contentKind(body, i));
}

/** What a column without a name holds, by its cells: names of steps, common words, or patterns. */
function contentKind(body: Rows, column: number): CellKind {
  const cells = body.map((row) => row[column] ?? '').filter((cell) => cell !== '');
  const share = (test: (cell: string) => boolean) => cells.filter(test).length / Math.max(1, cells.length);
  if (column <= 1 && share((cell) => /^[a-z]{0,2}\d{1,3}[.)]?$/i.test(cell) || isHeading(cell)) > 0.7)
    return 'step';
  const common = (cell: string) => {
    const words = readWords(cell);
    return (
      words.length > 0 &&
      words.filter((word) => commonWords.has(word.toLowerCase())).length * 3 >= words.length * 2
    );
  };
  return share(common) > 0.6 ? 'by-sight' : 'patterns';
}

function isHeading(cell: string): boolean {
  const heading = readStepHeading(cell);
  return heading !== null && heading.kind !== 'number';
}
