import type { LessonInput } from './lesson-input.ts';
import type { LessonBlock, LessonPart, PartMaker } from './lesson-part.ts';
import { createPicker } from './picker.ts';

/** What the teacher decided about one part. */
export interface PartPlan {
  /** Chance begins here; another seed gives other words. */
  readonly seed: number;
  readonly out: boolean;
  /** By the id of a choice. */
  readonly chosen: Readonly<Record<string, string>>;
  /** The part as it is to stay, whatever else changes; null while it is made anew each time. */
  readonly pinned: readonly LessonBlock[] | null;
}

/** A lesson sheet as it is kept: the number it is made from, and what was decided about its parts. */
export interface LessonPlan {
  readonly seed: number;
  readonly parts: Readonly<Record<string, PartPlan>>;
}

/** A part as it stands on the sheet. */
export interface PlannedPart extends LessonPart {
  readonly id: string;
  readonly title: string;
  readonly plan: PartPlan;
}

/** A fresh plan; the same number gives the same sheet. */
export function startPlan(seed: number): LessonPlan {
  return { seed, parts: {} };
}

/** What is decided about a part; as usual where nothing is. */
export function planOf({ seed, parts }: LessonPlan, id: string): PartPlan {
  return Object.hasOwn(parts, id) ? parts[id]! : { seed, out: false, chosen: {}, pinned: null };
}

/** The plan with something decided about a part. */
export function decide(plan: LessonPlan, id: string, change: Partial<PartPlan>): LessonPlan {
  return { ...plan, parts: { ...plan.parts, [id]: { ...planOf(plan, id), ...change } } };
}

/** A new sheet: another number for every part that is not pinned; choices and what is left out stay. */
export function renew(plan: LessonPlan, seed: number): LessonPlan {
  const parts = Object.entries(plan.parts).map(([id, part]) => [id, { ...part, seed }] as const);
  return { seed, parts: Object.fromEntries(parts) };
}

/** Makes the part, or gives it as it was pinned. */
export function makePart(maker: PartMaker, plan: LessonPlan, input: LessonInput): PlannedPart {
  const { id, title } = maker;
  const own = planOf(plan, id);
  if (own.pinned) return { id, title, plan: own, blocks: own.pinned, says: null };
  const choices = maker.choices(input);
  const chosen = (choice: string): string => {
    const { options, usual } = choices.find((each) => each.id === choice) ?? { options: [], usual: '' };
    const value = Object.hasOwn(own.chosen, choice) ? own.chosen[choice]! : usual;
    return options.some((option) => option.value === value) ? value : usual;
  };
  const part = maker.make(input, chosen, createPicker(own.seed, id));
  return { id, title, plan: own, ...part };
}

/** Reads a plan that was kept, as far as it is one: any value may be given; null where it is none. */
export function parsePlan(kept: unknown): LessonPlan | null {
  if (!isRecord(kept) || !Number.isSafeInteger(kept.seed)) return null;
  const seed = kept.seed as number;
  const parts = Object.entries(isRecord(kept.parts) ? kept.parts : {}).flatMap(([id, part]) => {
    if (!isRecord(part)) return [];
    const chosen = Object.entries(isRecord(part.chosen) ? part.chosen : {}).filter(
      (entry): entry is [string, string] => typeof entry[1] === 'string',
    );
    const read: PartPlan = {
      seed: Number.isSafeInteger(part.seed) ? (part.seed as number) : seed,
      out: part.out === true,
      chosen: Object.fromEntries(chosen),
      pinned: Array.isArray(part.pinned) && part.pinned.every(isBlock) ? part.pinned : null,
    };
    return [[id, read] as const];
  });
  return { seed, parts: Object.fromEntries(parts) };
}

function isBlock(value: unknown): value is LessonBlock {
  if (!isRecord(value)) return false;
  const { id, title, layout, columns, rows, note } = value;
  return (
    typeof id === 'string' &&
    typeof title === 'string' &&
    isOneOf(layout, ['table', 'words', 'lines', 'chain']) &&
    isListOf(
      columns,
      (column) =>
        isRecord(column) &&
        typeof column.head === 'string' &&
        isOneOf(column.shows, ['both', 'key', 'blank']),
    ) &&
    columns.length > 0 &&
    isListOf(rows, (row) => isListOf(row, (cell) => typeof cell === 'string')) &&
    (note === undefined || typeof note === 'string')
  );
}

function isOneOf(value: unknown, names: readonly string[]): boolean {
  return typeof value === 'string' && names.includes(value);
}

function isListOf(value: unknown, holds: (item: unknown) => boolean): value is readonly unknown[] {
  return Array.isArray(value) && value.every(holds);
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
