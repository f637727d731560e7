import type { Accent } from '../../../analyze/types.ts';
import type { LessonBlock, PlannedPart } from '../../../lesson/index.ts';
import { cleanText } from '../../../passage/print/clean-text.ts';

/** The reader of a sheet. `pupils` get lines to write on. The `key` has the answers and what the teacher says. */
export type Audience = 'pupils' | 'key';

export interface PrintedColumn {
  readonly head: string;
  /** True if pupils get a line to write on. */
  readonly blank: boolean;
  /** True if only the key has this column. */
  readonly forTeacher: boolean;
}

/** A piece of a lesson for one audience. Each text is a single line that can be printed. */
export interface PrintedBlock extends Pick<LessonBlock, 'id' | 'title' | 'layout'> {
  readonly note: string;
  /** True if pupils write in the rows. Each row then has a number that the teacher can call out. */
  readonly numbered: boolean;
  readonly columns: readonly PrintedColumn[];
  readonly rows: readonly (readonly string[])[];
}

/** Returns whether a row has separate cells under column heads. Otherwise a row is a single text or a chain of words. */
export function hasCells(layout: LessonBlock['layout']): boolean {
  return layout === 'table' || layout === 'grid' || layout === 'passage';
}

/** Returns the language of a group’s sheets, for voices and hyphenation. */
export function sheetLanguage(accent: Accent): 'en-GB' | 'en-US' {
  return accent === 'british' ? 'en-GB' : 'en-US';
}

/** Returns the language of a piece. Pieces for families at home may be in Spanish. */
export function languageOf({ id }: Pick<LessonBlock, 'id'>): 'en' | 'es' {
  return id.startsWith('es-') ? 'es' : 'en';
}

/** Returns whether a piece needs the full width because of long cells or many columns. Other pieces may be side by side. */
export function isWide({
  layout,
  columns,
  rows,
}: Pick<PrintedBlock, 'layout' | 'rows'> & {
  readonly columns: readonly { readonly blank?: boolean; readonly shows?: string }[];
}): boolean {
  if (layout !== 'table') return true;
  const longest = columns.map((_, i) => Math.max(0, ...rows.map((row) => row[i]?.length ?? 0)));
  const toWrite = columns.filter(({ blank, shows }) => blank || shows === 'blank').length;
  return columns.length > 4 || toWrite > 2 || longest.reduce((sum, length) => sum + length, 0) > NARROW;
}

/** The number of letters in a row that fit into half a page at the usual size. */
const NARROW = 22;

export interface PrintedPart {
  readonly id: string;
  readonly title: string;
  /** True if the part is set in close lines, because a lesson planned by the minute should fit on one page. */
  readonly close: boolean;
  readonly blocks: readonly PrintedBlock[];
}

/**
 * Returns the parts of a lesson for one audience, without parts that were left out or have no content for this
 * audience.
 */
export function printParts(parts: readonly PlannedPart[], audience: Audience): PrintedPart[] {
  return parts
    .filter(({ plan }) => !plan.out)
    .map(({ id, title, blocks, plan: { minutes } }) => ({
      id,
      title: audience === 'key' && minutes !== undefined ? `${title} (${minutes} min)` : title,
      close: minutes !== undefined,
      blocks: blocks.flatMap((block) => printBlock(block, audience)),
    }))
    .filter(({ blocks }) => blocks.length > 0);
}

function printBlock(block: LessonBlock, audience: Audience): PrintedBlock[] {
  const { id, title, layout, note = '' } = block;
  const isKey = audience === 'key';
  const isTable = hasCells(layout);
  const shown = block.columns
    .map((column, at) => ({ ...column, at }))
    .filter(({ shows }) => isKey || shows !== 'key')
    .filter(({ at }) => !isTable || block.rows.some((row) => row[at]));
  if (shown.length === 0 || block.rows.length === 0) return [];
  const isBlank = (shows: string): boolean => !isKey && shows === 'blank';
  // A paragraph of a passage begins with a wide space, which is kept.
  const inLine = (cell: string): string => (layout === 'passage' ? cell.trimEnd() : cell.trim());
  const text = (cell: string, shows: string): string => (isBlank(shows) ? '' : inLine(cleanText(cell)));
  return [
    {
      id,
      title: cleanText(title),
      layout,
      note: isKey ? cleanText(note) : '',
      numbered: block.columns.some(({ shows }) => shows === 'blank'),
      columns: shown.map(({ head, shows }) => ({
        head: cleanText(head),
        blank: isBlank(shows),
        forTeacher: shows === 'key',
      })),
      rows: block.rows.map((row) =>
        isTable
          ? shown.map(({ at, shows }) => text(row[at] ?? '', shows))
          : row.map((cell) => text(cell, shown[0]!.shows)),
      ),
    },
  ];
}
