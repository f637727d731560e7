import { useMemo, useState } from 'preact/hooks';
import type { Group } from '../../analyze/types.ts';
import { groupOn, today, withinSequence } from '../../host/store/move-group.ts';
import { findSequence, type Sequences } from '../../host/store/sequences-store.ts';
import { patternName } from '../../ui/pattern-name.ts';
import { say, sayWith, spokenLanguage } from '../../wording/say.ts';
import './read-now.css';
import { type ReadNow, readNow, taughtBySteps } from './read-now.ts';
import type { EngineState } from './use-engine.ts';

const SAMPLES = 8;
const NEXT = 24;
const STEPS = 2;

interface ReadNowViewProps {
  readonly group: Group;
  readonly sequences: Sequences;
  readonly engine: EngineState;
}

/**
 * Shows whether the profile is right: how many of the commonest words the group reads, and words for the patterns it
 * was taught.
 */
export function ReadNowView({ group, sequences, engine }: ReadNowViewProps) {
  const [day, setDay] = useState<string | null>(null);
  const [all, setAll] = useState(false);
  const then = day === null ? group : groupOn(group, day);
  const sequence = findSequence(sequences, then.sequence);
  const shownGroup = withinSequence(then, sequence);
  const result = useMemo(
    () => (engine.kind === 'ready' ? readNow(engine.words, engine.engine, shownGroup, sequence) : null),
    [engine, group, day, sequence],
  );
  const steps = taughtBySteps(shownGroup, sequence);
  return (
    <section class="part" aria-labelledby="now-title">
      <div class="part-head">
        <h2 id="now-title">{say(day === null ? 'groups.readNow' : 'groups.readThen')}</h2>
        {(group.history?.length ?? 0) > 0 && (
          <p class="as-of">
            <label for="as-of">{say('groups.asOf')}</label>{' '}
            <input
              id="as-of"
              type="date"
              class="field"
              max={today()}
              value={day ?? today()}
              onChange={(event) => {
                const { value } = event.currentTarget;
                setDay(value === '' || value >= today() ? null : value);
              }}
            />
          </p>
        )}
      </div>
      {engine.kind === 'failed' && <p class="note">{say('groups.noWordTable', { why: engine.why })}</p>}
      {result && (
        <>
          <p role="status">
            {day === null
              ? figures(result)
              : sayWith('groups.atStep', { step: shownGroup.step, figures: figures(result) })}
          </p>
          <div class="bar" aria-hidden="true">
            <span class="grows bar-reads" style={{ flexGrow: result.decodes }} />
            <span class="grows bar-by-sight" style={{ flexGrow: result.bySight }} />
            <span class="grows bar-rest" style={{ flexGrow: result.beyond.length }} />
          </div>
          {(all ? steps : steps.slice(0, STEPS)).map(({ title, patterns }) => (
            <div key={title} class="taught">
              <h3>{title}</h3>
              <dl>
                {patterns.map((id) => (
                  <div key={id} class="taught-row">
                    <dt>{patternName(id)}</dt>
                    <dd>{describeWords(result.wordsOf.get(id) ?? [])}</dd>
                  </div>
                ))}
              </dl>
            </div>
          ))}
          {steps.length > STEPS && (
            <button type="button" class="plain" aria-expanded={all} onClick={() => setAll(!all)}>
              {all ? say('groups.latestOnly') : say('groups.showBefore', { count: steps.length - STEPS })}
            </button>
          )}
          {result.beyond.length > 0 && (
            <details class="unfold">
              <summary>{say('groups.notReadYet')}</summary>
              <p class="samples" lang="en">
                {result.beyond.slice(0, NEXT).join(', ')}
              </p>
            </details>
          )}
        </>
      )}
    </section>
  );
}

function describeWords(words: readonly string[]) {
  if (words.length === 0) return <span class="quiet">{say('groups.noWordInReach')}</span>;
  return (
    <span class="samples" lang="en">
      {words.slice(0, SAMPLES).join(', ')}
    </span>
  );
}

function figures({ decodes, bySight, of: all }: ReadNow) {
  const readable = <strong>{(decodes + bySight).toLocaleString(spokenLanguage())}</strong>;
  return bySight === 0
    ? sayWith('groups.readOf', { readable, all })
    : sayWith('groups.readOfAndBySight', { readable, all, sight: bySight });
}
