/** A word of the passage, and whether the group can read the word unchanged. */
export interface PlanWord {
  readonly readable: boolean;
  /** The number of the word's sentence. */
  readonly sentence: number;
}

/** A possible change, with the numbers of the words it affects. */
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
      /** A first explanation of the story word. */
      readonly meaning: string;
      readonly places: readonly number[];
    }
  | RewriteChange
  | {
      readonly kind: 'drop';
      readonly sentence: number;
      /**
       * Whether the sentence begins a paragraph or later sentences refer to it. Such a sentence is left out only if the
       * teacher allows any number of sentences to be left out.
       */
      readonly isNeeded?: boolean;
    };

/** A change that rewrites a sentence. */
export interface RewriteChange {
  readonly kind: 'rewrite';
  readonly sentence: number;
  readonly text: string;
  /** The description of the change for the teacher. */
  readonly what: string;
  readonly isSafe: boolean;
  /**
   * Whether the teacher asked for the change. Such a change is planned before all others. If the teacher asked for
   * several changes to one sentence, the first change is planned.
   */
  readonly isAskedFor?: boolean;
  /** The removed words of the sentence. */
  readonly gone: readonly number[];
  /** The number of added words, and how many of these words the group cannot read. */
  readonly comes: { readonly words: number; readonly unread: number };
  /** The texts that the change removes and inserts, by places in the whole text. */
  readonly edits: readonly { readonly from: number; readonly to: number; readonly text: string }[];
  /** The number of words in the longest sentence before and after the change. */
  readonly longest: { readonly before: number; readonly after: number };
}

/**
 * A change with the reach before and after it, in percent. The reach assumes that the changes above it in the list are
 * made.
 */
export interface PlannedChange {
  readonly change: Change;
  readonly before: number;
  readonly after: number;
}

export interface PlanOptions {
  /** The wanted reach, in percent. */
  readonly target: number;
  /** The most story words to propose. */
  readonly storyWords: number;
  /** The most sentences to leave out. The default is a fifth of the sentences, rounded up. */
  readonly dropped?: number;
  /** The most words a sentence should have. Longer sentences are split where possible. */
  readonly longest?: number | null;
}

/**
 * The kinds of change in order of preference. If two changes have the same effect, the change that leaves more of the
 * text comes first.
 */
const GENTLE: readonly Change['kind'][] = ['swap', 'story-word', 'rewrite', 'drop'];

type Outcome = { readonly change: Change; readonly running: number; readonly reads: number };

/**
 * Plans few changes that bring a passage to the wanted reach. Changes are tried in this order. Within each kind, the
 * most effective change is tried first:
 * - swaps and story words that recur
 * - shorter sentences
 * - story words that occur once
 * - sentences left out, only when nothing else helps
 * The search is greedy, so it may miss the smallest number of changes. It stops at the target, or when no change helps.
 * Then sentences that are too long are split.
 */
export function planChanges(
  words: readonly PlanWord[],
  changes: readonly Change[],
  { target, storyWords, dropped: most = mostDropped(words), longest = null }: PlanOptions,
): PlannedChange[] {
  const readable = words.map((word) => word.readable);
  const gone = words.map(() => false);
  const rewritten = new Set<number>();
  const dropped = new Set<number>();
  const left = new Set(changes);
  const planned: PlannedChange[] = [];
  const placesIn = groupBySentence(words);
  /** Words added by rewritten sentences. These words are removed again when their sentence is left out. */
  const came = new Map<number, RewriteChange['comes']>();
  let taught = 0;
  let running = words.length;
  let reads = readable.filter(Boolean).length;

  const isOpen = (i: number): boolean => !readable[i] && !gone[i];

  /** Returns the number of running and readable words that a change adds to the changes planned before. */
  function effect(change: Change): { running: number; reads: number } {
    if (change.kind === 'swap' || change.kind === 'story-word')
      return { running: 0, reads: change.places.filter(isOpen).length };
    const { sentence } = change;
    if (dropped.has(sentence) || (change.kind === 'rewrite' && rewritten.has(sentence)))
      return { running: 0, reads: 0 };
    const places = (change.kind === 'rewrite' ? change.gone : (placesIn.get(sentence) ?? [])).filter(
      (i) => !gone[i],
    );
    const comes = change.kind === 'rewrite' ? change.comes : negative(came.get(sentence));
    return {
      running: comes.words - places.length,
      reads: comes.words - comes.unread - places.filter((i) => readable[i]).length,
    };
  }

  /** Returns the tier of a change. Changes of one tier are compared together, starting with the least harmful tier. */
  function tierOf(change: Change): number {
    if (change.kind === 'drop') return 3;
    if (change.kind === 'rewrite') return 1;
    return change.kind === 'story-word' && change.places.filter(isOpen).length < 2 ? 2 : 0;
  }

  function take(change: Change): void {
    const before = percent(reads, running);
    const added = effect(change);
    running += added.running;
    reads += added.reads;
    planned.push({ change, before, after: percent(reads, running) });
    left.delete(change);
    if (change.kind === 'swap' || change.kind === 'story-word')
      for (const i of change.places) readable[i] = true;
    else if (change.kind === 'rewrite') {
      rewritten.add(change.sentence);
      came.set(change.sentence, change.comes);
      for (const i of change.gone) gone[i] = true;
    } else {
      dropped.add(change.sentence);
      for (const i of placesIn.get(change.sentence) ?? []) gone[i] = true;
    }
    if (change.kind === 'story-word') taught++;
  }

  function mayTake(change: Change, tier: number): boolean {
    if (tierOf(change) > tier) return false;
    if (change.kind === 'story-word') return taught < storyWords;
    return change.kind !== 'drop' || dropped.size < most;
  }

  /** Finds the most effective change; returns null if no change helps. */
  function findBest(tier: number): Outcome | null {
    let best: Outcome | null = null;
    for (const change of left) {
      if (!mayTake(change, tier)) continue;
      const added = effect(change);
      const now = { change, running: running + added.running, reads: reads + added.reads };
      if (now.running === 0 || percent(now.reads, now.running) <= percent(reads, running)) continue;
      if (best === null || isBetter(now, best)) best = now;
    }
    return best;
  }

  /** Returns whether a change splits a sentence that is too long without lowering the readable share of the text. */
  function partsLong(change: Change, longest: number): boolean {
    if (change.kind !== 'rewrite') return false;
    if (rewritten.has(change.sentence) || dropped.has(change.sentence)) return false;
    const { before, after } = change.longest;
    if (before <= longest || after >= before) return false;
    const added = effect(change);
    return percent(reads + added.reads, running + added.running) >= percent(reads, running);
  }

  for (const change of changes)
    if (change.kind === 'rewrite' && change.isAskedFor && !rewritten.has(change.sentence)) take(change);
  for (let tier = 0; tier <= 3 && percent(reads, running) < target; ) {
    const best = findBest(tier);
    if (best === null) tier++;
    else take(best.change);
  }
  if (longest !== null) for (const change of left) if (partsLong(change, longest)) take(change);
  return planned;
}

/** Returns the numbers of the words of each sentence. */
function groupBySentence(words: readonly PlanWord[]): Map<number, number[]> {
  const placesIn = new Map<number, number[]>();
  for (const [i, { sentence }] of words.entries()) {
    const places = placesIn.get(sentence);
    if (places) places.push(i);
    else placesIn.set(sentence, [i]);
  }
  return placesIn;
}

function negative(comes: RewriteChange['comes'] | undefined): RewriteChange['comes'] {
  return { words: -(comes?.words ?? 0), unread: -(comes?.unread ?? 0) };
}

/** Returns a fifth of the number of sentences, rounded up. */
function mostDropped(words: readonly PlanWord[]): number {
  return Math.ceil(new Set(words.map(({ sentence }) => sentence)).size / 5);
}

/**
 * The distance of a text from its target. A near text needs at most ten changes. A text is too far when the planned
 * changes do not reach the target.
 */
export type Distance = 'near' | 'some-way' | 'too-far';

/**
 * The distance of a text from its target, and the number of its sentences that all planned changes keep, rewrite or
 * leave out.
 */
export interface HowFar {
  readonly distance: Distance;
  /** The number of words that the group cannot read after the planned changes. */
  readonly left: number;
  /** Counts of the sentences with words: all, unchanged, rewritten, and left out. */
  readonly sentences: number;
  readonly same: number;
  readonly shortened: number;
  readonly dropped: number;
}

export function describeDistance(
  words: readonly PlanWord[],
  planned: readonly PlannedChange[],
  target: number,
): HowFar {
  const made = new Set<number>();
  const touched = new Set<number>();
  const dropped = new Set<number>();
  const shortened = new Set<number>();
  let came = 0;
  for (const { change } of planned) {
    if (change.kind === 'drop') dropped.add(change.sentence);
    else if (change.kind === 'rewrite') {
      shortened.add(change.sentence);
      came += change.comes.unread;
      for (const i of change.gone) made.add(i);
    } else {
      for (const i of change.places) made.add(i);
      if (change.kind === 'swap') for (const i of change.places) touched.add(words[i]!.sentence);
    }
  }
  const left = words.filter(
    ({ readable, sentence }, i) => !readable && !made.has(i) && !dropped.has(sentence),
  );
  for (const { sentence } of left) touched.add(sentence);
  const all = new Set(words.map(({ sentence }) => sentence));
  const reads = words.filter(({ readable }) => readable).length;
  const after = planned.at(-1)?.after ?? percent(reads, words.length);
  return {
    distance: after < target ? 'too-far' : planned.length > NEAR ? 'some-way' : 'near',
    left: left.length + came,
    sentences: all.size,
    same: [...all].filter((n) => !touched.has(n) && !dropped.has(n) && !shortened.has(n)).length,
    shortened: shortened.size,
    dropped: dropped.size,
  };
}

const NEAR = 10;

function isBetter(a: Outcome, b: Outcome): boolean {
  const gain = percent(a.reads, a.running) - percent(b.reads, b.running);
  if (gain !== 0) return gain > 0;
  return GENTLE.indexOf(a.change.kind) < GENTLE.indexOf(b.change.kind);
}

function percent(reads: number, running: number): number {
  return running === 0 ? 100 : (reads / running) * 100;
}
