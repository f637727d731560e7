import { useMemo, useState } from 'preact/hooks';
import { type Analyzer, climbText, createClimber, remember } from '../../analyze/index.ts';
import type { Group } from '../../analyze/types.ts';
import { findGroup } from '../../host/store/groups-store.ts';
import { withinSequence } from '../../host/store/move-group.ts';
import { findSequence, type Sequences } from '../../host/store/sequences-store.ts';
import { climbWithStoryWords } from '../../passage/with-story-words.ts';
import { ClimbChart } from '../../ui/climb-chart.tsx';
import type { ClimbLine } from '../../ui/climb-line.ts';
import { say } from '../../wording/say.ts';
import type { ReportText } from './report-text.ts';

interface ClimbPartProps {
  readonly text: Pick<ReportText, 'words' | 'skipped' | 'storyWords'>;
  readonly engine: Analyzer;
  readonly groups: Readonly<Record<string, Group>>;
  readonly sequences: Sequences;
  /** The group the report is for. Its line is always shown. */
  readonly groupId: string;
}

/** Shows the climb of the text for the group of the report, and for other groups that are ticked. */
export function ClimbPart({ text, engine, groups, sequences, groupId }: ClimbPartProps) {
  const [ticked, setTicked] = useState<readonly string[]>([]);
  const shown = Object.keys(groups).filter((id) => id === groupId || ticked.includes(id));
  const climbOf = useMemo(() => remember(follow), [text, engine, groups, sequences]);

  function follow(id: string): ClimbLine | null {
    const group = findGroup({ groups }, id);
    const sequence = findSequence(sequences, group?.sequence ?? null);
    if (!group || !sequence) return null;
    const climber = climbWithStoryWords(createClimber(engine, group, sequence), text.storyWords);
    const { step } = withinSequence(group, sequence);
    return { name: group.name, sequence, step, climb: climbText(text, climber) };
  }
  // The group of the report comes first, so that its line keeps its style.
  const order = [groupId, ...shown.filter((id) => id !== groupId)];
  const lines = order.map(climbOf).filter((line) => line !== null);
  const flat = order.filter((id) => !findSequence(sequences, findGroup({ groups }, id)?.sequence ?? null));
  const others = Object.entries(groups).filter(([id]) => id !== groupId);
  return (
    <section class="report-part" aria-labelledby="climb-title">
      <h2 id="climb-title">{say('report.climb')}</h2>
      {others.length > 0 && (
        <fieldset class="report-ticks" data-screen>
          <legend class="quiet">{say('report.beside', { group: groups[groupId]?.name ?? '' })}</legend>
          {others.map(([id, { name }]) => (
            <label key={id} class="tick">
              <input
                type="checkbox"
                checked={ticked.includes(id)}
                onChange={({ currentTarget: { checked } }) =>
                  setTicked(checked ? [...ticked, id] : ticked.filter((other) => other !== id))
                }
              />{' '}
              {name}
            </label>
          ))}
        </fieldset>
      )}
      {flat.map((id) => (
        <p key={id}>{say('report.noClimb', { group: groups[id]!.name })}</p>
      ))}
      {lines.length > 0 && <ClimbChart lines={lines} />}
    </section>
  );
}
