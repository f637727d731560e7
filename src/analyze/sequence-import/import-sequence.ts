import { bitOf } from '../catalogue/names.ts';
import type { WordAnalyzer } from '../standing/judge.ts';
import { choiceKey } from './choice-key.ts';
import type { CellKind } from './column-kinds.ts';
import { findColumns } from './find-columns.ts';
import { findRows } from './find-rows.ts';
import type { ImportedItem, ImportedSequence, ItemChoice, PastedTable } from './imported-sequence.ts';
import type { LaidStep, Layout } from './layout.ts';
import { findWordMark } from './marked-words.ts';
import { plainText } from './plain-text.ts';
import { shownApart } from './read-items.ts';
import { readList } from './read-list.ts';
import { readStep } from './read-step.ts';
import { readTable } from './read-table.ts';
import { readWords } from './read-words.ts';
import { goesOver } from './rest-weeks.ts';
import { createWordNeeds, noNeeds } from './word-needs.ts';

/**
 * Reads a scope and sequence pasted from a document, spreadsheet or web page. Never throws.
 * Every piece of the text becomes an item, a step's title or the title. Only the signs that divide pieces (commas,
 * bullets, "and") are left out.
 * `choices` are the teacher's earlier decisions, by `choiceKey` of the item's text. They change the meaning of items,
 * never the way the text is cut. `columns` are the kinds of the table's columns that the teacher has set, from the
 * left.
 * With an `engine` the example words count as evidence. The patterns they need confirm a meaning of letters or make it
 * a guess.
 */
export function importSequence(
  pasted: string,
  choices: Readonly<Record<string, ItemChoice>> = {},
  columns: readonly CellKind[] = [],
  engine?: WordAnalyzer,
): ImportedSequence {
  const text = plainText(pasted);
  if (text.trim() === '') return { title: '', steps: [] };
  const { title, steps } = readLayout(text, columns);
  const mark = findWordMark(steps);
  const cells = steps.flatMap((step) =>
    step.cells.filter(({ kind }) => kind === 'patterns' || kind === 'title'),
  );
  const apart = shownApart(cells.flatMap((cell) => cell.text.split(/[;\n]/)));
  const needs = engine === undefined ? noNeeds : createWordNeeds(engine);
  const opening = countOpening(steps);
  return {
    title,
    steps: steps.map((step, i) => ({
      title: [step.title, step.focus ?? ''].filter((part) => part !== '').join(' · '),
      items: readStep(step, needs, { first: i <= opening, apart, ...(mark === null ? {} : { mark }) }).map(
        (item) => applyChoice(item, choices),
      ),
    })),
  };
}

/** Returns the number of steps at the start that only go over content taught before the plan. */
function countOpening(steps: readonly LaidStep[]): number {
  const others = steps.findIndex(
    ({ cells }) =>
      !cells.some(({ kind, text }) => (kind === 'patterns' || kind === 'title') && goesOver(text)),
  );
  return Math.max(0, others < 0 ? steps.length : others);
}

/**
 * Reads the columns of a pasted table and its first rows, for the teacher to confirm. Returns null for a list or prose.
 * Never throws.
 */
export function readColumns(pasted: string): PastedTable | null {
  const table = findRows(plainText(pasted));
  if (table === null) return null;
  const { head, columns } = findColumns(table);
  const rows = table.rows.filter((_, i) => i !== head);
  return { columns, rows: rows.slice(0, ROWS_SHOWN).map((row) => columns.map((_, i) => row[i] ?? '')) };
}

const ROWS_SHOWN = 4;

function readLayout(text: string, columns: readonly CellKind[]): Layout {
  const table = findRows(text);
  return table === null ? readList(text) : readTable(table, columns);
}

function applyChoice(
  { text, status, patterns, bySight }: ImportedItem,
  choices: Readonly<Record<string, ItemChoice>>,
): ImportedItem {
  const key = choiceKey(text);
  const choice = Object.hasOwn(choices, key) ? choices[key] : undefined;
  if (choice === undefined) return { text, status, patterns, bySight };
  if (choice === 'ignore') return { text, status: 'ignored', patterns: [], bySight: [] };
  if (choice === 'by-sight') return { text, status: 'chosen', patterns: [], bySight: readWords(text) };
  return { text, status: 'chosen', patterns: choice.filter((id) => bitOf.has(id)), bySight: [] };
}
