import { speechOf } from '../accent/speech.ts';
import { catalogue } from '../catalogue/catalogue.ts';
import { type CompiledGroup, compileGroup } from '../standing/compile-group.ts';
import type { WordSource } from '../standing/judge.ts';
import { hasRow } from '../standing/pattern-bits.ts';
import { remember } from '../standing/remember.ts';
import type { Group, Sequence, WordKey } from '../types.ts';
import type { WordWeigher } from './remember-words.ts';
import { NO_ROW, needsOfWord, type RowNeeds, type RowParts, type WordNeeds } from './word-needs.ts';

/**
 * The steps of the sequence at which a group can first read a word and at which the word first counts. 0 means before
 * the first step, and null means never.
 */
export interface WordClimb {
  /** The first step at which the group can read the word (as reads, fresh or by-sight). */
  readonly reads: number | null;
  /**
   * The first step at which the word counts as a running word: 0 for most words, null for words the group skips. A name
   * counts once it can be read. If two words have its spelling, the name counts once either can be read, and its
   * standing is then unsure.
   */
  readonly counts: number | null;
}

/** Returns the steps of a word key for a group. Slow results are cached. */
export interface Climber {
  (key: WordKey): WordClimb;
  /** Number of steps in the group's sequence; 0 without a sequence. */
  readonly steps: number;
}

/** A climber that also finds words of a list. */
export interface ListClimber extends Climber {
  /** Returns the steps of a word of a list to which words are only added, by its place in the list. */
  at(keys: readonly WordKey[], place: number): WordClimb;
}

/**
 * Follows one group through all steps of its sequence at once, with everything else about the group unchanged. Each
 * pattern that a word requires has a first step, and the word can be read from the last of these steps. The result is
 * the same as judging at every step (`createJudge`), because a group that knows more never reads less. The current step
 * of the group makes no difference.
 */
export function createClimber(
  words: WordSource | WordWeigher,
  group: Group,
  sequence: Sequence | null,
): ListClimber {
  const steps = sequence?.steps.length ?? 0;
  const path = findPath(group, sequence, steps);
  const speech = speechOf(group);
  // An analyser with a cache of words has already done most of the work. A second cache here would take longer than the
  // remaining work.
  if ('weigh' in words) {
    const spoken = words.speaking(speech);
    return Object.assign((key: WordKey) => climbWord(spoken.weigh(key), path), {
      at: (keys: readonly WordKey[], place: number) => climbWord(spoken.weighAt(keys, place), path),
      steps,
    });
  }
  const spoken = words.speaking?.(speech) ?? words;
  const climb = remember((key: WordKey) => climbWord(needsOfWord(key, spoken.analyze(key)), path));
  return Object.assign(climb, {
    at: (keys: readonly WordKey[], place: number) => climb(keys[place]!),
    steps,
  });
}

/** The number that means “never”. It is greater than the number of any step. */
const NEVER = 0xffff;

/** The first step of every pattern and by-sight word, and the data that no step changes. */
interface Path extends Pick<CompiledGroup, 'names' | 'smallNames' | 'skip'> {
  /**
   * The first step of each pattern, indexed by the row of the pattern. {@link NEVER} for a pattern that no step
   * teaches.
   */
  readonly patterns: Uint16Array;
  /** Whether each finer pattern counts by itself, indexed by its row. Null if no finer pattern counts at any step. */
  readonly held: Uint8Array | null;
  /** By-sight words in lower case, with their first step. */
  readonly bySight: ReadonlyMap<string, number>;
}

/** Compiles the group at every step, to find the step at which each pattern or word from its options first counts. */
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

/**
 * Follows the same rules as the judge, with steps in place of yes and no: "and" becomes the later step, "or" the
 * earlier.
 */
function climbWord(needs: WordNeeds, path: Path): WordClimb {
  const { word } = needs;
  if (path.skip.has(word) || (needs.isInitialism && !path.names.has(word)))
    return { reads: null, counts: null };
  const bySight = path.bySight.get(word) ?? NEVER;
  if (bySight === 0) return { reads: 0, counts: 0 };

  let anyReading = NEVER;
  let everyReading = 0;
  for (const reading of needs.readings) {
    if (reading.source === 'none') continue;
    const step = lastStep(reading, path);
    if (reading.source !== 'guess') anyReading = Math.min(anyReading, step);
    everyReading = Math.max(everyReading, step);
  }
  const decoded = needs.isHomograph ? Math.max(anyReading, everyReading) : anyReading;
  let reads = Math.min(bySight, decoded);
  for (const { madeOf } of needs.readings) if (madeOf) reads = firstBesideSight(madeOf, path, reads);
  const counts = isNameOnPath(needs, path) ? orNever(Math.min(reads, anyReading)) : 0;
  return { reads: orNever(reads), counts };
}

/** Returns whether a word is a name in its place, according to the names that the group lists. */
function isNameOnPath(
  { word, owner, isListedName, isUnlistedName }: WordNeeds,
  { names, smallNames }: Path,
): boolean {
  if (smallNames.has(word) || smallNames.has(owner)) return true;
  const isListed = isListedName !== isUnlistedName && (names.has(word) || names.has(owner));
  return isListed ? isListedName : isUnlistedName;
}

/**
 * Returns the step at which a word can be read through a part known by sight, or `reads` if that is no later. If want is
 * known by sight, wants can be read once its ending is taught. If some and one are known by sight, someone can be read
 * once compounds are taught.
 */
function firstBesideSight(made: RowParts, path: Path, reads: number): number {
  // Most words end here, before their parts are looked up: what joins the parts is taught no earlier than `reads`.
  if (lastStep(made.joint, path) >= reads) return reads;
  const first = firstBySight(made, path);
  return first >= reads ? reads : Math.min(reads, Math.max(first, stepOfParts(made, path)));
}

/** Returns the first step at which any part of the reading is known by sight. */
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
