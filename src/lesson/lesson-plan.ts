import type { LessonInput } from './lesson-input.ts';
import { LAYOUTS, type LessonBlock, type LessonPart, type PartMaker } from './lesson-part.ts';
import { createPicker } from './picker.ts';
import { withTypographicMarks } from './typographic-marks.ts';

/** The teacher's decisions about one part. */
export interface PartPlan {
  /** The seed of the random choices. Another seed gives other words. */
  readonly seed: number;
  readonly out: boolean;
  /** The chosen values, by the id of the choice. */
  readonly chosen: Readonly<Record<string, string>>;
  /** The part as it must stay, regardless of other changes; null while the part is made anew each time. */
  readonly pinned: readonly LessonBlock[] | null;
  /** The minutes of the lesson that the part may take; left out where nobody planned them. */
  readonly minutes?: number;
}

/** A lesson sheet as it is stored: the seed and the decisions about its parts. */
export interface LessonPlan {
  readonly seed: number;
  readonly parts: Readonly<Record<string, PartPlan>>;
  /**
   * The ids of parts in the order the teacher set; left out where the order is the usual one. A part that is not named
   * keeps its usual neighbour.
   */
  readonly order?: readonly string[];
}

/** The fields that name a part in a plan. */
export type PartName = Pick<PartMaker, 'id' | 'extra'>;

/** A part as it is on the sheet. */
export interface PlannedPart extends LessonPart {
  readonly id: string;
  readonly title: string;
  readonly plan: PartPlan;
}

/** Returns a new plan. The same seed gives the same sheet. */
export function startPlan(seed: number): LessonPlan {
  return { seed, parts: {} };
}

/**
 * Returns the decisions about a part, or the usual decisions where there are none. Without decisions, an extra part is
 * not on the sheet.
 */
export function planOf({ seed, parts }: LessonPlan, { id, extra }: PartName): PartPlan {
  return Object.hasOwn(parts, id) ? parts[id]! : { seed, out: extra === true, chosen: {}, pinned: null };
}

/** Returns the plan with a decision about a part. */
export function decide(plan: LessonPlan, part: PartName, change: Partial<PartPlan>): LessonPlan {
  return { ...plan, parts: { ...plan.parts, [part.id]: { ...planOf(plan, part), ...change } } };
}

/**
 * Returns the parts in the order of the plan. A part that the order does not name comes after the part it usually
 * follows.
 */
export function inOrder<T extends PartName>(plan: LessonPlan, makers: readonly T[]): T[] {
  const { order } = plan;
  if (!order) return [...makers];
  const placeOf = new Map(order.map((id, at) => [id, at]));
  let last = -1;
  const placed = makers.map((maker, i) => {
    last = placeOf.get(maker.id) ?? last;
    return { maker, at: last, i, named: placeOf.has(maker.id) };
  });
  return placed
    .sort((a, b) => a.at - b.at || Number(b.named) - Number(a.named) || a.i - b.i)
    .map(({ maker }) => maker);
}

/** Returns the plan with a part moved up or down by a number of places. */
export function movePart(plan: LessonPlan, makers: readonly PartName[], id: string, by: number): LessonPlan {
  const ids = inOrder(plan, makers).map((maker) => maker.id);
  const from = ids.indexOf(id);
  const to = Math.max(0, Math.min(ids.length - 1, from + by));
  if (from === -1 || from === to) return plan;
  return { ...plan, order: ids.toSpliced(from, 1).toSpliced(to, 0, id) };
}

/**
 * Returns the plan of a new sheet. Every part that is not pinned is made from the new seed. The choices stay, and the
 * parts left out stay out.
 */
export function renew(plan: LessonPlan, seed: number): LessonPlan {
  const parts = Object.entries(plan.parts).map(([id, part]) => [id, { ...part, seed }] as const);
  return { ...plan, seed, parts: Object.fromEntries(parts) };
}

/** Makes all parts in their order. The parts that are made from the sheet are made last. */
export function makeSheet(
  makers: readonly PartMaker[],
  plan: LessonPlan,
  input: LessonInput,
): { readonly maker: PartMaker; readonly part: PlannedPart }[] {
  const ordered = inOrder(plan, makers);
  const made = new Map<PartMaker, PlannedPart>();
  for (const maker of ordered) if (!maker.fromSheet) made.set(maker, makePart(maker, plan, input));
  const sheet = [...made.values()];
  for (const maker of ordered) if (maker.fromSheet) made.set(maker, makePart(maker, plan, input, sheet));
  return ordered.map((maker) => ({ maker, part: made.get(maker)! }));
}

/** Makes a part, or returns its pinned blocks. Makes nothing for a part that is not on the sheet. */
export function makePart(
  maker: PartMaker,
  plan: LessonPlan,
  input: LessonInput,
  sheet: readonly LessonPart[] = [],
): PlannedPart {
  const { id, title } = maker;
  const own = planOf(plan, maker);
  if (own.pinned) return { id, title, plan: own, blocks: own.pinned, says: null };
  if (own.out) return { id, title, plan: own, blocks: [], says: null };
  const choices = maker.choices(input);
  const chosen = (choice: string): string => {
    const { options, usual } = choices.find((each) => each.id === choice) ?? { options: [], usual: '' };
    const value = Object.hasOwn(own.chosen, choice) ? own.chosen[choice]! : usual;
    return options.some((option) => option.value === value) ? value : usual;
  };
  const part = maker.make(input, chosen, createPicker(own.seed, id), sheet);
  return { id, title, plan: own, ...part, blocks: part.blocks.map(withTypographicMarks) };
}

/** Reads a stored plan as far as it is valid. Any value may be given. Returns null where the value is no plan. */
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
      ...(isMinutes(part.minutes) && { minutes: part.minutes }),
    };
    return [[id, read] as const];
  });
  return {
    seed,
    parts: Object.fromEntries(parts),
    ...(isListOf(kept.order, (id) => typeof id === 'string') && { order: kept.order as string[] }),
  };
}

/** Whether a value is a number of minutes that a part of a lesson may take. */
export function isMinutes(value: unknown): value is number {
  return Number.isSafeInteger(value) && (value as number) > 0 && (value as number) <= 120;
}

function isBlock(value: unknown): value is LessonBlock {
  if (!isRecord(value)) return false;
  const { id, title, layout, columns, rows, note } = value;
  return (
    typeof id === 'string' &&
    typeof title === 'string' &&
    isOneOf(layout, LAYOUTS) &&
    isListOf(
      columns,
      (column) =>
        isRecord(column) &&
        typeof column.head === 'string' &&
        isOneOf(column.shows, ['both', 'key', 'blank', 'free']),
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

/** Whether a stored value has named fields, regardless of their content. */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
