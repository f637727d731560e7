import { useEffect, useRef, useState } from 'preact/hooks';
import type { Analyzer, Judge } from '../../../analyze/index.ts';
import { loadSwapper } from '../../../host/data/load-swapper.ts';
import { type Download, findModelState, type ModelState, openModel } from '../../../host/language-model.ts';
import type { ShadedLine } from '../../../passage/shade-line.ts';
import { findNames, INSTRUCTIONS, type JudgedCandidate, rewriteSentence } from '../../../rewrite/index.ts';
import type { PlacedSentence } from './list-sentences.ts';
import { makeTools } from './make-tools.ts';

/** A sentence with rewritings to choose from, best first. */
export interface Rewritten {
  readonly sentence: PlacedSentence;
  readonly candidates: readonly JudgedCandidate[];
}

/** The state of a rewriting. */
export interface Rewriting {
  /** The state of the browser's model; null until the browser was asked. */
  readonly model: ModelState | null;
  readonly working: { readonly number: number; readonly all: number } | null;
  readonly download: Download | null;
  readonly found: readonly Rewritten[];
  /** Whether a requested rewriting has ended. */
  readonly isDone: boolean;
  /** The number of sentences to rewrite. */
  readonly asked: number;
  readonly fault: string | null;
}

export interface RewriteInput {
  readonly text: string;
  readonly shade: (line: string) => ShadedLine;
  readonly judge: Judge;
  readonly engine: Analyzer;
  readonly preTeach: readonly string[];
  /** The most words a sentence should have; null applies `LONGEST`. */
  readonly longest: number | null;
  /** Called once with all rewritings found, even when a fault or a cancel ended the search. */
  readonly onFound: (found: readonly Rewritten[]) => void;
}

/** The longest sentence for anyone who is learning to read, in words; our own figure. */
const LONGEST = 15;

const NOTHING: Rewriting = {
  model: null,
  working: null,
  download: null,
  found: [],
  isDone: false,
  asked: 0,
  fault: null,
};

/**
 * Rewrites sentences one after the other with the browser's own model. Rewritings found before a fault or a cancel are
 * kept.
 */
export function useRewriting(input: RewriteInput): {
  readonly rewriting: Rewriting;
  readonly look: () => void;
  readonly start: (sentences: readonly PlacedSentence[]) => Promise<void>;
  readonly cancel: () => void;
} {
  const [rewriting, setRewriting] = useState(NOTHING);
  const running = useRef<AbortController | null>(null);
  const set = (change: Partial<Rewriting>): void => setRewriting((now) => ({ ...now, ...change }));
  useEffect(() => () => running.current?.abort(), []);

  const start = async (sentences: readonly PlacedSentence[]): Promise<void> => {
    running.current?.abort();
    if (sentences.length === 0) return set({ found: [], isDone: true, asked: 0, fault: null });
    const controller = new AbortController();
    running.current = controller;
    const { signal } = controller;
    const { text, shade, judge, engine, preTeach, longest, onFound } = input;
    const found: Rewritten[] = [];
    const all = sentences.length;
    set({ working: { number: 1, all }, asked: all, found: [], isDone: false, fault: null, download: null });
    try {
      // The browser allows the download only because of the user's press. So the model is opened before the code waits
      // for anything.
      const opening = openModel(INSTRUCTIONS, (download) => !signal.aborted && set({ download }), signal);
      opening.catch(() => undefined);
      const tools = makeTools(shade, judge, engine, await loadSwapper(), preTeach);
      const model = await opening;
      set({ model: 'available', download: null });
      const names = findNames(text);
      for (const [i, sentence] of sentences.entries()) {
        set({ working: { number: i + 1, all } });
        const task = {
          sentence: sentence.text,
          before: sentence.before,
          after: sentence.after,
          names,
          preTeach,
          longest: longest ?? LONGEST,
        };
        const candidates = await rewriteSentence(task, tools, model.ask, signal);
        if (candidates.length === 0) continue;
        found.push({ sentence, candidates });
        set({ found: [...found] });
      }
      model.close();
      set({ isDone: true });
    } catch (error) {
      if (!signal.aborted) set({ fault: error instanceof Error ? error.message : String(error) });
    } finally {
      if (running.current === controller) {
        running.current = null;
        set({ working: null, download: null });
        if (found.length > 0) onFound(found);
      }
      controller.abort();
    }
  };
  return {
    rewriting,
    look: () => void findModelState().then((model) => set({ model })),
    start,
    cancel: () => running.current?.abort(),
  };
}
