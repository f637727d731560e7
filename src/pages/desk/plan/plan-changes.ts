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
  /** Most sentences that are left out; a fifth of them, rounded up, when it is not given. */
  readonly dropped?: number;
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
  { target, storyWords, dropped: most = mostDropped(words) }: PlanOptions,
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
      if (change.kind === 'drop' && dropped.size >= most) continue;
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

/** A fifth of the sentences, rounded up. */
function mostDropped(words: readonly PlanWord[]): number {
  return Math.ceil(new Set(words.map(({ sentence }) => sentence)).size / 5);
}

/** How far a text is from what is wanted: near needs at most ten changes, and too far is not reached by any that are planned. */
export type Distance = 'near' | 'some-way' | 'too-far';

/** How far the text is, and how many words stay beyond the group when all planned changes are made. */
export function describeDistance(
  words: readonly PlanWord[],
  planned: readonly PlannedChange[],
  target: number,
): { readonly distance: Distance; readonly left: number } {
  const made = new Set(planned.flatMap(({ change }) => (change.kind === 'drop' ? [] : change.places)));
  const gone = new Set(planned.flatMap(({ change }) => (change.kind === 'drop' ? [change.sentence] : [])));
  const left = words.filter(({ readable, sentence }, i) => !readable && !made.has(i) && !gone.has(sentence));
  const reads = words.filter(({ readable }) => readable).length;
  const after = planned.at(-1)?.after ?? percent(reads, words.length);
  const distance = after < target ? 'too-far' : planned.length > NEAR ? 'some-way' : 'near';
  return { distance, left: left.length };
}

const NEAR = 10;

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
