import { accentOf } from '../../analyze/index.ts';
import type { Group, Sequence } from '../../analyze/types.ts';
import { freeGroupName, type Groups } from '../../host/store/groups-store.ts';
import { datedMoves, moveGroup, today } from '../../host/store/move-group.ts';
import { findSequence, type Sequences } from '../../host/store/sequences-store.ts';
import { AccentChoice } from '../../ui/accent-choice.tsx';
import { GroupOptionsView } from '../../ui/group-options.tsx';
import { sayDay } from '../../ui/say-day.ts';
import { stepTitle } from '../../ui/step-title.ts';
import { say, sayWith } from '../../wording/say.ts';
import { addGroup, deleteGroup, editGroup, putInUse } from './edit-groups.ts';
import { EDIT_TEXTS, type EditText, mayDelete, placeOf, putPattern, takePattern } from './group-state.ts';
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

/** Shows one group: everything a text is checked against, and beside it the words that the group can read. */
export function GroupView({ id, groups, sequences, engine }: GroupViewProps) {
  const group = groups.groups[id]!;
  const sequence = findSequence(sequences, group.sequence);
  const edit = (says: EditText, change: (group: Group) => Group): Promise<void> =>
    editGroup(id, say(says, { group: group.name }), change);
  return (
    <div class="sheet">
      <GroupHead id={id} group={group} groups={groups} />
      <div class="columns">
        <div class="parts">
          <section class="part" aria-labelledby="steps-title">
            <h2 id="steps-title">{say('groups.sequenceAndStep')}</h2>
            <SequenceChoice
              group={group}
              sequences={sequences}
              onMove={(to) =>
                edit('groups.changedStep', (now) => withItsAccent(moveGroup(now, to, today()), sequences, to))
              }
            />
            <AccentChoice
              accent={accentOf(group)}
              onChange={(accent) => edit('groups.changedAccent', (now) => ({ ...now, accent }))}
            />
          </section>
          <Besides id={id} group={group} sequence={sequence} edit={edit} />
          <section class="part">
            <GroupOptionsView
              accent={accentOf(group)}
              options={group.options}
              onChange={(change) =>
                edit('groups.changedOptions', (now) => ({ ...now, options: { ...now.options, ...change } }))
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

/** Returns the group with the accent of the sequence it begins to follow, if the sequence was made for one accent. */
function withItsAccent(group: Group, sequences: Sequences, to: { readonly sequence?: string | null }): Group {
  const accent = to.sequence ? findSequence(sequences, to.sequence)?.accent : undefined;
  return accent ? { ...group, accent } : group;
}

interface GroupHeadProps extends Pick<GroupViewProps, 'id' | 'groups'> {
  readonly group: Group;
}

/** The name of a group, and the actions on it as a whole. */
function GroupHead({ id, group, groups }: GroupHeadProps) {
  return (
    <div class="part">
      <TextField
        owner={id}
        label={say('groups.nameOfGroup')}
        large
        value={group.name}
        onChange={(name) =>
          editGroup(id, say('groups.renamed', { what: group.name }), (now) => ({ ...now, name }))
        }
      />
      <p class="row">
        {groups.chosen === id ? (
          <span class="quiet">{say('groups.isChecked')}</span>
        ) : (
          <button
            type="button"
            class="action"
            onClick={() => void putInUse(id, say('groups.nowInUse', { group: group.name }))}
          >
            {say('groups.checkForIt')}
          </button>
        )}
        <button
          type="button"
          class="plain"
          onClick={async () => {
            const name = freeGroupName(say('groups.copyName', { group: group.name }), groups);
            const says = say('groups.copied', { what: group.name });
            go({ view: 'group', id: await addGroup(says, { ...group, name }) });
          }}
        >
          {say('groups.copy')}
        </button>
        {mayDelete(groups.groups) ? (
          <button
            type="button"
            class="plain"
            onClick={() => {
              go({ view: 'group', id: null });
              void deleteGroup(id);
            }}
          >
            {say('groups.delete')}
          </button>
        ) : (
          <span class="quiet">{say('groups.lastStays')}</span>
        )}
      </p>
    </div>
  );
}

const HINTS = { alsoTaught: 'groups.aboutAlsoTaught', notYet: 'groups.aboutNotYet' } as const;

interface BesidesProps {
  readonly id: string;
  readonly group: Group;
  readonly sequence: Sequence | null;
  readonly edit: (says: EditText, change: (group: Group) => Group) => Promise<void>;
}

/** The exceptions of a group besides its steps: patterns, words by sight, names. */
function Besides({ id, group, sequence, edit }: BesidesProps) {
  return (
    <section class="part" aria-labelledby="besides-title">
      <h2 id="besides-title">{say('groups.besides')}</h2>
      {(['alsoTaught', 'notYet'] as const).map((list) => (
        <PatternPicker
          key={list}
          label={say(`groups.${list}`)}
          hint={say(HINTS[list])}
          chosen={group[list]}
          placeOf={(pattern) => placeOf(pattern, group, sequence)}
          onAdd={(pattern) => edit(EDIT_TEXTS[list], (now) => putPattern(now, list, pattern))}
          onRemove={(pattern) => edit(EDIT_TEXTS[list], (now) => takePattern(now, list, pattern))}
        />
      ))}
      <WordsField
        owner={id}
        english
        label={say('groups.bySight')}
        hint={sayWith('groups.aboutBySight', {
          base: english('want'),
          form: english('wants'),
          ending: english('-s'),
        })}
        words={group.bySight}
        onChange={(bySight) => edit('groups.changedBySight', (now) => ({ ...now, bySight }))}
      />
      <WordsField
        owner={id}
        label={say('groups.names')}
        hint={say('groups.aboutNames')}
        words={group.names}
        onChange={(names) => edit('groups.changedNames', (now) => ({ ...now, names }))}
      />
      <WordsField
        owner={id}
        label={say('groups.leftOut')}
        hint={say('groups.aboutLeftOut', { noise: 'brr', address: 'www' })}
        words={group.skip ?? []}
        onChange={(skip) => edit('groups.changedLeftOut', (now) => ({ ...now, skip }))}
      />
    </section>
  );
}

/** Lists the days on which the group moved to another step or sequence. */
function History({ group, sequences }: { group: Group; sequences: Sequences }) {
  const moves = datedMoves(group);
  if (moves.length === 0) return null;
  return (
    <section class="part" aria-labelledby="history-title">
      <h2 id="history-title">{say('groups.history')}</h2>
      <ol class="history">
        {moves.map(({ date, step, sequence: id }, i) => {
          const sequence = findSequence(sequences, id);
          const moved = sequence?.steps[step - 1];
          const day = <time dateTime={date}>{sayDay(Date.parse(date), 'long', 'UTC')}</time>;
          return (
            <li key={moves.length - i}>
              {moved
                ? sayWith('groups.movedToTitled', {
                    day,
                    step,
                    title: stepTitle(sequence, step),
                  })
                : sayWith('groups.movedTo', { day, step })}
              {sequence && id !== group.sequence && (
                <span class="quiet"> {say('groups.inSequence', { sequence: sequence.name })}</span>
              )}
            </li>
          );
        })}
      </ol>
    </section>
  );
}

function english(text: string) {
  return <span lang="en">{text}</span>;
}
