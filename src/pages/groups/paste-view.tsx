import { useEffect, useMemo, useState } from 'preact/hooks';
import type { ImportedSequence, ItemChoice } from '../../analyze/index.ts';
import { findGroup, type Groups } from '../../host/store/groups-store.ts';
import { type ImportChoices, keepImportChoice, loadImportChoices } from '../../host/store/import-choices.ts';
import { moveGroup, today } from '../../host/store/move-group.ts';
import { findSequence, type Sequences } from '../../host/store/sequences-store.ts';
import { typedStore } from '../../host/store/typed-store.ts';
import { useTyped } from '../../ui/use-typed.ts';
import { say } from '../../wording/say.ts';
import { ColumnsTable } from './columns-table.tsx';
import { editGroup } from './edit-groups.ts';
import { addSequence } from './edit-sequences.ts';
import { fromPasted, stepName } from './from-pasted.ts';
import { NeverTaughtList } from './never-taught-list.tsx';
import './paste.css';
import {
  choiceOf,
  findTrouble,
  importWithChoices,
  lastTaughtOf,
  nameOf,
  proposeStep,
  readPastedText,
  type SaidColumns,
  sayColumn,
  settle,
} from './paste-state.ts';
import { PastedSteps } from './pasted-steps.tsx';
import { SettleItem } from './settle-item.tsx';
import { TextField } from './text-field.tsx';
import type { EngineState } from './use-engine.ts';
import { go } from './use-route.ts';

/**
 * The session storage key of the pasted text. A used text is kept in its tab, so that it can be settled differently and
 * used again.
 */
const DRAFT = 'pasted-sequence';
/** The example is in English, like the text to be pasted. */
const EXAMPLE = 'Week 1: m, s, t, short a. Sight words: the, a\nWeek 2: p, n, short i';

interface PasteViewProps {
  readonly groups: Groups;
  readonly sequences: Sequences;
  readonly engine: EngineState;
}

/** Turns a pasted scope and sequence into a sequence of the teacher’s own, and shows how each piece was understood. */
export function PasteView({ groups, sequences, engine }: PasteViewProps) {
  const { typed, type, done } = useTyped(typedStore, 'pasted sequence');
  const [draft, setDraft] = useState(() => sessionStorage.getItem(DRAFT) ?? '');
  const text = typed ?? draft;
  const [choices, setChoices] = useState<ImportChoices>({});
  const [named, setNamed] = useState<string | null>(null);
  const [follower, setFollower] = useState(groups.chosen);
  const [step, setStep] = useState<number | null>(null);
  const [said, setSaid] = useState<SaidColumns | null>(null);
  useEffect(() => {
    void loadImportChoices().then((kept) => setChoices((made) => ({ ...kept, ...made })));
  }, []);
  const words = engine.kind === 'ready' ? engine.engine : undefined;
  const pasted = useMemo(() => readPastedText(text, said, words), [text, said, words]);
  const imported = useMemo(() => importWithChoices(pasted, choices), [pasted, choices]);
  const { table, columns, unaided, toSettle } = pasted;
  const trouble = findTrouble(text, pasted);
  const name = nameOf(imported, named);
  const following = findGroup(groups, follower);
  const proposed = following
    ? proposeStep(imported, following, findSequence(sequences, following.sequence))
    : 1;
  const lastTaught = lastTaughtOf(imported, step ?? proposed);

  const write = (changed: string): void => {
    type(changed);
    try {
      sessionStorage.setItem(DRAFT, changed);
    } catch {
      // The text is too large to survive a reload. It is still in the field.
    }
  };
  const choose = (key: string, choice: ItemChoice | null): void => {
    setChoices((made) => settle(made, key, choice));
    void keepImportChoice(key, choice);
  };
  const use = async (): Promise<void> => {
    const sequence = await addSequence(say('groups.added', { what: name }), fromPasted(imported, name));
    setDraft(text);
    done();
    const group = findGroup(groups, follower);
    if (!group) return go({ view: 'sequence', id: sequence });
    const says = say('sequences.follows', { group: group.name, sequence: name });
    await editGroup(follower, says, (group) => moveGroup(group, { sequence, step: lastTaught }, today()));
    go({ view: 'group', id: follower });
  };

  return (
    <div class="sheet">
      <div class="part">
        <h2>{say('sequences.paste')}</h2>
        <div class="picker">
          <label for="pasted">{say('sequences.yourScope')}</label>
          <p class="quiet" id="pasted-hint">
            {say('sequences.aboutPasting')}
          </p>
          <textarea
            id="pasted"
            class="field pasted-text"
            rows={8}
            spellcheck={false}
            aria-describedby="pasted-hint"
            lang="en"
            dir="ltr"
            placeholder={EXAMPLE}
            value={text}
            onInput={(event) => write(event.currentTarget.value)}
          />
        </div>
        {trouble === 'tooLong' && (
          <p class="note" role="alert">
            {say('sequences.tooLong')}
          </p>
        )}
        {trouble === 'noSteps' && (
          <p class="note" role="status">
            {say('sequences.noSteps')}
          </p>
        )}
      </div>
      {imported.steps.length > 0 && (
        <>
          {table !== null && table.columns.length > 1 && (
            <section class="part" aria-labelledby="columns-title">
              <h2 id="columns-title">{say('sequences.columns')}</h2>
              <p class="quiet">{say('sequences.aboutColumns')}</p>
              <ColumnsTable
                table={table}
                chosen={columns}
                onChoose={(column, kind) => setSaid(sayColumn(pasted, column, kind))}
              />
            </section>
          )}
          {toSettle.length > 0 && (
            <section class="part" aria-labelledby="settle-title">
              <h2 id="settle-title">{say('sequences.lookAtThese')}</h2>
              <p class="quiet">{say('sequences.remembered')}</p>
              <ul class="settle">
                {toSettle.map(({ key, item, step }) => (
                  <SettleItem
                    key={key}
                    item={item}
                    step={step}
                    choice={choiceOf(choices, key)}
                    onChoose={(choice) => choose(key, choice)}
                  />
                ))}
              </ul>
            </section>
          )}
          <section class="part" aria-labelledby="use-title">
            <h2 id="use-title">{say('sequences.useIt')}</h2>
            <TextField
              owner="pasted"
              label={say('sequences.nameOfSequence')}
              value={name}
              onChange={setNamed}
            />
            <FollowerChoice
              {...{ groups, imported, follower, lastTaught }}
              isProposed={step === null}
              onFollower={setFollower}
              onStep={setStep}
            />
            <p class="quiet">{say('sequences.aboutUsing')}</p>
            <button type="button" class="action" onClick={() => void use()}>
              {say('sequences.useThis')}
            </button>
          </section>
          <section class="part" aria-labelledby="pasted-title">
            <h2 id="pasted-title">{say('sequences.howUnderstood')}</h2>
            <p class="quiet">{say('sequences.pressAPiece')}</p>
            <PastedSteps
              imported={imported}
              unaided={unaided}
              choiceOf={(key) => choiceOf(choices, key)}
              onChoose={choose}
            />
          </section>
          <NeverTaughtList imported={imported} engine={engine} group={findGroup(groups, follower)} />
        </>
      )}
    </div>
  );
}

interface FollowerChoiceProps {
  readonly groups: Groups;
  readonly imported: ImportedSequence;
  /** The id of the group, or '' for none. */
  readonly follower: string;
  readonly lastTaught: number;
  /** True if the step is a proposal that the teacher has not confirmed or changed. */
  readonly isProposed: boolean;
  readonly onFollower: (id: string) => void;
  readonly onStep: (step: number) => void;
}

/** Lets the teacher choose the group that will follow the sequence, and the step it was taught last. */
function FollowerChoice(props: FollowerChoiceProps) {
  const { groups, imported, follower, lastTaught, isProposed, onFollower, onStep } = props;
  const group = findGroup(groups, follower);
  return (
    <>
      <div class="picker">
        <label for="follower">{say('sequences.follower')}</label>
        <select
          id="follower"
          class="field"
          value={follower}
          onChange={(event) => onFollower(event.currentTarget.value)}
        >
          {Object.entries(groups.groups).map(([id, group]) => (
            <option key={id} value={id}>
              {group.name}
            </option>
          ))}
          <option value="">{say('sequences.noFollower')}</option>
        </select>
      </div>
      {group && (
        <div class="picker">
          <label for="last-taught">{say('sequences.lastTaught')}</label>
          {isProposed && (
            <p class="quiet">{say('sequences.proposedStep', { step: lastTaught, group: group.name })}</p>
          )}
          <select
            id="last-taught"
            class="field"
            value={lastTaught}
            onChange={(event) => onStep(Number(event.currentTarget.value))}
          >
            {imported.steps.map((one, i) => (
              <option key={i} value={i + 1}>
                {stepName(one, i)}
              </option>
            ))}
          </select>
        </div>
      )}
    </>
  );
}
