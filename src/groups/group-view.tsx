import type { Group, PatternId } from '../analyze/types.ts';
import { changeGroups, freeGroupName, type Groups } from '../host/groups-store.ts';
import { datedMoves, moveGroup, today } from '../host/move-group.ts';
import { findSequence, type Sequences } from '../host/sequences-store.ts';
import { patternLabel } from '../marks/pattern-label.ts';
import { GroupOptionsView } from '../ui/group-options.tsx';
import { addGroup, deleteGroup, editGroup } from './edit-groups.ts';
import { PatternPicker } from './pattern-picker.tsx';
import { ReadNowView } from './read-now-view.tsx';
import { SequenceChoice } from './sequence-choice.tsx';
import { TextField } from './text-field.tsx';
import type { EngineState } from './use-engine.ts';
import { go } from './use-route.ts';
import { WordsField } from './words-field.tsx';

interface GroupViewProps {
  readonly id: string;
  readonly groups: Groups;
  readonly sequences: Sequences;
  readonly engine: EngineState;
}

/** One group: everything a text is checked against, and beside it what that makes readable. */
export function GroupView({ id, groups, sequences, engine }: GroupViewProps) {
  const group = groups.groups[id]!;
  const sequence = findSequence(sequences, group.sequence);
  const edit = (what: string, change: (group: Group) => Group): void =>
    void editGroup(id, `Changed ${what} of ${group.name}`, change);
  const placeOf = (pattern: PatternId): string => {
    const step = sequence?.steps.findIndex(({ teaches }) => teaches.includes(pattern)) ?? -1;
    return step < 0 ? '' : `step ${step + 1}${step < group.step ? ', taught' : ''}`;
  };
  const only = Object.keys(groups.groups).length === 1;
  return (
    <div class="sheet">
      <div class="part">
        <TextField
          label="Name of the group"
          large
          value={group.name}
          onChange={(name) => void editGroup(id, `Renamed ${group.name}`, (now) => ({ ...now, name }))}
        />
        <p class="row">
          {groups.chosen === id ? (
            <span class="quiet">Pages are checked for this group.</span>
          ) : (
            <button
              type="button"
              class="action"
              onClick={() => void changeGroups((all) => ({ ...all, chosen: id }))}
            >
              Check pages for this group
            </button>
          )}
          <button
            type="button"
            class="plain"
            onClick={async () => {
              const name = freeGroupName(`${group.name} (copy)`, groups);
              go({ view: 'group', id: await addGroup(`Copied ${group.name}`, { ...group, name }) });
            }}
          >
            Copy
          </button>
          {only ? (
            <span class="quiet">The last group stays.</span>
          ) : (
            <button
              type="button"
              class="plain"
              onClick={() => {
                go({ view: 'group', id: null });
                void deleteGroup(id);
              }}
            >
              Delete
            </button>
          )}
        </p>
      </div>
      <div class="columns">
        <div class="parts">
          <section class="part" aria-labelledby="steps-title">
            <h2 id="steps-title">Sequence and step</h2>
            <SequenceChoice
              group={group}
              sequences={sequences}
              onMove={(to) => edit('the step', (now) => moveGroup(now, to, today()))}
            />
          </section>
          <section class="part" aria-labelledby="besides-title">
            <h2 id="besides-title">Besides the steps</h2>
            <PatternPicker
              label="Also taught"
              hint="Patterns taught before their step, or without one."
              chosen={group.alsoTaught}
              placeOf={placeOf}
              onAdd={(pattern) =>
                edit('the patterns', (now) => ({
                  ...now,
                  alsoTaught: [...now.alsoTaught, pattern],
                  notYet: now.notYet.filter((other) => other !== pattern),
                }))
              }
              onRemove={(pattern) =>
                edit('the patterns', (now) => ({
                  ...now,
                  alsoTaught: now.alsoTaught.filter((other) => other !== pattern),
                }))
              }
            />
            <PatternPicker
              label="Not yet, after all"
              hint="Patterns of a step they passed that are not secure: they count as not taught."
              chosen={group.notYet}
              placeOf={placeOf}
              onAdd={(pattern) =>
                edit('the exceptions', (now) => ({
                  ...now,
                  notYet: [...now.notYet, pattern],
                  alsoTaught: now.alsoTaught.filter((other) => other !== pattern),
                }))
              }
              onRemove={(pattern) =>
                edit('the exceptions', (now) => ({
                  ...now,
                  notYet: now.notYet.filter((other) => other !== pattern),
                }))
              }
            />
            <WordsField
              label="By-sight words"
              hint="Words taught as wholes, besides those of the steps. With want, wants is known too once -s is taught."
              words={group.bySight}
              onChange={(bySight) => edit('the by-sight words', (now) => ({ ...now, bySight }))}
            />
            <WordsField
              label="Names"
              hint="Pupils, people and places they are told. They are not counted, and stay in this browser."
              words={group.names}
              onChange={(names) => edit('the names', (now) => ({ ...now, names }))}
            />
            <WordsField
              label="Left out"
              hint="What is no word to read, like brr or www. It is neither counted nor shaded."
              words={group.skip ?? []}
              onChange={(skip) => edit('the words left out', (now) => ({ ...now, skip }))}
            />
          </section>
          <section class="part">
            <GroupOptionsView
              options={group.options}
              onChange={(change) =>
                edit('the options', (now) => ({ ...now, options: { ...now.options, ...change } }))
              }
            />
          </section>
        </div>
        <div class="parts">
          <ReadNowView key={id} group={group} sequences={sequences} engine={engine} />
          <History group={group} sequences={sequences} />
        </div>
      </div>
    </div>
  );
}

const DAYS = new Intl.DateTimeFormat('en', {
  day: 'numeric',
  month: 'long',
  year: 'numeric',
  timeZone: 'UTC',
});

/** The days on which the group moved. */
function History({ group, sequences }: { group: Group; sequences: Sequences }) {
  const moves = datedMoves(group);
  if (moves.length === 0) return null;
  return (
    <section class="part" aria-labelledby="history-title">
      <h2 id="history-title">History</h2>
      <ol class="history">
        {moves.map(({ date, step, sequence: id }) => {
          const sequence = findSequence(sequences, id);
          const title = sequence?.steps[step - 1];
          return (
            <li key={date}>
              <time dateTime={date}>{DAYS.format(new Date(date))}</time>: step {step}
              {title && `, ${title.title ?? title.teaches.map(patternLabel).join('; ')}`}
              {sequence && id !== group.sequence && <span class="quiet"> in {sequence.name}</span>}
            </li>
          );
        })}
      </ol>
    </section>
  );
}
