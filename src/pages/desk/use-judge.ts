import { useMemo } from 'preact/hooks';
import { type Analyzer, compileGroup, createJudge, type Judge } from '../../analyze/index.ts';
import type { Group } from '../../analyze/types.ts';
import { loadEngine } from '../../host/data/load-engine.ts';
import { withinSequence } from '../../host/store/move-group.ts';
import { findSequence, type Sequences } from '../../host/store/sequences-store.ts';
import { LoadFault, useLoaded } from '../../ui/use-loaded.ts';

/**
 * Returns the judge of words for a group; null until the word table is loaded. `fault` is the reason why the word table
 * could not be loaded.
 */
export function useJudge(
  group: Group | null,
  sequences: Sequences | null,
): { readonly judge: Judge | null; readonly engine: Analyzer | null; readonly fault: LoadFault | null } {
  const loaded = useLoaded(loadEngine);
  const fault = loaded instanceof LoadFault ? loaded : null;
  const engine = loaded instanceof LoadFault ? null : loaded;
  const judge = useMemo(() => {
    if (!engine || !group || !sequences) return null;
    const sequence = findSequence(sequences, group.sequence);
    return createJudge(engine, compileGroup(withinSequence(group, sequence), sequence));
  }, [engine, group, sequences]);
  // The analyses are in the group's accent.
  const spoken = useMemo(
    () => (engine && judge ? engine.speaking(judge.group.speech) : engine),
    [engine, judge],
  );
  return { judge, engine: spoken, fault };
}
