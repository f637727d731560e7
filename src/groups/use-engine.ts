import { useEffect, useState } from 'preact/hooks';
import type { Analyzer } from '../analyze/index.ts';
import { loadCommonWords } from '../host/load-common-words.ts';
import { loadEngine } from '../host/load-engine.ts';

/** The analyser and the commonest words; `failed` when the extension's own files cannot be read. */
export type EngineState =
  | { readonly kind: 'loading' | 'failed' }
  | { readonly kind: 'ready'; readonly engine: Analyzer; readonly words: readonly string[] };

/** Loads both once for the page. */
export function useEngine(): EngineState {
  const [state, setState] = useState<EngineState>({ kind: 'loading' });
  useEffect(() => {
    let current = true;
    Promise.all([loadEngine(), loadCommonWords()]).then(
      ([engine, words]) => current && setState({ kind: 'ready', engine, words }),
      () => current && setState({ kind: 'failed' }),
    );
    return () => {
      current = false;
    };
  }, []);
  return state;
}
