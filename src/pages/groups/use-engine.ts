import { useEffect, useState } from 'preact/hooks';
import type { Analyzer } from '../../analyze/index.ts';
import { loadCommonWords } from '../../host/data/load-common-words.ts';
import { loadEngine } from '../../host/data/load-engine.ts';

/** The analyser and the most common words. `failed` has the reason if they cannot be loaded. */
export type EngineState =
  | { readonly kind: 'loading' }
  | { readonly kind: 'failed'; readonly why: string }
  | { readonly kind: 'ready'; readonly engine: Analyzer; readonly words: readonly string[] };

/** Loads the analyser and the word list once for the page. */
export function useEngine(): EngineState {
  const [state, setState] = useState<EngineState>({ kind: 'loading' });
  useEffect(() => {
    let current = true;
    Promise.all([loadEngine(), loadCommonWords()]).then(
      ([engine, words]) => current && setState({ kind: 'ready', engine, words }),
      (error: unknown) => {
        const why = error instanceof Error ? error.message : String(error);
        if (current) setState({ kind: 'failed', why });
      },
    );
    return () => {
      current = false;
    };
  }, []);
  return state;
}
