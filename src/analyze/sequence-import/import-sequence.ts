import { bitOf } from '../catalogue/names.ts';
import { choiceKey } from './choice-key.ts';
import { findRows } from './find-rows.ts';
import type { ImportedItem, ImportedSequence, ItemChoice } from './imported-sequence.ts';
import type { LaidStep, Layout } from './layout.ts';
import { readItems } from './read-items.ts';
import { readList } from './read-list.ts';
import { readTable } from './read-table.ts';
import { readWords } from './read-words.ts';

/**
 * Reads a scope and sequence pasted from a document, spreadsheet or web page. Every piece of the text is in an
 * item, a step's title or the title; only what divides pieces (commas, bullets, "and") is left out. `choices` are
 * what the teacher settled before, by `choiceKey` of the item's text; they change what items mean, never how the
 * text is cut. Never throws.
 */
export function importSequence(
  pasted: string,
  choices: Readonly<Record<string, ItemChoice>> = {},
): ImportedSequence {
  const text = pasted
    .normalize('NFC')
    .replace(/\r\n?|\u2028|\u2029/g, '\n')
    .replace(/[\u00a0\u202f\ufeff]/g, ' ');
  if (text.trim() === '') return { title: '', steps: [] };
  const { title, steps } = readLayout(text);
  return {
    title,
    steps: steps.map((step) => ({
      title: step.title,
      items: itemsOf(step).map((item) => applyChoice(item, choices)),
    })),
  };
}

function readLayout(text: string): Layout {
  const table = findRows(text);
  return table === null ? readList(text) : readTable(table);
}

function itemsOf({ cells }: LaidStep): readonly ImportedItem[] {
  const examples = cells.filter(({ kind }) => kind === 'examples').flatMap(({ text }) => readWords(text));
  const beside = { examples: examples.map((word) => word.toLowerCase()), headings: [] };
  return cells.flatMap(({ text, kind }) => readItems(text, kind, beside));
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
