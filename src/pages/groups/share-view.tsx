import { useState } from 'preact/hooks';
import { beginFile } from '../../host/files/wordreach-file.ts';
import { isStarterGroup } from '../../host/store/groups-store.ts';
import { today } from '../../host/store/move-group.ts';
import { loadPresets, watchPresets } from '../../host/store/presets-store.ts';
import './share.css';
import { saveFile } from '../../ui/save-file.ts';
import { useWatched } from '../../ui/use-watched.ts';
import { say } from '../../wording/say.ts';
import { OpenFilePart } from '../files/open-file-part.tsx';
import { SaveEverything } from '../files/save-everything.tsx';
import { OtherBrowsers } from './other-browsers.tsx';
import type { Profiles } from './use-profiles.ts';

/**
 * Saves groups and sequences, or everything, to a file, adds the contents of a file, and copies the data to other
 * browsers.
 */
export function ShareView({ profiles }: { profiles: Profiles }) {
  return (
    <div class="sheet">
      <SaveFile profiles={profiles} />
      <SaveEverything />
      <OpenFilePart />
      <OtherBrowsers />
    </div>
  );
}

function SaveFile({ profiles: { groups, sequences } }: { profiles: Profiles }) {
  // The sample groups are not the teacher’s own. They are saved only if the teacher ticks them.
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
  const own = useWatched(loadPresets, watchPresets) ?? [];
  const chosenPresets = own.filter(({ name }) => !left.has(`preset ${name}`));
  const thing = (kind: string, id: string, name: string): Thing => {
    const key = `${kind} ${id}`;
    return { key, name, isKept: !left.has(key) };
  };
  const save = (): void => {
    const file = beginFile({ whole: false });
    file.add(chosenSequences.map((sequence) => ({ sequence })));
    file.add(chosenGroups.map(([, group]) => ({ group: withNames ? group : { ...group, names: [] } })));
    file.add(chosenPresets.map((preset) => ({ preset })));
    saveFile(`wordreach-${today()}.jsonl`, file.end());
  };
  return (
    <section class="part" aria-labelledby="save-title">
      <h2 id="save-title">{say('groups.saveInAFile')}</h2>
      <p class="quiet">{say('groups.aboutSaving')}</p>
      <Ticks
        legend={say('groups.groups')}
        things={Object.entries(groups.groups).map(([id, { name }]) => thing('group', id, name))}
        onTick={keep}
      />
      <Ticks
        legend={say('groups.yourOwnSequences')}
        things={Object.values(sequences.own).map(({ id, name }) => ({
          ...thing('sequence', id, name),
          isBound: followed.has(id),
        }))}
        onTick={keep}
      />
      <Ticks
        legend={say('groups.presets')}
        things={own.map(({ name }) => thing('preset', name, name))}
        onTick={keep}
      />
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
        disabled={chosenGroups.length + chosenSequences.length + chosenPresets.length === 0}
        onClick={save}
      >
        {say('groups.saveTheFile')}
      </button>
    </section>
  );
}

interface Thing {
  readonly key: string;
  readonly name: string;
  readonly isKept: boolean;
  /** Whether a ticked group follows this sequence. The sequence is then saved with the group. */
  readonly isBound?: boolean;
}

interface TicksProps {
  readonly legend: string;
  readonly things: readonly Thing[];
  readonly onTick: (key: string, kept: boolean) => void;
}

/** Shows the things of one kind, each with a checkbox. Shows nothing if there are no things. */
function Ticks({ legend, things, onTick }: TicksProps) {
  if (things.length === 0) return null;
  return (
    <fieldset class="ticks">
      <legend>{legend}</legend>
      {things.map(({ key, name, isKept, isBound = false }) => (
        <label key={key} class="tick">
          <input
            type="checkbox"
            checked={isBound || isKept}
            disabled={isBound}
            onChange={(event) => onTick(key, event.currentTarget.checked)}
          />{' '}
          {name} {isBound && <span class="quiet">{say('groups.goesWithGroup')}</span>}
        </label>
      ))}
    </fieldset>
  );
}
