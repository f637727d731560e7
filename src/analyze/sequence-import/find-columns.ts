import { type CellKind, findColumnKind, findHeadKind } from './column-kinds.ts';
import { commonWords } from './common-words.ts';
import { type FoundTable, namesColumns } from './find-rows.ts';
import { readItems } from './read-items.ts';
import { readWords } from './read-words.ts';
import { isDates, MONTHS, readStepHeading } from './step-heading.ts';

/** A column of a pasted table. */
export interface FoundColumn {
  /** The name in the head of the column. It is empty if there is no head. */
  readonly name: string;
  readonly kind: CellKind;
}

/** The number of rows that are read to find the kind of a column. */
const ROWS_READ = 60;

/** The most words in a column's name, if its row is known to be a head. */
const LONGEST_NAME = 6;

/**
 * Finds the kinds of a table's columns by their names and cells. `head` is the index of the row with the names, or -1
 * if there is none.
 */
export function findColumns({ rows, head: known }: FoundTable): {
  readonly head: number;
  readonly columns: readonly FoundColumn[];
} {
  const head = known ?? rows.findIndex((row, i) => namesColumns(row, i === 0));
  const names = head < 0 ? [] : rows[head]!;
  const body = rows.slice(head + 1).filter((row) => !isHeadAgain(row, names));
  const width = Math.max(names.length, ...body.slice(0, 200).map((row) => row.length));
  const columns = Array.from({ length: width }, (_, i): Column => {
    const cells = body.map((row) => row[i] ?? '').filter((cell) => cell !== '');
    return columnOf(names[i] ?? '', i, cells);
  });
  const kinds = settleTitles(
    columns,
    columns.map((column) => ruleFor(column, columns).kind),
  );
  return { head, columns: columns.map(({ name }, i) => ({ name, kind: kinds[i]! })) };
}

/** Whether a row repeats the names of the columns, above the next part of a table. */
export function isHeadAgain(row: readonly string[], names: readonly string[]): boolean {
  return names.length > 1 && names.every((name, i) => (row[i] ?? '').toLowerCase() === name.toLowerCase());
}

interface Column {
  readonly name: string;
  readonly place: number;
  /** The kind of content that the column's name announces. */
  readonly named: CellKind | null;
  /** The first cells that are not empty. */
  readonly cells: readonly string[];
  readonly all: readonly string[];
}

/** Returns a column with its name and its cells that are not empty. */
export function columnOf(name: string, place: number, all: readonly string[]): Column {
  return { name, place, named: findHeadKind(name, LONGEST_NAME), cells: all.slice(0, ROWS_READ), all };
}

interface ColumnRule {
  readonly name: string;
  /** The head of a column and one of its cells. */
  readonly example: readonly [name: string, cell: string];
  readonly counterExample: readonly [name: string, cell: string];
  /** The head of the column with letters that is beside the example and the counter-example. */
  readonly beside: string;
  readonly kind: CellKind;
  readonly applies: (column: Column, all: readonly Column[]) => boolean;
}

const teaching = (kind: CellKind | null) => kind === 'patterns' || kind === 'title';

/** Names of columns that teach nothing, whatever their cells name. "Review and new" does. */
const aside =
  /\b(?:notes?|comments?|remarks?|reminder|words?|reviews?|reviewed|revision|revise|assessments?|tests?|tested|quiz(?:zes)?|checked|dictation|homework|grammar|handwriting|standards?|books?|texts?|reading|readers?|stor(?:y|ies)|fluency|vocabulary)\b/i;

/** The first rule that applies determines the kind of a column. */
export const columnRules: readonly ColumnRule[] = [
  {
    name: 'a name of steps over what is taught',
    example: ['Lesson', 'Initial blends'],
    counterExample: ['Lesson', '4'],
    beside: '',
    kind: 'patterns',
    applies: ({ named, cells }, all) =>
      named === 'step' &&
      !all.some((other) => teaching(other.named)) &&
      share(cells, isStepName) < 0.5 &&
      share(cells, teaches) > 0.5,
  },
  {
    name: 'a name with a word of steps in it over what is taught',
    example: ['Also this week', 'Initial blends'],
    counterExample: ['Also this week', '4'],
    beside: 'Sounds',
    kind: 'patterns',
    applies: ({ name, named, cells }) =>
      named === 'step' &&
      findColumnKind(name) === null &&
      share(cells, isStepName) < 0.5 &&
      share(cells, teaches) > 0.5,
  },
  {
    name: 'a name with the word words in it over what is taught',
    example: ['Longer words', 'Closed syllables'],
    counterExample: ['Longer words', 'napkin, rabbit'],
    beside: 'Sounds',
    kind: 'patterns',
    applies: ({ name, named, cells }) =>
      named === 'examples' && findColumnKind(name) === null && share(cells, teaches) > 0.8,
  },
  {
    name: 'a name of something else over what is taught',
    example: ['Teacher focus', 'Initial blends'],
    counterExample: ['Review', 'Initial blends'],
    beside: 'Sounds',
    kind: 'patterns',
    applies: ({ name, named, cells }) =>
      named === 'notes' && !(aside.test(name) && !/\bnew\b/i.test(name)) && share(cells, teaches) > 0.6,
  },
  {
    name: 'a second name of words over commoner words',
    example: ['Learn words', 'could, would'],
    counterExample: ['More words', 'ship, shop'],
    beside: 'Words',
    kind: 'by-sight',
    applies: (column, all) => {
      const others = all.filter((other) => other !== column && other.named === 'examples');
      return (
        column.named === 'examples' &&
        !all.some((other) => other.named === 'by-sight') &&
        others.length > 0 &&
        share(column.cells, isCommon) > 0.5 &&
        others.every((other) => share(other.cells, isCommon) < 0.3)
      );
    },
  },
  {
    name: 'a name of words over by-sight words',
    example: ['Words', 'the, of, was'],
    counterExample: ['Words', 'ship, shop'],
    beside: 'Sounds',
    kind: 'by-sight',
    applies: ({ named, cells }, all) =>
      named === 'examples' &&
      !all.some((other) => other.named === 'by-sight') &&
      share(cells, isCommon) > 0.8,
  },
  {
    name: 'a name of spellings over words',
    example: ['Spelling list', 'paint, stray'],
    counterExample: ['Spelling list', 'ai, ay'],
    beside: 'Sounds',
    kind: 'examples',
    applies: (column, all) =>
      column.named === 'patterns' &&
      share(column.cells, isWords) > 0.7 &&
      all.some(
        (other) => other !== column && other.named === 'patterns' && share(other.cells, teaches) > 0.5,
      ),
  },
  ...(['step', 'patterns', 'by-sight', 'examples', 'notes'] as const).map(
    (kind): ColumnRule => ({
      name: `a name of ${kind}`,
      example: [
        {
          step: 'Week',
          patterns: 'Phonics',
          'by-sight': 'Sight words',
          examples: 'Examples',
          notes: 'Notes',
        }[kind],
        kind === 'step' ? '3' : 'x',
      ],
      counterExample: ['Harbour', 'x'],
      beside: 'Sounds',
      kind,
      applies: ({ named }) => named === kind,
    }),
  ),
  {
    name: 'numbers or names of steps',
    example: ['Ours', 'Week 3'],
    counterExample: ['Ours', 'sh, ch'],
    beside: 'Sounds',
    kind: 'step',
    applies: ({ named, place, cells }) => named === null && place <= 1 && share(cells, isStepName) > 0.7,
  },
  {
    name: 'common words',
    example: ['', 'the, of, was'],
    counterExample: ['', 'ship, shop'],
    beside: 'Sounds',
    kind: 'by-sight',
    applies: ({ name, named, cells }, all) =>
      name === ''
        ? share(cells, isCommon) > 0.6 || isCommoner(cells, all)
        : named === null && share(cells, isCommon) > 0.8 && !all.some((other) => other.named === 'by-sight'),
  },
  {
    name: 'words that are examples of what another column teaches',
    example: ['', 'ship, shop'],
    counterExample: ['', 'sh, ch'],
    beside: 'Sounds',
    kind: 'examples',
    applies: ({ name, cells }, all) =>
      name === '' && share(cells, isWords) > 0.6 && all.some((other) => share(other.cells, teaches) > 0.5),
  },
  {
    name: 'what is taught, under a name of its own',
    example: ['Ours', 'sh, ch'],
    counterExample: ['Ours', 'Mr Falk'],
    beside: 'Sounds',
    kind: 'patterns',
    applies: ({ name, cells }, all) =>
      name === '' || share(cells, teaches) > 0.6 || !all.some((other) => teaching(other.named)),
  },
  {
    name: 'anything else',
    example: ['Harbour', 'Mr Falk'],
    counterExample: ['', 'sh'],
    beside: 'Sounds',
    kind: 'notes',
    applies: () => true,
  },
];

/** Returns the first rule that applies to a column. `all` are all columns of the table. */
export function ruleFor(column: Column, all: readonly Column[]): ColumnRule {
  return columnRules.find(({ applies }) => applies(column, all))!;
}

/**
 * Finds the focus column: the first column whose cells say in words what is taught. It gives the steps their titles. Of
 * the columns that number the steps, only the last one that tells all steps apart is then needed.
 */
function settleTitles(columns: readonly Column[], kinds: readonly CellKind[]): readonly CellKind[] {
  const focus = columns.findIndex(({ cells }, i) => kinds[i] === 'patterns' && share(cells, isPhrase) > 0.5);
  if (focus < 0) return kinds;
  const counts = columns.filter((_, i) => kinds[i] === 'step');
  const fine = counts.filter(({ all }) => all.length > 1 && new Set(all).size === all.length);
  // A column of week numbers is preferred to a column of dates, because numbers are shorter.
  const finest = fine.findLast(({ cells }) => share(cells, isDate) < 0.5) ?? fine.at(-1);
  return kinds.map((kind, i) => {
    if (i === focus) return 'title';
    const numbers = columns[i]!.cells.some((cell) => /\d/.test(cell));
    return kind === 'step' && numbers && finest !== undefined && columns[i] !== finest ? 'notes' : kind;
  });
}

function share(cells: readonly string[], test: (cell: string) => boolean): number {
  return cells.filter(test).length / Math.max(1, cells.length);
}

/** Whether a cell is a number, a date, or the name of a step. */
function isStepName(cell: string): boolean {
  const heading = readStepHeading(cell);
  return (
    /^(?:[a-z]{0,2}\d{1,3}[.)]?|(?=.*\d)[A-Z\d]{1,4}(?:[.-][A-Z\d]{1,4}){1,3})$/i.test(cell) ||
    (heading !== null && heading.kind !== 'number')
  );
}

/** `9/3-9/6`, `Sept 5-16`, `12.01.` */
function isDate(cell: string): boolean {
  return dates.test(cell) && (isDates(cell) || readStepHeading(cell) === null);
}

const dates = new RegExp(`\\d{1,2}[/.-]\\d{1,2}|\\b(?:${MONTHS})\\p{L}*\\.? \\d`, 'iu');

function isCommon(cell: string): boolean {
  const words = readWords(cell);
  const common = words.filter((word) => commonWords.has(word.toLowerCase())).length;
  return words.length > 0 && common * 3 >= words.length * 2;
}

/**
 * Whether a column has common words on many lines and another column of words without a name has few: which, their
 * beside shelf, bench.
 */
function isCommoner(cells: readonly string[], all: readonly Column[]): boolean {
  const common = (column: readonly string[]) => share(column, isWords) > 0.6 && share(column, hasCommon);
  const own = common(cells);
  return (
    own !== false &&
    own > 0.4 &&
    all.some(({ name, cells: others }) => {
      const other = name === '' && others !== cells && common(others);
      return other !== false && other < 0.2;
    })
  );
}

function hasCommon(cell: string): boolean {
  return readWords(cell).some((word) => commonWords.has(word.toLowerCase()));
}

function teaches(cell: string): boolean {
  return readItems(cell, 'patterns').some(({ patterns }) => patterns.length > 0);
}

/** Whether a cell has words and none of them is understood as something to teach. */
function isWords(cell: string): boolean {
  return (
    readWords(cell).some((word) => word.length > 2) &&
    readItems(cell, 'patterns').every(({ patterns }) => patterns.length === 0)
  );
}

/** Whether a cell says something in words, such as "Initial blends", and not only in letters. */
function isPhrase(cell: string): boolean {
  return readItems(cell, 'patterns').some(
    ({ named, text, status }) => named || (status !== 'matched' && /\p{L}{4}/u.test(text)),
  );
}
