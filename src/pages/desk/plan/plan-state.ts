import { READING_LEVELS } from '../../../analyze/index.ts';
import type { StoryWord } from '../../../passage/kept/passage.ts';
import type { TextEdit } from '../passage-editor.ts';
import { type Change, type PlannedChange, planChanges } from './plan-changes.ts';
import type { PossibleChanges } from './possible-changes.ts';

/** The settings for a plan, the changes proposed for it, and the ticked changes. */
export interface PlanState {
  /** The wanted reach, in percent. */
  readonly target: number;
  /** The most story words to propose. */
  readonly mostStoryWords: number;
  /** The most words a sentence should have; null for any number. */
  readonly longest: number | null;
  /** Whether any number of sentences may be left out. Otherwise at most a fifth of the sentences may be left out. */
  readonly dropsMore: boolean;
  readonly proposal: Proposal | null;
  readonly ticked: ReadonlySet<Change>;
  /** The reason why nothing could be proposed. */
  readonly fault: string | null;
}

export interface Proposal {
  readonly possible: PossibleChanges;
  readonly planned: readonly PlannedChange[];
  /** The passage for which the proposal was made. */
  readonly text: string;
}

export const NO_PLAN: PlanState = {
  target: READING_LEVELS.withHelp,
  mostStoryWords: 3,
  longest: null,
  dropsMore: false,
  proposal: null,
  ticked: new Set(),
  fault: null,
};

/** Proposes the fewest changes from the possible changes of a text. Safe changes are ticked. */
export function propose(plan: PlanState, text: string, possible: PossibleChanges): PlanState {
  const { target, mostStoryWords: storyWords, dropsMore, longest } = plan;
  const changes = dropsMore
    ? possible.changes
    : possible.changes.filter((change) => change.kind !== 'drop' || !change.isNeeded);
  const planned = planChanges(possible.places, changes, {
    target,
    storyWords,
    longest,
    ...(dropsMore && { dropped: possible.sentences.length }),
  });
  const ticked = new Set(planned.map(({ change }) => change).filter(isSafe));
  return { ...plan, proposal: { possible, planned, text }, ticked, fault: null };
}

/**
 * Returns whether a teacher would nearly always take a change: a recommended swap, or a sentence shortened by the
 * safest rules.
 */
export function isSafe(change: Change): boolean {
  return change.kind === 'swap' || (change.kind === 'rewrite' && change.isSafe);
}

export function tick(plan: PlanState, change: Change, isTicked: boolean): PlanState {
  const others = [...plan.ticked].filter((one) => one !== change);
  return { ...plan, ticked: new Set(isTicked ? [...others, change] : others) };
}

/** Returns the other ways to write the same sentence that the teacher asked for. */
export function othersFor(change: Change, { possible }: Proposal): readonly Change[] {
  if (change.kind !== 'rewrite' || !change.isAskedFor) return [];
  return possible.changes.filter(
    (other) =>
      other.kind === 'rewrite' &&
      other.isAskedFor &&
      other.sentence === change.sentence &&
      other.text !== change.text,
  );
}

/** Makes a change the first choice among the ways to write its sentence, and ticks the change. Other ticks stay. */
export function choose(plan: PlanState, change: Change): PlanState {
  const { proposal, ticked } = plan;
  if (!proposal) return plan;
  const changes = [change, ...proposal.possible.changes.filter((other) => other !== change)];
  const made = propose(plan, proposal.text, { ...proposal.possible, changes });
  const planned = made.proposal!.planned.map((each) => each.change);
  return { ...made, ticked: new Set(planned.filter((each) => each === change || ticked.has(each))) };
}

export function tickAll(plan: PlanState): PlanState {
  return { ...plan, ticked: new Set(plan.proposal?.planned.map(({ change }) => change)) };
}

/** Returns whether the passage has changed since the proposal was made. */
export function isOutdated({ proposal }: PlanState, text: string): boolean {
  return proposal !== null && proposal.text !== text;
}

/** The ticked changes in the order of the plan: edits of the text, and words to teach. */
export function makeTicked({ proposal, ticked }: PlanState): {
  readonly edits: readonly TextEdit[];
  readonly storyWords: readonly StoryWord[];
} {
  if (!proposal) return { edits: [], storyWords: [] };
  const chosen = proposal.planned.map(({ change }) => change).filter((change) => ticked.has(change));
  return {
    edits: editsFor(chosen, proposal),
    storyWords: chosen
      .filter((change) => change.kind === 'story-word')
      .map(({ word, meaning }) => ({ word, meaning })),
  };
}

/** Returns the parts of the text that a change replaces. For a story word, the part is the word itself. */
export function spansOf(change: Change, { possible, text }: Proposal): readonly TextEdit[] {
  if (change.kind === 'rewrite') return change.edits;
  if (change.kind === 'drop') {
    const { from, to } = possible.sentences[change.sentence]!;
    const blank = /^[ \t]*/.exec(text.slice(to))![0].length;
    return [{ from, to: to + blank, text: '' }];
  }
  return change.places.flatMap((i): TextEdit[] => {
    const { from, to } = possible.places[i]!;
    const word = text.slice(from, to);
    if (change.kind === 'story-word') return [{ from, to, text: word }];
    const article = possible.articles.get(i);
    const others = article ? [article] : [];
    const span = possible.spans?.get(i);
    if (span) return [...others, { ...span, text: change.swap }];
    const isCapital = /^\p{Lu}/u.test(word);
    const swap = isCapital ? change.swap.charAt(0).toUpperCase() + change.swap.slice(1) : change.swap;
    return [...others, { from, to, text: swap }];
  });
}

/**
 * Returns the edits of the text for the chosen changes: first sentences left out, then rewritten sentences, then swaps.
 * An edit inside text that an earlier edit removes is skipped.
 */
function editsFor(chosen: readonly Change[], proposal: Proposal): TextEdit[] {
  const edits: TextEdit[] = [];
  for (const kind of ['drop', 'rewrite', 'swap'] as const) {
    for (const change of chosen) {
      if (change.kind !== kind) continue;
      const spans = spansOf(change, proposal);
      for (const edit of spans) if (!edits.some((made) => overlaps(made, edit))) edits.push(edit);
    }
  }
  return edits;
}

function overlaps(one: TextEdit, other: TextEdit): boolean {
  return one.from < other.to && other.from < one.to;
}
