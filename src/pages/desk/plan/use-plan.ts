import { flushSync } from 'preact/compat';
import { useCallback, useRef, useState } from 'preact/hooks';
import { loadSwapper, loadSwapTable } from '../../../host/data/load-swapper.ts';
import type { StoryWord } from '../../../host/store/passages-store.ts';
import type { TextEdit } from '../passage-editor.ts';
import type { Judging } from '../use-report.ts';
import { listChanges } from './list-changes.ts';
import { isOutdated, makeTicked, NO_PLAN, type PlanState, propose } from './plan-state.ts';

/** Longest stretch of work before the page gets its turn, in milliseconds. */
const SLICE = 10;

export interface Planner {
  readonly plan: PlanState;
  /** The proposal is there, and for the text as it is. */
  readonly isOpen: boolean;
  readonly isAsking: boolean;
  readonly change: (change: (plan: PlanState) => PlanState) => void;
  readonly ask: () => Promise<void>;
  /** Makes the ticked changes and closes the plan. */
  readonly make: () => void;
  readonly close: () => void;
}

/** The plan of a passage: nothing of the text is changed before `make`. */
export function usePlan(
  text: string,
  judging: Judging | null,
  storyWords: readonly string[],
  onMake: (edits: readonly TextEdit[], words: readonly StoryWord[]) => void,
): Planner {
  const [plan, setPlan] = useState(NO_PLAN);
  const [isAsking, setAsking] = useState(false);
  const asked = useRef(0);
  const close = useCallback(() => setPlan((now) => ({ ...now, proposal: null })), []);
  const ask = async (): Promise<void> => {
    if (!judging) return;
    const turn = ++asked.current;
    setAsking(true);
    try {
      const [swapper, table, { createShortener }] = await Promise.all([
        loadSwapper(),
        loadSwapTable(),
        import('../../../shorten/index.ts'),
      ]);
      const finders = {
        ...judging,
        swapper,
        shortener: createShortener(table),
        known: new Set(storyWords),
        longest: plan.longest,
      };
      const possible = await listChanges(text, finders, createRest());
      if (turn === asked.current) setPlan((now) => propose(now, text, possible));
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      if (turn === asked.current) setPlan((now) => ({ ...now, fault: why }));
    }
    if (turn === asked.current) setAsking(false);
  };
  const make = (): void => {
    const made = makeTicked(plan);
    // The text has to be there again before it can be written in.
    flushSync(close);
    onMake(made.edits, made.storyWords);
  };
  const isOpen = plan.proposal !== null && !isOutdated(plan, text);
  return { plan, isOpen, isAsking, change: setPlan, ask, make, close };
}

/** Gives something to wait for whenever the page has had no turn for a while. */
function createRest(): () => Promise<void> | undefined {
  let began = performance.now();
  return () => {
    if (performance.now() - began < SLICE) return undefined;
    return new Promise<void>((turn) => setTimeout(turn)).then(() => {
      began = performance.now();
    });
  };
}
