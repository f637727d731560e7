import {
  type Analyzer,
  type CellKind,
  type ImportedSequence,
  type ItemChoice,
  importSequence,
  type PastedTable,
  readColumns,
} from '../../analyze/index.ts';
import type { Group, Sequence } from '../../analyze/types.ts';
import type { ImportChoices } from '../../host/store/import-choices.ts';
import { say } from '../../wording/say.ts';
import { type ItemToSettle, itemsToSettle } from './from-pasted.ts';

/**
 * The longest text that is read, in UTF-16 units. The limit is above the length of any scope and sequence. The scope
 * and sequence of a whole school has some 20,000 units.
 */
const LONGEST = 200_000;

/**
 * The kinds that the teacher chose for the columns of a table. The choices are kept as long as the column heads of the
 * table stay the same.
 */
export interface SaidColumns {
  readonly heads: string;
  readonly kinds: readonly CellKind[];
}

/** A pasted text, read without the teacher’s choices for its pieces. */
export interface PastedText {
  /** The pasted text. Empty if the text is too long to be read. */
  readonly text: string;
  readonly isTooLong: boolean;
  readonly table: PastedTable | null;
  readonly columns: readonly CellKind[];
  readonly words: Analyzer | undefined;
  readonly unaided: ImportedSequence;
  readonly toSettle: readonly ItemToSettle[];
}

/** Reads a pasted text. With `words`, example words are read by their patterns, otherwise by their shape. */
export function readPastedText(
  pasted: string,
  said: SaidColumns | null,
  words: Analyzer | undefined,
): PastedText {
  const isTooLong = pasted.length > LONGEST;
  const text = isTooLong ? '' : pasted;
  const table = isTooLong ? null : readColumns(text);
  const columns =
    said?.heads === headsOf(table) ? said.kinds : (table?.columns.map(({ kind }) => kind) ?? []);
  const unaided = importSequence(text, {}, columns, words);
  return { text, isTooLong, table, columns, words, unaided, toSettle: itemsToSettle(unaided) };
}

/** Returns the sequence of a pasted text with the teacher’s choices applied. */
export function importWithChoices(
  { text, columns, words }: PastedText,
  choices: ImportChoices,
): ImportedSequence {
  return importSequence(text, choices, columns, words);
}

/** Returns the column kinds after the teacher gave one column (counted from 0) another kind. */
export function sayColumn({ table, columns }: PastedText, column: number, kind: CellKind): SaidColumns {
  return { heads: headsOf(table), kinds: columns.with(column, kind) };
}

/** Returns the choices with one piece settled, or with its choice removed (null). */
export function settle(choices: ImportChoices, key: string, choice: ItemChoice | null): ImportChoices {
  const { [key]: _, ...others } = choices;
  return choice === null ? others : { ...others, [key]: choice };
}

export function choiceOf(choices: ImportChoices, key: string): ItemChoice | undefined {
  return Object.hasOwn(choices, key) ? choices[key] : undefined;
}

/** Returns the reason why a pasted text gives no steps; null if the text gives steps or nothing is pasted. */
export function findTrouble(
  pasted: string,
  { isTooLong, unaided }: PastedText,
): 'tooLong' | 'noSteps' | null {
  if (isTooLong) return 'tooLong';
  return pasted.trim() !== '' && unaided.steps.length === 0 ? 'noSteps' : null;
}

/** Returns the name of the sequence: the name that the teacher typed, or else the title of the text. */
export function nameOf({ title }: ImportedSequence, typed: string | null): string {
  return typed ?? (title.trim() || say('sequences.ourSequence'));
}

/**
 * Returns the step (from 1) of a pasted sequence that is nearest to what a group was taught in another sequence. It is
 * the step up to which the most patterns were taught and the fewest were not.
 */
export function proposeStep({ steps }: ImportedSequence, group: Group, sequence: Sequence | null): number {
  const taught = new Set(sequence?.steps.slice(0, group.step).flatMap(({ teaches }) => teaches));
  for (const id of group.alsoTaught) taught.add(id);
  for (const id of group.notYet) taught.delete(id);
  let best = 1;
  let most = 0;
  let balance = 0;
  steps.forEach(({ items }, i) => {
    for (const id of new Set(items.flatMap(({ patterns }) => patterns))) balance += taught.has(id) ? 1 : -1;
    if (balance > most) [best, most] = [i + 1, balance];
  });
  return best;
}

/**
 * Returns the step (from 1) that a group is said to have been taught last, or the last step of the text if the text has
 * become shorter.
 */
export function lastTaughtOf({ steps }: ImportedSequence, step: number): number {
  return Math.min(step, Math.max(1, steps.length));
}

function headsOf(table: PastedTable | null): string {
  return table?.columns.map(({ name }) => name).join('\t') ?? '';
}
