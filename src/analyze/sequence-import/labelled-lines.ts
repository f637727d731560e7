import type { CellKind } from './column-kinds.ts';
import { findHeadKind } from './column-kinds.ts';
import { findColumns } from './find-columns.ts';
import type { LaidCell } from './layout.ts';
import type { Line } from './read-lines.ts';

/** The name of a column before a colon at the start of a line. */
const labelled = /^(?<name>\p{L}[\p{L} /-]{1,34}?)\s*:\s+(?<rest>\S.*)$/u;

/** A name that occurs under this many headings is the name of a column. */
const LABELLED_STEPS = 3;

/**
 * Maps each name before a colon, on the lines of the steps, to the kind of content after the colon. The lines of a step
 * are then one row of a table, written below each other.
 */
export type LabelKinds = ReadonlyMap<string, CellKind>;

/**
 * Finds the columns of a list whose steps have lines such as `Focus: long a`, `Spellings: ai, ay`, `Sight words: they`.
 * Returns the kind of each column. The result is empty if fewer than two columns name taught content. Then no lines
 * belong together.
 */
export function findLabels(lines: readonly Line[]): LabelKinds {
  const rows: Map<string, string>[] = [];
  for (const { heading, text } of lines) {
    if (heading !== null) rows.push(new Map());
    const { name, rest } = (heading === null ? labelled.exec(text)?.groups : undefined) ?? {};
    if (name !== undefined && findHeadKind(name) !== null) rows.at(-1)?.set(name, rest!);
  }
  const names = [...new Set(rows.flatMap((row) => [...row.keys()]))].filter(
    (name) => rows.filter((row) => row.has(name)).length >= LABELLED_STEPS,
  );
  if (names.length < 2) return new Map();
  const filled = rows.filter((row) => names.some((name) => row.has(name)));
  const { columns } = findColumns({
    before: [],
    rows: [names, ...filled.map((row) => names.map((name) => row.get(name) ?? ''))],
    head: 0,
  });
  const kinds = columns.map(({ kind }): CellKind => (kind === 'step' ? 'title' : kind));
  const teaching = kinds.filter((kind) => kind === 'patterns' || kind === 'title').length;
  return teaching < 2 ? new Map() : new Map(names.map((name, i) => [name, kinds[i]!]));
}

/**
 * Reads a labelled line into two cells, one for the name and one for the content. Both cells are in the only row of
 * their step. Returns null for other lines.
 */
export function readLabelled(text: string, labels: LabelKinds, row: number): readonly LaidCell[] | null {
  if (labels.size === 0) return null;
  const { name = '', rest = '' } = labelled.exec(text)?.groups ?? {};
  const kind = labels.get(name);
  return kind === undefined
    ? null
    : [
        { text: name, kind: 'notes', row },
        { text: rest, kind, row, about: name },
      ];
}
