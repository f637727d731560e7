/** One word of the passage, and whether the group reads it as it is. */
export interface PlanWord {
  readonly readable: boolean;
  /** Number of its sentence. */
  readonly sentence: number;
}

/** A change that could be made, by the numbers of the words it touches. */
export type Change =
  | {
      readonly kind: 'swap';
      readonly word: string;
      readonly swap: string;
      readonly places: readonly number[];
    }
  | {
      readonly kind: 'story-word';
      readonly word: string;
      /** What it may be explained by, to begin with. */
      readonly meaning: string;
      readonly places: readonly number[];
    }
  | { readonly kind: 'drop'; readonly sentence: number };

/** A change with the reach before and after it, in percent, when those above it in the list are made. */
export interface PlannedChange {
  readonly change: Change;
  readonly before: number;
  readonly after: number;
}

export interface PlanOptions {
  /** Reach that is wanted, in percent. */
  readonly target: number;
  /** Most story words that are proposed. */
  readonly storyWords: number;
}

/** Of two changes that do as much, the one that leaves more of the text comes first. */
const GENTLE: readonly Change['kind'][] = ['swap', 'story-word', 'drop'];

/**
 * The fewest changes found that bring a passage to a reach, the one that does most first; sentences are left out only when
 * no swap or story word helps any more. A greedy search, which is not sure to find the very fewest. Stops at the target,
 * or when nothing helps.
 */
export function planChanges(
  words: readonly PlanWord[],
  changes: readonly Change[],
  { target, storyWords }: PlanOptions,
): PlannedChange[] {
  const readable = words.map((word) => word.readable);
  const dropped = new Set<number>();
  const left = new Set(changes);
  const planned: PlannedChange[] = [];
  const placesIn = new Map<number, number[]>();
  for (const [i, { sentence }] of words.entries()) {
    const places = placesIn.get(sentence);
    if (places) places.push(i);
    else placesIn.set(sentence, [i]);
  }
  let taught = 0;
  let running = words.length;
  let reads = readable.filter(Boolean).length;

  /** How many running and readable words a change adds, with what was planned before. */
  function effect(change: Change): { running: number; reads: number } {
    if (change.kind !== 'drop') {
      const opened = change.places.filter((i) => !readable[i] && !dropped.has(words[i]!.sentence));
      return { running: 0, reads: opened.length };
    }
    const places = dropped.has(change.sentence) ? [] : (placesIn.get(change.sentence) ?? []);
    return { running: -places.length, reads: -places.filter((i) => readable[i]).length };
  }

  while (percent(reads, running) < target) {
    let best: { change: Change; running: number; reads: number } | null = null;
    for (const change of left) {
      if (change.kind === 'story-word' && taught >= storyWords) continue;
      const added = effect(change);
      const now = { change, running: running + added.running, reads: reads + added.reads };
      if (now.running === 0 || percent(now.reads, now.running) <= percent(reads, running)) continue;
      if (best === null || isBetter(now, best)) best = now;
    }
    if (best === null) break;
    const { change } = best;
    planned.push({ change, before: percent(reads, running), after: percent(best.reads, best.running) });
    left.delete(change);
    if (change.kind === 'drop') dropped.add(change.sentence);
    else for (const i of change.places) readable[i] = true;
    if (change.kind === 'story-word') taught++;
    ({ running, reads } = best);
  }
  return planned;
}

type Outcome = { readonly change: Change; readonly running: number; readonly reads: number };

function isBetter(a: Outcome, b: Outcome): boolean {
  if ((a.change.kind === 'drop') !== (b.change.kind === 'drop')) return b.change.kind === 'drop';
  const gain = percent(a.reads, a.running) - percent(b.reads, b.running);
  if (gain !== 0) return gain > 0;
  return GENTLE.indexOf(a.change.kind) < GENTLE.indexOf(b.change.kind);
}

function percent(reads: number, running: number): number {
  return running === 0 ? 100 : (reads / running) * 100;
}
