import { useEffect, useState } from 'preact/hooks';
import type { Analyzer } from '../analyze/index.ts';
import { loadEngine } from '../host/load-engine.ts';

/** The analyser; null until the word table is there, `failed` when it cannot be read. */
export function useEngine(): Analyzer | 'failed' | null {
  const [engine, setEngine] = useState<Analyzer | 'failed' | null>(null);
  useEffect(() => {
    let current = true;
    loadEngine().then(
      (loaded) => current && setEngine(loaded),
      () => current && setEngine('failed'),
    );
    return () => {
      current = false;
    };
  }, []);
  return engine;
}
