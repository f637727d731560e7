import { useMemo } from 'preact/hooks';
import { type Analyzer, compileGroup, createJudge, type Judge } from '../analyze/index.ts';
import type { Group } from '../analyze/types.ts';
import { loadEngine } from '../host/load-engine.ts';
import { withinSequence } from '../host/move-group.ts';
import { findSequence, type Sequences } from '../host/sequences-store.ts';
import { useLoaded } from '../ui/use-loaded.ts';

/** What words are to a group; null until the word table is there, `failed` when it cannot be read. */
export function useJudge(
  group: Group | null,
  sequences: Sequences | null,
): { readonly judge: Judge | null; readonly engine: Analyzer | null; readonly failed: boolean } {
  const loaded = useLoaded(loadEngine);
  const failed = loaded === 'failed';
  const engine = failed ? null : loaded;
  const judge = useMemo(() => {
    if (!engine || !group || !sequences) return null;
    const sequence = findSequence(sequences, group.sequence);
    return createJudge(engine, compileGroup(withinSequence(group, sequence), sequence));
  }, [engine, group, sequences]);
  return { judge, engine, failed };
}
