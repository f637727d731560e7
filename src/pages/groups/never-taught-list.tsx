import { useMemo } from 'preact/hooks';
import { type ImportedSequence, parseGroup } from '../../analyze/index.ts';
import type { Group } from '../../analyze/types.ts';
import { accentAtFirst } from '../../host/store/groups-store.ts';
import { patternName } from '../../ui/pattern-name.ts';
import { say, spokenLanguage } from '../../wording/say.ts';
import { costOfGaps } from './cost-of-gaps.ts';
import { fromPasted } from './from-pasted.ts';
import type { EngineState } from './use-engine.ts';

const SHOWN = 8;
const SAMPLES = 6;
const ID = 'pasted';

interface NeverTaughtListProps {
  readonly imported: ImportedSequence;
  readonly engine: EngineState;
  /** The group that will follow the sequence, or null. */
  readonly group: Group | null;
}

/** The patterns that the pasted sequence never teaches, by how many of the commonest words need them. */
export function NeverTaughtList({ imported, engine, group }: NeverTaughtListProps) {
  const costs = useMemo(() => {
    if (engine.kind !== 'ready') return [];
    const sequence = { id: ID, ...fromPasted(imported, ID) };
    const follower = group ?? parseGroup({ name: ID, accent: accentAtFirst(), sequence: ID, step: 1 });
    return costOfGaps(engine.words, engine.engine, follower, sequence);
  }, [imported, engine, group]);
  if (engine.kind !== 'ready' || costs.length === 0) return null;
  const listed = engine.words.length.toLocaleString(spokenLanguage());
  return (
    <section class="part" aria-labelledby="never-title">
      <h2 id="never-title">{say('sequences.neverTaughtTitle')}</h2>
      <p class="quiet">{say('sequences.aboutNeverTaught', { listed })}</p>
      <dl class="taught never-taught">
        {costs.slice(0, SHOWN).map(({ pattern, words }) => (
          <div key={pattern} class="taught-row">
            <dt>{patternName(pattern)}</dt>
            <dd>
              {say('sequences.wordsNeedIt', { count: words.length })}{' '}
              <span class="samples" lang="en">
                {words.slice(0, SAMPLES).join(', ')}
              </span>
            </dd>
          </div>
        ))}
      </dl>
      {costs.length > SHOWN && (
        <p class="quiet">{say('sequences.moreNeverTaught', { count: costs.length - SHOWN })}</p>
      )}
    </section>
  );
}
