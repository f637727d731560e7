import { flushSync } from 'preact/compat';
import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { loadSwapper, loadSwapTable } from '../../../host/data/load-swapper.ts';
import type { StoryWord } from '../../../passage/kept/passage.ts';
import { say } from '../../../wording/say.ts';
import type { TextEdit } from '../passage-editor.ts';
import type { Judging } from '../use-report.ts';
import { createCounter, listChanges } from './list-changes.ts';
import { isOutdated, makeTicked, NO_PLAN, type PlanState, propose } from './plan-state.ts';
import { addProposals, type CountWords, type PossibleChanges } from './possible-changes.ts';

/** The longest stretch of work before the page gets a turn, in milliseconds. */
const SLICE = 10;

export interface Planner {
  readonly plan: PlanState;
  /** Whether a proposal exists and was made for the current text. */
  readonly isOpen: boolean;
  readonly isAsking: boolean;
  readonly change: (change: (plan: PlanState) => PlanState) => void;
  readonly ask: () => Promise<void>;
  /** Adds rewritings of sentences to the plan and asks for the plan. The best rewriting of a sentence comes first. */
  readonly offer: (rewritings: readonly Rewriting[]) => Promise<void>;
  /** Makes the ticked changes and closes the plan. */
  readonly make: () => void;
  readonly close: () => void;
}

/** Other ways to write a sentence of the passage, best first. */
export interface Rewriting {
  readonly sentence: string;
  readonly texts: readonly string[];
}

/** Manages the plan of a passage. The text stays unchanged until `make` is called. */
export function usePlan(
  text: string,
  judging: Judging | null,
  storyWords: readonly string[],
  onMake: (edits: readonly TextEdit[], words: readonly StoryWord[]) => void,
): Planner {
  const [plan, setPlan] = useState(NO_PLAN);
  const [isAsking, setAsking] = useState(false);
  const asked = useRef(0);
  const rewritings = useRef<readonly Rewriting[]>([]);
  const judge = judging?.judge;
  // The rewritings were judged for the previous group.
  useEffect(() => {
    rewritings.current = [];
  }, [judge]);
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
      const found = await listChanges(text, finders, createRest());
      const possible = withRewritings(found, text, rewritings.current, createCounter(finders));
      if (turn === asked.current) setPlan((now) => propose(now, text, possible));
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      if (turn === asked.current) setPlan((now) => ({ ...now, fault: why }));
    }
    if (turn === asked.current) setAsking(false);
  };
  const offer = (offered: readonly Rewriting[]): Promise<void> => {
    const sentences = new Set(offered.map(({ sentence }) => sentence));
    rewritings.current = [
      ...offered,
      ...rewritings.current.filter(({ sentence }) => !sentences.has(sentence)),
    ];
    return ask();
  };
  const make = (): void => {
    const made = makeTicked(plan);
    // The text field has to be shown again before it can be edited.
    flushSync(close);
    onMake(made.edits, made.storyWords);
  };
  const isOpen = plan.proposal !== null && !isOutdated(plan, text);
  return { plan, isOpen, isAsking, change: setPlan, ask, offer, make, close };
}

/** Adds the rewritings of sentences that are still in the text to the possible changes. */
function withRewritings(
  possible: PossibleChanges,
  text: string,
  rewritings: readonly Rewriting[],
  count: CountWords,
): PossibleChanges {
  const proposals = possible.sentences.flatMap(({ from, to }, sentence) => {
    const old = text.slice(from, to);
    const sign = /^(?:- )?/.exec(old)![0];
    const found = rewritings.find((each) => each.sentence === old.slice(sign.length));
    return (found?.texts ?? []).map((anew) => ({
      sentence,
      text: sign + anew,
      what: say('desk.rewrittenAs', { text: anew }),
      isAskedFor: true,
    }));
  });
  return addProposals(possible, text, proposals, count);
}

/**
 * Creates a function that returns a promise when the page has had no turn for `SLICE`. Waiting for the promise gives
 * the page a turn.
 */
function createRest(): () => Promise<void> | undefined {
  let began = performance.now();
  return () => {
    if (performance.now() - began < SLICE) return undefined;
    return new Promise<void>((turn) => setTimeout(turn)).then(() => {
      began = performance.now();
    });
  };
}
