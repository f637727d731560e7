import { speechOf } from '../accent/speech.ts';
import { catalogue } from '../catalogue/catalogue.ts';
import { type CompiledGroup, compileGroup } from '../standing/compile-group.ts';
import type { WordSource } from '../standing/judge.ts';
import { hasRow } from '../standing/pattern-bits.ts';
import { remember } from '../standing/remember.ts';
import type { Group, Sequence, WordKey } from '../types.ts';
import type { WordWeigher } from './remember-words.ts';
import { NO_ROW, needsOfWord, type RowNeeds, type RowParts, type WordNeeds } from './word-needs.ts';

/** When a group comes to a word, as steps of its sequence: 0 is before the first, null never. */
export interface WordClimb {
  /** From this step on the group can read the word (reads, fresh or by-sight). */
  readonly reads: number | null;
  /**
   * From this step on it is a running word: 0 for most, null for what the group skips. A name is none before it
   * can be read (or, where two words are spelt alike, before one of them can: then it is unsure).
   */
  readonly counts: number | null;
}

/** Tells of any word key when a group comes to it; remembers what took long to find. */
export interface Climber {
  (key: WordKey): WordClimb;
  /** How many steps the group's sequence has; 0 without one. */
  readonly steps: number;
}

/**
 * Follows one group through all steps of its sequence at once, everything else about it as it is: the word is read from
 * the last of the first steps of what it requires. The same as judging at every step (`createJudge`),
 * because a group that knows more never reads less. The step the group is at does not matter.
 */
export function createClimber(
  words: WordSource | WordWeigher,
  group: Group,
  sequence: Sequence | null,
): Climber {
  const steps = sequence?.steps.length ?? 0;
  const path = findPath(group, sequence, steps);
  const speech = speechOf(group);
  // Who remembers words has done most of the work; remembering once more would take longer than the rest of it.
  if ('weigh' in words) {
    const spoken = words.speaking(speech);
    return Object.assign((key: WordKey) => climbWord(spoken.weigh(key), path), { steps });
  }
  const spoken = words.speaking?.(speech) ?? words;
  return Object.assign(
    remember((key: WordKey) => climbWord(needsOfWord(key, spoken.analyze(key)), path)),
    { steps },
  );
}

/** Later than any step. */
const NEVER = 0xffff;

/** The first step of everything, and what no step changes. */
interface Path extends Pick<CompiledGroup, 'names' | 'smallNames' | 'skip'> {
  /** By the row of the pattern; {@link NEVER} for one that no step teaches. */
  readonly patterns: Uint16Array;
  /** By its row whether a finer pattern counts by itself; null where none counts at any step. */
  readonly held: Uint8Array | null;
  /** Lower case. */
  readonly bySight: ReadonlyMap<string, number>;
}

/** Compiles the group at every step, so that whatever its options bring along is found where it comes. */
function findPath(group: Group, sequence: Sequence | null, steps: number): Path {
  const patterns = new Uint16Array(NO_ROW + 1).fill(NEVER);
  const bySight = new Map<string, number>();
  for (let step = 0; ; step++) {
    const compiled = compileGroup({ ...group, step }, sequence);
    for (let row = 0; row < NO_ROW; row++) {
      if (patterns[row] === NEVER && hasRow(compiled.taught, row)) patterns[row] = step;
    }
    for (const word of compiled.bySight) if (!bySight.has(word)) bySight.set(word, step);
    if (step === steps) {
      const { names, smallNames, skip, fineRows } = compiled;
      const held = fineRows && Uint8Array.from(catalogue, ({ id }) => Number(fineRows.held.has(id)));
      return { patterns, held, bySight, names, smallNames, skip };
    }
  }
}

/** As the judge decides, with steps in place of yes and no: "and" is the later one, "or" the earlier. */
function climbWord(needs: WordNeeds, path: Path): WordClimb {
  const { word } = needs;
  if (path.skip.has(word) || (needs.isInitialism && !path.names.has(word)))
    return { reads: null, counts: null };
  const bySight = path.bySight.get(word) ?? NEVER;
  if (bySight === 0) return { reads: 0, counts: 0 };

  let anyReading = NEVER;
  let everyReading = 0;
  let byBase = NEVER;
  for (const reading of needs.readings) {
    if (reading.madeOf) byBase = Math.min(byBase, stepBesideSight(reading.madeOf, path));
    if (reading.source === 'none') continue;
    const step = lastStep(reading, path);
    if (reading.source !== 'guess') anyReading = Math.min(anyReading, step);
    everyReading = Math.max(everyReading, step);
  }
  const decoded = needs.isHomograph ? Math.max(anyReading, everyReading) : anyReading;
  const reads = Math.min(bySight, decoded, byBase);
  const counts = isNameOnPath(needs, path) ? orNever(Math.min(reads, anyReading)) : 0;
  return { reads: orNever(reads), counts };
}

/** Whether a word is a name in its place, by the names that the group lists. */
function isNameOnPath(
  { word, owner, isListedName, isUnlistedName }: WordNeeds,
  { names, smallNames }: Path,
): boolean {
  if (smallNames.has(word) || smallNames.has(owner)) return true;
  const isListed = isListedName !== isUnlistedName && (names.has(word) || names.has(owner));
  return isListed ? isListedName : isUnlistedName;
}

/** With want by sight, wants comes with its ending; with some and one, someone comes with compounds. */
function stepBesideSight(made: RowParts, path: Path): number {
  const first = firstBySight(made, path);
  return first === NEVER ? first : Math.max(first, stepOfParts(made, path));
}

/** When the first of its parts is known by sight. */
function firstBySight({ parts }: RowParts, path: Path): number {
  let first = NEVER;
  for (const part of parts) {
    first = Math.min(first, path.bySight.get(part.word) ?? NEVER);
    if (part.madeOf) first = Math.min(first, firstBySight(part.madeOf, path));
  }
  return first;
}

function stepOfParts({ parts, joint }: RowParts, path: Path): number {
  let step = lastStep(joint, path);
  for (const part of parts) {
    const bySight = path.bySight.get(part.word) ?? NEVER;
    const byParts = part.madeOf ? stepOfParts(part.madeOf, path) : NEVER;
    step = Math.max(step, Math.min(bySight, byParts, lastStep(part, path)));
  }
  return step;
}

function lastStep({ requires, fine }: RowNeeds, { patterns, held }: Path): number {
  if (!fine || !held) return lastOf(requires, patterns);
  let last = lastOf(fine.rest, patterns);
  for (const { row, of } of fine.finer) {
    let step = patterns[row]!;
    if (!held[row]) step = Math.min(step, lastOf(of, patterns));
    last = Math.max(last, step);
  }
  return last;
}

function lastOf(rows: readonly number[], patterns: Uint16Array): number {
  let last = 0;
  for (const row of rows) last = Math.max(last, patterns[row]!);
  return last;
}

function orNever(step: number): number | null {
  return step === NEVER ? null : step;
}
