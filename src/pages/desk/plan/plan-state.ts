import type { StoryWord } from '../../../host/store/passages-store.ts';
import type { TextEdit } from '../passage-editor.ts';
import type { PossibleChanges } from './list-changes.ts';
import { type Change, type PlannedChange, planChanges } from './plan-changes.ts';

/**
 * A sentence of the passage written anew: by the rules that shorten, or by any other that offers texts. `addProposals`
 * (`list-changes.ts`) makes changes of them, which are planned, shown and ticked like all others.
 */
export interface SentenceProposal {
  /** Number of the sentence, as `PossibleChanges.sentences` has it. */
  readonly sentence: number;
  /** What is to take its place; several sentences are separated by a blank. */
  readonly text: string;
  /** What it is, as the teacher reads it. */
  readonly what: string;
  /** Ticked at once; else the teacher ticks it. */
  readonly isSafe?: boolean;
}

/** What is asked of a plan, what was proposed for it, and what of that is ticked. */
export interface PlanState {
  /** Reach that is wanted, in percent. */
  readonly target: number;
  /** Most story words that are proposed. */
  readonly mostStoryWords: number;
  /** Whether any number of sentences may be left out; else a fifth of them at most. */
  readonly dropsMore: boolean;
  readonly proposal: Proposal | null;
  readonly ticked: ReadonlySet<Change>;
  /** Why nothing could be proposed. */
  readonly fault: string | null;
}

export interface Proposal {
  readonly possible: PossibleChanges;
  readonly planned: readonly PlannedChange[];
  /** The passage it was made for. */
  readonly text: string;
}

export const NO_PLAN: PlanState = {
  target: 95,
  mostStoryWords: 3,
  dropsMore: false,
  proposal: null,
  ticked: new Set(),
  fault: null,
};

/** With the fewest changes of those that are possible in a text, none of them ticked. */
export function propose(plan: PlanState, text: string, possible: PossibleChanges): PlanState {
  const { target, mostStoryWords: storyWords, dropsMore } = plan;
  const planned = planChanges(possible.places, possible.changes, {
    target,
    storyWords,
    ...(dropsMore && { dropped: possible.sentences.length }),
  });
  return { ...plan, proposal: { possible, planned, text }, ticked: new Set(), fault: null };
}

export function tick(plan: PlanState, change: Change, isTicked: boolean): PlanState {
  const others = [...plan.ticked].filter((one) => one !== change);
  return { ...plan, ticked: new Set(isTicked ? [...others, change] : others) };
}

export function tickAll(plan: PlanState): PlanState {
  return { ...plan, ticked: new Set(plan.proposal?.planned.map(({ change }) => change)) };
}

/** Whether the passage is another since the proposal was made for it. */
export function isOutdated({ proposal }: PlanState, text: string): boolean {
  return proposal !== null && proposal.text !== text;
}

/** What the ticked changes do, in the order of the plan: edits of the text, and words to teach. */
export function makeTicked({ proposal, ticked }: PlanState): {
  readonly edits: readonly TextEdit[];
  readonly storyWords: readonly StoryWord[];
} {
  if (!proposal) return { edits: [], storyWords: [] };
  const chosen = proposal.planned.map(({ change }) => change).filter((change) => ticked.has(change));
  return {
    edits: editsFor(chosen, proposal),
    storyWords: chosen.filter((change) => change.kind === 'story-word'),
  };
}

/** The edits of the text for changes; a swap in a sentence that is left out is not made. */
function editsFor(chosen: readonly Change[], { possible, text }: Proposal): TextEdit[] {
  const dropped = new Set(chosen.flatMap((change) => (change.kind === 'drop' ? [change.sentence] : [])));
  return chosen.flatMap((change): TextEdit[] => {
    if (change.kind === 'story-word') return [];
    if (change.kind === 'drop') {
      const { from, to } = possible.sentences[change.sentence]!;
      const blank = /^[ \t]*/.exec(text.slice(to))![0].length;
      return [{ from, to: to + blank, text: '' }];
    }
    return change.places.flatMap((i) => {
      const { from, to, sentence } = possible.places[i]!;
      if (dropped.has(sentence)) return [];
      const isCapital = /^\p{Lu}/u.test(text.slice(from, to));
      const swap = isCapital ? change.swap.charAt(0).toUpperCase() + change.swap.slice(1) : change.swap;
      const article = possible.articles.get(i);
      return [...(article ? [article] : []), { from, to, text: swap }];
    });
  });
}
