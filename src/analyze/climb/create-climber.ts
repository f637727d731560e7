import { speechOf } from '../accent/speech.ts';
import { catalogue } from '../catalogue/catalogue.ts';
import { splitKey } from '../homographs/word-key.ts';
import { type CompiledGroup, compileGroup } from '../standing/compile-group.ts';
import type { FineRows, Needs } from '../standing/fine-needs.ts';
import { isInitialism } from '../standing/is-initialism.ts';
import { isName } from '../standing/is-name.ts';
import type { WordAnalyzer } from '../standing/judge.ts';
import { hasBit } from '../standing/pattern-bits.ts';
import { remember } from '../standing/remember.ts';
import type { WordWeigher } from '../standing/remember-words.ts';
import { weighWord } from '../standing/weigh-word.ts';
import type { Group, MadeOf, PatternId, Sequence, WordKey } from '../types.ts';

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
  words: WordAnalyzer | WordWeigher,
  group: Group,
  sequence: Sequence | null,
): Climber {
  const steps = sequence?.steps.length ?? 0;
  const path = findPath(group, sequence, steps);
  // Who remembers words has done most of the work; remembering once more would take longer than the rest of it.
  const speech = speechOf(group);
  if ('weigh' in words) {
    const spoken = words.speaking(speech);
    return Object.assign((key: WordKey) => climbWord(key, spoken, path), { steps });
  }
  const spoken = words.speaking?.(speech) ?? words;
  const weigher = { weigh: (key: WordKey) => weighWord(spoken.analyze(key)) };
  return Object.assign(
    remember((key: WordKey) => climbWord(key, weigher, path)),
    { steps },
  );
}

/** The first step of everything, and what no step changes. */
interface Path extends Pick<CompiledGroup, 'names' | 'smallNames' | 'skip'> {
  readonly patterns: ReadonlyMap<PatternId, number>;
  /** Null where none counts at any step. */
  readonly fineRows: FineRows | null;
  /** Lower case. */
  readonly bySight: ReadonlyMap<string, number>;
}

/** Compiles the group at every step, so that whatever its options bring along is found where it comes. */
function findPath(group: Group, sequence: Sequence | null, steps: number): Path {
  const patterns = new Map<PatternId, number>();
  const bySight = new Map<string, number>();
  for (let step = 0; ; step++) {
    const compiled = compileGroup({ ...group, step }, sequence);
    for (const { id } of catalogue) {
      if (!patterns.has(id) && hasBit(compiled.taught, id)) patterns.set(id, step);
    }
    for (const word of compiled.bySight) if (!bySight.has(word)) bySight.set(word, step);
    if (step === steps) {
      const { names, smallNames, skip, fineRows } = compiled;
      return { patterns, fineRows, bySight, names, smallNames, skip };
    }
  }
}

/** As the judge decides, with steps in place of yes and no: "and" is the later one, "or" the earlier. */
function climbWord(key: WordKey, words: Pick<WordWeigher, 'weigh'>, path: Path): WordClimb {
  const { word: shown, capital } = splitKey(key);
  const word = shown.toLowerCase();
  if (path.skip.has(word)) return { reads: null, counts: null };
  const weighed = words.weigh(key);
  if (capital === 'all' && !path.names.has(word) && isInitialism(word, weighed.usage))
    return { reads: null, counts: null };
  const bySight = path.bySight.get(word) ?? Infinity;
  if (bySight === 0) return { reads: 0, counts: 0 };

  let anyReading = Infinity;
  let everyReading = 0;
  let byBase = Infinity;
  for (const reading of weighed.readings) {
    byBase = Math.min(byBase, stepBesideSight(reading, path));
    if (reading.source === 'none') continue;
    const step = lastStep(reading, path);
    if (reading.source !== 'guess') anyReading = Math.min(anyReading, step);
    everyReading = Math.max(everyReading, step);
  }
  const decoded = weighed.homograph ? Math.max(anyReading, everyReading) : anyReading;
  const reads = Math.min(bySight, decoded, byBase);
  const counts = isName(key, weighed, path) ? Math.min(reads, anyReading) : 0;
  return { reads: orNever(reads), counts: orNever(counts) };
}

/** With want by sight, wants comes with its ending; with some and one, someone comes with compounds. */
function stepBesideSight(reading: Made, path: Path): number {
  const first = firstBySight(reading, path);
  return first === Infinity ? first : Math.max(first, stepOfParts(reading, path));
}

type Made = { readonly madeOf?: MadeOf | null };

/** When the first of its parts is known by sight. */
function firstBySight({ madeOf }: Made, path: Path): number {
  let first = Infinity;
  for (const part of madeOf?.parts ?? [])
    first = Math.min(first, path.bySight.get(part.word) ?? Infinity, firstBySight(part, path));
  return first;
}

function stepOfParts({ madeOf }: Made, path: Path): number {
  if (!madeOf) return Infinity;
  let step = lastStep({ requires: madeOf.joint, fine: madeOf.fineJoint ?? null }, path);
  for (const part of madeOf.parts) {
    const bySight = path.bySight.get(part.word) ?? Infinity;
    step = Math.max(step, Math.min(bySight, stepOfParts(part, path), lastStep(part, path)));
  }
  return step;
}

function lastStep({ requires, fine }: Needs, { patterns, fineRows }: Path): number {
  let last = 0;
  for (const id of fine && fineRows ? fine.rest : requires)
    last = Math.max(last, patterns.get(id) ?? Infinity);
  if (!fine || !fineRows) return last;
  for (const { row, of } of fine.finer) {
    let step = patterns.get(row) ?? Infinity;
    if (!fineRows.held.has(row))
      step = Math.min(step, Math.max(0, ...of.map((id) => patterns.get(id) ?? Infinity)));
    last = Math.max(last, step);
  }
  return last;
}

function orNever(step: number): number | null {
  return step === Infinity ? null : step;
}
