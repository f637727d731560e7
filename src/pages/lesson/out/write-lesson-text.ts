import type { LessonPaperProps } from './lesson-paper.tsx';
import { hasCells, type PrintedBlock } from './printed-part.ts';

/** Writes a lesson as plain text. An empty line separates parts and pieces, and tabs separate the cells of a row. */
export function writeLessonText({ title, parts, source }: LessonPaperProps): string {
  const pieces = parts.flatMap(({ title, blocks }) => [title.toUpperCase(), ...blocks.map(writeBlock)]);
  return `${[title, ...pieces, source ?? ''].filter((piece) => piece !== '').join('\n\n')}\n`;
}

const LINE = '__________';

function writeBlock({ title, layout, note, numbered, columns, rows }: PrintedBlock): string {
  const heads = columns.map(({ head }) => head);
  const cells = (row: readonly string[]): string =>
    layout === 'chain'
      ? row.join(' → ')
      : row.map((cell, i) => ((columns[i] ?? columns[0]!).blank ? LINE : cell)).join('\t');
  const lines = rows.map((row, i) => (numbered ? `${i + 1}\t` : '') + cells(row));
  const head =
    hasCells(layout) && heads.some((each) => each !== '') ? (numbered ? '\t' : '') + heads.join('\t') : '';
  return [title, note, head, ...lines].filter((line) => line !== '').join('\n');
}
