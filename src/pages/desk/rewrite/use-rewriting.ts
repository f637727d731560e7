import { useState } from 'preact/hooks';
import type { Analyzer, Judge } from '../../../analyze/index.ts';
import { loadSwapper } from '../../../host/data/load-swapper.ts';
import type { ShadedLine } from '../../../passage/shade-line.ts';
import {
  findNames,
  INSTRUCTIONS,
  type JudgedCandidate,
  LONGEST_SENTENCE,
  rewriteSentence,
} from '../../../rewrite/index.ts';
import { type ModelUser, useModel } from '../model/use-model.ts';
import type { PlacedSentence } from './list-sentences.ts';
import { makeTools } from './make-tools.ts';

/** A sentence with rewritings to choose from, best first. */
export interface Rewritten {
  readonly sentence: PlacedSentence;
  readonly candidates: readonly JudgedCandidate[];
}

/** The state of a rewriting. */
export interface Rewriting {
  /** The number of the sentence that is being rewritten, from 1. */
  readonly number: number;
  /** The number of sentences to rewrite. */
  readonly asked: number;
  readonly found: readonly Rewritten[];
  /** Whether a requested rewriting has ended. */
  readonly isDone: boolean;
}

export interface RewriteInput {
  readonly text: string;
  readonly shade: (line: string) => ShadedLine;
  readonly judge: Judge;
  readonly engine: Analyzer;
  readonly preTeach: readonly string[];
  /** The most words a sentence should have; null applies `LONGEST_SENTENCE`. */
  readonly longest: number | null;
  /** Called once with all rewritings found, even when a fault or a cancel ended the search. */
  readonly onFound: (found: readonly Rewritten[]) => void;
}

const NOTHING: Rewriting = { number: 1, asked: 0, found: [], isDone: false };

/**
 * Rewrites sentences one after the other with the browser's own model. Rewritings found before a fault or a cancel are
 * kept.
 */
export function useRewriting(input: RewriteInput): {
  readonly rewriting: Rewriting;
  readonly user: ModelUser;
  readonly start: (sentences: readonly PlacedSentence[]) => Promise<void>;
} {
  const [rewriting, setRewriting] = useState(NOTHING);
  const user = useModel(INSTRUCTIONS);
  const set = (change: Partial<Rewriting>): void => setRewriting((now) => ({ ...now, ...change }));

  const start = async (sentences: readonly PlacedSentence[]): Promise<void> => {
    if (sentences.length === 0) {
      user.cancel();
      return setRewriting({ ...NOTHING, isDone: true });
    }
    const { text, shade, judge, engine, preTeach, longest, onFound } = input;
    const found: Rewritten[] = [];
    setRewriting({ ...NOTHING, asked: sentences.length });
    const isLast = await user.run(async (opening, signal) => {
      const tools = makeTools(shade, judge, engine, await loadSwapper(), preTeach);
      const model = await opening;
      const names = findNames(text);
      for (const [i, sentence] of sentences.entries()) {
        set({ number: i + 1 });
        const task = {
          sentence: sentence.text,
          before: sentence.before,
          after: sentence.after,
          names,
          preTeach,
          longest: longest ?? LONGEST_SENTENCE,
        };
        const candidates = await rewriteSentence(task, tools, model.ask, signal);
        if (candidates.length === 0) continue;
        found.push({ sentence, candidates });
        set({ found: [...found] });
      }
      set({ isDone: true });
    });
    if (isLast && found.length > 0) onFound(found);
  };
  return { rewriting, user, start };
}
