import { useEffect, useMemo, useState } from 'preact/hooks';
import { type ItemChoice, importSequence } from '../analyze/index.ts';
import type { Groups } from '../host/groups-store.ts';
import { type ImportChoices, keepImportChoice, loadImportChoices } from '../host/import-choices.ts';
import { moveGroup, today } from '../host/move-group.ts';
import { editGroup } from './edit-groups.ts';
import { addSequence } from './edit-sequences.ts';
import { fromPasted, itemsToSettle } from './from-pasted.ts';
import './paste.css';
import { PastedSteps } from './pasted-steps.tsx';
import { SettleItem } from './settle-item.tsx';
import { TextField } from './text-field.tsx';
import { go } from './use-route.ts';

/** Longer than any scope and sequence: one of a whole school has some 20,000 characters. */
const LONGEST = 200_000;
const DRAFT = 'pasted-sequence';

/** Turns a pasted scope and sequence into one of the teacher's own, and shows how each piece was understood. */
export function PasteView({ groups }: { groups: Groups }) {
  const [text, setText] = useState(() => sessionStorage.getItem(DRAFT) ?? '');
  const [choices, setChoices] = useState<ImportChoices>({});
  const [named, setNamed] = useState<string | null>(null);
  const [follower, setFollower] = useState(groups.chosen);
  useEffect(() => {
    void loadImportChoices().then((kept) => setChoices((made) => ({ ...kept, ...made })));
  }, []);
  const tooLong = text.length > LONGEST;
  const imported = useMemo(() => importSequence(tooLong ? '' : text, choices), [text, choices]);
  const unaided = useMemo(() => importSequence(tooLong ? '' : text), [text]);
  const toSettle = useMemo(() => itemsToSettle(unaided), [unaided]);
  const choiceOf = (key: string): ItemChoice | undefined =>
    Object.hasOwn(choices, key) ? choices[key] : undefined;
  const name = named ?? (imported.title.trim() || 'Our sequence');

  const write = (changed: string): void => {
    setText(changed);
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
    const sequence = await addSequence(`Added ${name}`, fromPasted(imported, name));
    if (!(follower in groups.groups)) return go({ view: 'sequence', id: sequence });
    await editGroup(follower, `${groups.groups[follower]!.name} follow ${name}`, (group) =>
      moveGroup(group, { sequence, step: 1 }, today()),
    );
    go({ view: 'group', id: follower });
  };

  return (
    <div class="sheet">
      <div class="part">
        <h2>Paste a sequence</h2>
        <div class="picker">
          <label for="pasted">Your scope and sequence</label>
          <p class="quiet" id="pasted-hint">
            Copy it from a document, spreadsheet or web page: a table with a step in each row, or a list with
            a step in each line. Nothing leaves this browser.
          </p>
          <textarea
            id="pasted"
            class="field pasted-text"
            rows={8}
            spellcheck={false}
            aria-describedby="pasted-hint"
            placeholder={'Week 1: m, s, t, short a. Sight words: the, a\nWeek 2: p, n, short i'}
            value={text}
            onInput={(event) => write(event.currentTarget.value)}
          />
        </div>
        {tooLong && (
          <p class="note" role="alert">
            This is too long for a sequence. Paste only the table or list of its steps.
          </p>
        )}
        {text.trim() !== '' && !tooLong && imported.steps.length === 0 && (
          <p class="note" role="status">
            There are no steps in this text. Give each step a line or a row of its own.
          </p>
        )}
      </div>
      {imported.steps.length > 0 && (
        <>
          {toSettle.length > 0 && (
            <section class="part" aria-labelledby="settle-title">
              <h2 id="settle-title">Please look at these</h2>
              <p class="quiet">What you choose is remembered for the next time.</p>
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
            <h2 id="pasted-title">How it was understood</h2>
            <p class="quiet">Press a piece to say that it teaches something else.</p>
            <PastedSteps imported={imported} unaided={unaided} choiceOf={choiceOf} onChoose={choose} />
          </section>
          <section class="part" aria-labelledby="use-title">
            <h2 id="use-title">Use it</h2>
            <TextField label="Name of the sequence" value={name} onChange={setNamed} />
            <div class="picker">
              <label for="follower">Group that follows it</label>
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
                <option value="">None yet</option>
              </select>
            </div>
            <p class="quiet">
              What is not understood is kept as a note of the sequence. Every step can be changed afterwards.
            </p>
            <button type="button" class="action" onClick={() => void use()}>
              Use this sequence
            </button>
          </section>
        </>
      )}
    </div>
  );
}
