import { useEffect, useRef, useState } from 'preact/hooks';
import { EverythingFileError, isEverythingFile } from '../../host/files/everything-file.ts';
import {
  countEverything,
  type EverythingCounts,
  restoreEverything,
} from '../../host/files/everything-store.ts';
import { LARGEST_FILE, readShareFile, ShareError, writeShareFile } from '../../host/files/share-file.ts';
import { takeIn } from '../../host/files/take-in.ts';
import { changeGroups, isStarterGroup } from '../../host/store/groups-store.ts';
import { today } from '../../host/store/move-group.ts';
import { changeSequences } from '../../host/store/sequences-store.ts';
import { StorageFault } from '../../host/store/store-item.ts';
import { forgetEdits, noteEdit } from '../../ui/edit-log.ts';
import './share.css';
import { FileDrop } from '../../ui/file-drop.tsx';
import { saveFile } from '../../ui/save-file.ts';
import { sayList } from '../../ui/say-list.ts';
import { say } from '../../wording/say.ts';
import { RestoreQuestion, SaveEverything, saveEverything } from './everything-view.tsx';
import { OtherBrowsers } from './other-browsers.tsx';
import type { Profiles } from './use-profiles.ts';

/** Saves groups and sequences, or everything, in a file, adds those of a file, and copies them to other browsers. */
export function ShareView({ profiles }: { profiles: Profiles }) {
  return (
    <div class="sheet">
      <SaveFile profiles={profiles} />
      <SaveEverything />
      <OpenFile profiles={profiles} />
      <OtherBrowsers />
    </div>
  );
}

function SaveFile({ profiles: { groups, sequences } }: { profiles: Profiles }) {
  // The sample groups are nobody's; they go along when they are ticked.
  const [left, setLeft] = useState<ReadonlySet<string>>(
    () =>
      new Set(
        Object.entries(groups.groups)
          .filter(([id, group]) => isStarterGroup(id, group))
          .map(([id]) => `group ${id}`),
      ),
  );
  const [withNames, setWithNames] = useState(false);
  const keep = (key: string, kept: boolean): void =>
    setLeft((now) => new Set(kept ? [...now].filter((other) => other !== key) : [...now, key]));
  const chosenGroups = Object.entries(groups.groups).filter(([id]) => !left.has(`group ${id}`));
  const followed = new Set(chosenGroups.map(([, { sequence }]) => sequence));
  const chosenSequences = Object.values(sequences.own).filter(
    ({ id }) => followed.has(id) || !left.has(`sequence ${id}`),
  );
  const save = (): void => {
    const text = writeShareFile(
      { groups: chosenGroups.map(([, group]) => group), sequences: chosenSequences },
      { withNames },
    );
    saveFile(`wordreach-${today()}.json`, new Blob([text], { type: 'application/json' }));
  };
  return (
    <section class="part" aria-labelledby="save-title">
      <h2 id="save-title">{say('groups.saveInAFile')}</h2>
      <p class="quiet">{say('groups.aboutSaving')}</p>
      <fieldset class="ticks">
        <legend>{say('groups.groups')}</legend>
        {Object.entries(groups.groups).map(([id, { name }]) => (
          <label key={id} class="tick">
            <input
              type="checkbox"
              checked={!left.has(`group ${id}`)}
              onChange={(event) => keep(`group ${id}`, event.currentTarget.checked)}
            />{' '}
            {name}
          </label>
        ))}
      </fieldset>
      {Object.keys(sequences.own).length > 0 && (
        <fieldset class="ticks">
          <legend>{say('groups.yourOwnSequences')}</legend>
          {Object.values(sequences.own).map(({ id, name }) => (
            <label key={id} class="tick">
              <input
                type="checkbox"
                checked={followed.has(id) || !left.has(`sequence ${id}`)}
                disabled={followed.has(id)}
                onChange={(event) => keep(`sequence ${id}`, event.currentTarget.checked)}
              />{' '}
              {name} {followed.has(id) && <span class="quiet">{say('groups.goesWithGroup')}</span>}
            </label>
          ))}
        </fieldset>
      )}
      <label class="tick">
        <input
          type="checkbox"
          checked={withNames}
          onChange={(event) => setWithNames(event.currentTarget.checked)}
        />{' '}
        {say('groups.withNames')}
      </label>
      <button
        type="button"
        class="action"
        disabled={chosenGroups.length + chosenSequences.length === 0}
        onClick={save}
      >
        {say('groups.saveTheFile')}
      </button>
    </section>
  );
}

function OpenFile({ profiles }: { profiles: Profiles }) {
  const [told, setTold] = useState<{ readonly good: boolean; readonly says: string } | null>(null);
  const [whole, setWhole] = useState<{ readonly file: File; readonly counts: EverythingCounts } | null>(null);
  const controller = useRef(new AbortController());
  useEffect(() => () => controller.current.abort(), []);
  const { signal } = controller.current;
  const open = async (file: File): Promise<void> => {
    setWhole(null);
    setTold(null);
    try {
      if (await isEverythingFile(file)) {
        setTold({ good: true, says: say('groups.readingFile') });
        setWhole({ file, counts: await countEverything(file, signal) });
        return setTold(null);
      }
      if (file.size > LARGEST_FILE) throw new ShareError(say('host.tooLarge'));
      const added = await addContent(await file.text(), profiles);
      setTold(added ? null : { good: true, says: say('groups.allHere') });
    } catch (error) {
      if (!signal.aborted) setTold({ good: false, says: sayWhyNot(error) });
    }
  };
  const replace = async (file: File): Promise<void> => {
    setWhole(null);
    setTold({ good: true, says: say('groups.bringingBack') });
    try {
      await saveEverything('wordreach-before-restoring');
      await restoreEverything(file, signal);
      forgetEdits();
      setTold({ good: true, says: say('groups.broughtBack') });
    } catch (error) {
      if (!signal.aborted) setTold({ good: false, says: sayWhyNot(error) });
    }
  };
  return (
    <section class="part" aria-labelledby="open-title">
      <h2 id="open-title">{say('groups.openAFile')}</h2>
      <p class="quiet" id="open-hint">
        {say('groups.aboutOpening')}
      </p>
      <FileDrop
        label={say('groups.chooseAFile')}
        labelledBy="open-title"
        describedBy="open-hint"
        accept=".json,.jsonl,application/json,application/jsonl"
        onFile={open}
      />
      {whole && (
        <RestoreQuestion
          counts={whole.counts}
          onReplace={() => void replace(whole.file)}
          onKeep={() => setWhole(null)}
        />
      )}
      <div aria-live="polite">
        {told && <p class={told.good ? 'note' : 'note note-wrong'}>{told.says}</p>}
      </div>
    </section>
  );
}

function sayWhyNot(error: unknown): string {
  if (error instanceof StorageFault) return error.message;
  const isOurs = error instanceof ShareError || error instanceof EverythingFileError;
  return say('groups.nothingChanged', { fault: isOurs ? error.message : say('groups.fileNotRead') });
}

/** Adds what a file holds, in a way that can be undone; false when all of it is here. Throws `ShareError`. */
async function addContent(text: string, here: Profiles): Promise<boolean> {
  const added = takeIn(readShareFile(text), here);
  const groups = Object.values(added.groups).map(({ name }) => name);
  const sequences = Object.values(added.sequences).map(({ name }) => name);
  const all = [...groups, ...sequences];
  if (all.length === 0) return false;
  await changeSequences((own) => ({ ...own, ...added.sequences }));
  await changeGroups((now) => ({ ...now, groups: { ...now.groups, ...added.groups } })).catch(
    async (error: unknown) => {
      await changeSequences((own) => without(own, added.sequences));
      throw error;
    },
  );
  noteEdit(say('groups.added', { what: sayList(all) }), async () => {
    await changeGroups((now) => ({ ...now, groups: without(now.groups, added.groups) }));
    await changeSequences((own) => without(own, added.sequences));
  });
  return true;
}

function without<T>(items: Readonly<Record<string, T>>, taken: object): Readonly<Record<string, T>> {
  return Object.fromEntries(Object.entries(items).filter(([id]) => !Object.hasOwn(taken, id)));
}
