import { useEffect, useMemo, useState } from 'preact/hooks';
import { type CellKind, type ItemChoice, importSequence, readColumns } from '../../analyze/index.ts';
import { findGroup, type Groups } from '../../host/store/groups-store.ts';
import { type ImportChoices, keepImportChoice, loadImportChoices } from '../../host/store/import-choices.ts';
import { moveGroup, today } from '../../host/store/move-group.ts';
import { typedStore } from '../../host/store/typed-store.ts';
import { useTyped } from '../../ui/use-typed.ts';
import { say } from '../../wording/say.ts';
import { ColumnsTable } from './columns-table.tsx';
import { editGroup } from './edit-groups.ts';
import { addSequence } from './edit-sequences.ts';
import { fromPasted, itemsToSettle, stepName } from './from-pasted.ts';
import { NeverTaughtList } from './never-taught-list.tsx';
import './paste.css';
import { PastedSteps } from './pasted-steps.tsx';
import { SettleItem } from './settle-item.tsx';
import { TextField } from './text-field.tsx';
import type { EngineState } from './use-engine.ts';
import { go } from './use-route.ts';

/** Longer than any scope and sequence: one of a whole school has some 20,000 characters. */
const LONGEST = 200_000;
/** What was used stays in its tab, to be settled otherwise and used again. */
const DRAFT = 'pasted-sequence';
/** In English, as what is pasted is. */
const EXAMPLE = 'Week 1: m, s, t, short a. Sight words: the, a\nWeek 2: p, n, short i';

/** Turns a pasted scope and sequence into one of the teacher's own, and shows how each piece was understood. */
export function PasteView({ groups, engine }: { groups: Groups; engine: EngineState }) {
  const { typed, type, done } = useTyped(typedStore, 'pasted sequence');
  const [draft, setDraft] = useState(() => sessionStorage.getItem(DRAFT) ?? '');
  const text = typed ?? draft;
  const [choices, setChoices] = useState<ImportChoices>({});
  const [named, setNamed] = useState<string | null>(null);
  const [follower, setFollower] = useState(groups.chosen);
  const [step, setStep] = useState(1);
  const [columnsOf, setColumnsOf] = useState<{
    readonly heads: string;
    readonly kinds: readonly CellKind[];
  }>();
  useEffect(() => {
    void loadImportChoices().then((kept) => setChoices((made) => ({ ...kept, ...made })));
  }, []);
  const tooLong = text.length > LONGEST;
  const table = useMemo(() => (tooLong ? null : readColumns(text)), [text]);
  const heads = table?.columns.map(({ name }) => name).join('\t') ?? '';
  // What the teacher said of the columns goes as long as the head of the table stays.
  const columns = useMemo(
    () => (columnsOf?.heads === heads ? columnsOf.kinds : (table?.columns.map(({ kind }) => kind) ?? [])),
    [table, heads, columnsOf],
  );
  // Example words count once the engine is here; until then they are read by their shape.
  const words = engine.kind === 'ready' ? engine.engine : undefined;
  const imported = useMemo(
    () => importSequence(tooLong ? '' : text, choices, columns, words),
    [text, choices, columns, words],
  );
  const unaided = useMemo(
    () => importSequence(tooLong ? '' : text, {}, columns, words),
    [text, columns, words],
  );
  const toSettle = useMemo(() => itemsToSettle(unaided), [unaided]);
  const choiceOf = (key: string): ItemChoice | undefined =>
    Object.hasOwn(choices, key) ? choices[key] : undefined;
  const name = named ?? (imported.title.trim() || say('sequences.ourSequence'));

  const lastTaught = Math.min(step, Math.max(1, imported.steps.length));

  const write = (changed: string): void => {
    type(changed);
    try {
      sessionStorage.setItem(DRAFT, changed);
    } catch {
      // Too large to keep for a reload; it stays in the field.
    }
  };
  const choose = (key: string, choice: ItemChoice | null): void => {
    setChoices(({ [key]: _, ...others }) => (choice === null ? others : { ...others, [key]: choice }));
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
        {tooLong && (
          <p class="note" role="alert">
            {say('sequences.tooLong')}
          </p>
        )}
        {text.trim() !== '' && !tooLong && imported.steps.length === 0 && (
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
                onChoose={(column, kind) => setColumnsOf({ heads, kinds: columns.with(column, kind) })}
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
                    choice={choiceOf(key)}
                    onChoose={(choice) => choose(key, choice)}
                  />
                ))}
              </ul>
            </section>
          )}
          <section class="part" aria-labelledby="pasted-title">
            <h2 id="pasted-title">{say('sequences.howUnderstood')}</h2>
            <p class="quiet">{say('sequences.pressAPiece')}</p>
            <PastedSteps imported={imported} unaided={unaided} choiceOf={choiceOf} onChoose={choose} />
          </section>
          <NeverTaughtList imported={imported} engine={engine} group={findGroup(groups, follower)} />
          <section class="part" aria-labelledby="use-title">
            <h2 id="use-title">{say('sequences.useIt')}</h2>
            <TextField
              owner="pasted"
              label={say('sequences.nameOfSequence')}
              value={name}
              onChange={setNamed}
            />
            <div class="picker">
              <label for="follower">{say('sequences.follower')}</label>
              <select
                id="follower"
                class="field"
                value={follower}
                onChange={(event) => setFollower(event.currentTarget.value)}
              >
                {Object.entries(groups.groups).map(([id, group]) => (
                  <option key={id} value={id}>
                    {group.name}
                  </option>
                ))}
                <option value="">{say('sequences.noFollower')}</option>
              </select>
            </div>
            {findGroup(groups, follower) && (
              <div class="picker">
                <label for="last-taught">{say('sequences.lastTaught')}</label>
                <select
                  id="last-taught"
                  class="field"
                  value={lastTaught}
                  onChange={(event) => setStep(Number(event.currentTarget.value))}
                >
                  {imported.steps.map((one, i) => (
                    <option key={i} value={i + 1}>
                      {stepName(one, i)}
                    </option>
                  ))}
                </select>
              </div>
            )}
            <p class="quiet">{say('sequences.aboutUsing')}</p>
            <button type="button" class="action" onClick={() => void use()}>
              {say('sequences.useThis')}
            </button>
          </section>
        </>
      )}
    </div>
  );
}
