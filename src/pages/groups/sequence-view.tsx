import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Sequence } from '../../analyze/types.ts';
import type { Groups } from '../../host/store/groups-store.ts';
import type { Sequences } from '../../host/store/sequences-store.ts';
import { patternName } from '../../ui/pattern-name.ts';
import { sayList } from '../../ui/say-list.ts';
import { sequenceNote, stepTitle } from '../../ui/step-title.ts';
import { say, spokenLanguage } from '../../wording/say.ts';
import {
  addSequence,
  copyOf,
  deleteSequence,
  editSequence,
  type SequenceChange,
  stepChange,
} from './edit-sequences.ts';
import { type EditedSteps, insertStep } from './edit-steps.ts';
import { findOddities, neverTaught } from './find-oddities.ts';
import { languageOf } from './language-of.ts';
import './sequence.css';
import { StepList } from './step-list.tsx';
import { TextField } from './text-field.tsx';
import type { EngineState } from './use-engine.ts';
import { go } from './use-route.ts';

interface SequenceViewProps {
  readonly sequence: Sequence;
  readonly groups: Groups;
  readonly sequences: Sequences;
  readonly engine: EngineState;
}

/** Shows one sequence: its steps in order, each of which can be changed, and the oddities found in them. */
export function SequenceView({ sequence, groups, sequences, engine }: SequenceViewProps) {
  const { id, name, steps } = sequence;
  const own = Object.hasOwn(sequences.own, id);
  const followers = Object.values(groups.groups).filter((group) => group.sequence === id);
  const followerNames = sayList(followers.map((group) => group.name));
  const reached = followers.filter(({ step }) => step > 0 && step <= steps.length);
  const ofSchool = sequences.school.includes(id);
  const lang = languageOf(id, sequences);
  const oddities = useMemo(
    () => findOddities(sequence, engine.kind === 'ready' ? engine.engine : null),
    [sequence, engine],
  );
  // A starter opens in the short view, since the titles of its steps say what they teach. A copy made on this page
  // keeps the view that is shown.
  const [isFull, setFull] = useState(own);
  const copying = useRef(false);
  useEffect(() => {
    copying.current = false;
  }, [id]);
  /** Ignores changes while a starter is being copied, since a second click would make a second copy. */
  const change = async (says: string, by: SequenceChange): Promise<void> => {
    if (copying.current) return;
    copying.current = !own;
    await editSequence(id, says, by).catch((error: unknown) => {
      copying.current = false;
      throw error;
    });
  };
  const edit = (says: string, by: (all: Sequence['steps']) => EditedSteps): Promise<void> =>
    change(says, stepChange(by));
  return (
    <div class="sheet">
      <div class="part">
        <TextField
          owner={id}
          label={say('sequences.nameOfSequence')}
          large
          value={name}
          onChange={(changed) =>
            change(say('groups.renamed', { what: name }), (before) => ({
              sequence: { ...before, name: changed },
            }))
          }
        />
        {!own && (
          <p class="note">
            {followers.length > 0
              ? say(ofSchool ? 'sequences.fromSchoolFollowed' : 'sequences.starterFollowed', {
                  groups: followerNames,
                })
              : say(ofSchool ? 'sequences.fromSchool' : 'sequences.starter')}
          </p>
        )}
        {sequence.note && <p>{sequenceNote(sequence)}</p>}
        <p class="row">
          <span class="quiet">
            {say('sequences.countSteps', { count: steps.length })}
            {!own && ` · ${say(`ui.${sequence.accent ?? 'eitherAccent'}`)}`}
            {followers.length > 0 && ` · ${say('sequences.followedBy', { groups: followerNames })}`}
          </span>
          <button
            type="button"
            class="plain"
            onClick={async () => {
              const { id: _, ...copy } = copyOf(sequence, id);
              go({ view: 'sequence', id: await addSequence(say('groups.copied', { what: name }), copy) });
            }}
          >
            {say('groups.copy')}
          </button>
          {own &&
            (followers.length === 0 ? (
              <button
                type="button"
                class="plain"
                onClick={() => {
                  go({ view: 'group', id: null });
                  void deleteSequence(sequence);
                }}
              >
                {say('groups.delete')}
              </button>
            ) : (
              <span class="quiet">{say('sequences.notDeletedYet')}</span>
            ))}
        </p>
        <details class="unfold">
          <summary>{say('sequences.whereFrom')}</summary>
          <p class="quiet">
            <span lang={lang}>{sequence.source}</span>{' '}
            {say('sequences.licence', { licence: sequence.licence })}
          </p>
        </details>
      </div>
      <section class="part" aria-labelledby="order-title">
        <h2 id="order-title">{say('sequences.steps')}</h2>
        <p class="quiet">{say('sequences.aboutSteps')}</p>
        {reached.length > 0 && (
          <p class="row">
            {reached.map(({ name, step }) => (
              <button key={name} type="button" class="plain" onClick={() => showStep(step)}>
                {say('sequences.goToStep', { group: name, step })}
              </button>
            ))}
          </p>
        )}
        <Odd count={oddities.length} sequence={sequence} />
        <label class="tick">
          <input
            type="checkbox"
            checked={isFull}
            onChange={({ currentTarget: { checked } }) => setFull(checked)}
          />{' '}
          {say('sequences.showTaught')}
        </label>
        <StepList
          steps={steps}
          titleAt={(place) => {
            const { title, teaches } = steps[place]!;
            return title || teaches.length > 0
              ? stepTitle({ id: sequence.id, steps }, place + 1)
              : say('sequences.withoutTitle');
          }}
          lang={spokenLanguage() === 'en' ? lang : undefined}
          groupsAt={(place) => reached.filter(({ step }) => step === place + 1).map(({ name }) => name)}
          oddities={oddities}
          isFull={isFull}
          onEdit={edit}
        />
        <button
          type="button"
          class="action"
          onClick={() =>
            void edit(say('sequences.addedStep'), (all) =>
              insertStep(all, all.length, { title: say('sequences.newStep'), teaches: [], bySight: [] }),
            )
          }
        >
          {say('sequences.addAtEnd')}
        </button>
      </section>
    </div>
  );
}

/** Scrolls to a step, counted from 1, and focuses it. */
function showStep(step: number): void {
  const row = document.querySelectorAll<HTMLElement>('.step-open')[step - 1];
  row?.scrollIntoView({ block: 'center' });
  row?.focus({ preventScroll: true });
}

/** Shows the number of oddities and the patterns that are never taught. */
function Odd({ count, sequence }: { count: number; sequence: Sequence }) {
  const [shown, setShown] = useState(false);
  const missing = neverTaught(sequence);
  const families = [...new Set(missing.map(({ family }) => family))];
  return (
    <>
      {count > 0 && <p>{say('sequences.oddThings', { count })}</p>}
      {missing.length > 0 && (
        <details class="unfold" open={shown} onToggle={(event) => setShown(event.currentTarget.open)}>
          <summary>{say('sequences.patternsNeverTaught', { count: missing.length })}</summary>
          {shown && (
            <dl class="taught" lang="en">
              {families.map((family) => (
                <div key={family} class="taught-row">
                  <dt>{family}</dt>
                  <dd>
                    {missing
                      .filter((row) => row.family === family)
                      .map((row) => patternName(row.id))
                      .join('; ')}
                  </dd>
                </div>
              ))}
            </dl>
          )}
        </details>
      )}
    </>
  );
}
