import { useEffect } from 'preact/hooks';
import { parseGroup } from '../analyze/index.ts';
import type { Group } from '../analyze/types.ts';
import { findSequence } from '../host/sequences-store.ts';
import '../ui/page.css';
import { addGroup, freeName } from './edit-groups.ts';
import { useEditLog } from './edit-log.ts';
import { GroupView } from './group-view.tsx';
import './groups.css';
import { useEngine } from './use-engine.ts';
import { type Profiles, useProfiles } from './use-profiles.ts';
import { addressOf, go, type Route, useRoute } from './use-route.ts';

/** The page on which groups and sequences are set: a list of them, and the one that is looked at. */
export function GroupsPage() {
  const profiles = useProfiles();
  const engine = useEngine();
  const route = useRoute();
  return (
    <div class="page">
      <header class="masthead">
        <p class="brand">Wordreach</p>
        <h1>Groups</h1>
        <UndoButton />
      </header>
      {profiles && (
        <>
          <Contents profiles={profiles} route={route} />
          <main tabIndex={-1}>
            <GroupView
              key={shownGroup(profiles, route)}
              id={shownGroup(profiles, route)}
              groups={profiles.groups}
              sequences={profiles.sequences}
              engine={engine}
            />
          </main>
        </>
      )}
      <footer class="quiet">
        Everything here stays in this browser. Your school’s programme and your own judgement come first.
      </footer>
    </div>
  );
}

/** The group the address names, or the one pages are checked for. */
function shownGroup({ groups }: Profiles, route: Route): string {
  return route.view === 'group' && route.id !== null && route.id in groups.groups ? route.id : groups.chosen;
}

function Contents({ profiles, route }: { profiles: Profiles; route: Route }) {
  const { groups, sequences } = profiles;
  const unread = Object.keys(groups.unread);
  const describe = ({ sequence: id, step }: Group): string => {
    const sequence = findSequence(sequences, id);
    return sequence ? `step ${Math.min(step, sequence.steps.length)} of ${sequence.name}` : 'no sequence';
  };
  return (
    <nav class="contents" aria-label="Groups and sequences">
      <h2>Groups</h2>
      <ul>
        {Object.entries(groups.groups).map(([id, group]) => (
          <li key={id}>
            <a
              href={addressOf({ view: 'group', id })}
              aria-current={route.view === 'group' && shownGroup(profiles, route) === id ? 'page' : undefined}
            >
              {group.name}
            </a>
            <p class="quiet">
              {describe(group)}
              {id === groups.chosen && ' · pages are checked for it'}
            </p>
          </li>
        ))}
      </ul>
      {unread.length > 0 && (
        <p class="quiet">Kept, but not readable by this version of Wordreach: {unread.join(', ')}.</p>
      )}
      <button
        type="button"
        class="plain"
        onClick={async () => {
          const name = freeName('New group', groups);
          const { sequence } = groups.groups[groups.chosen]!;
          const group = parseGroup(sequence === null ? { name } : { name, sequence, step: 1 });
          go({ view: 'group', id: await addGroup(`Added ${name}`, group) });
        }}
      >
        New group
      </button>
    </nav>
  );
}

/** Takes back what was done last, by a press or by Ctrl+Z outside of a field; says what it was. */
function UndoButton() {
  const { last, undo } = useEditLog();
  useEffect(() => {
    const listen = (event: KeyboardEvent): void => {
      const writing =
        event.target instanceof Element && event.target.matches('input:not([type="checkbox"]), textarea');
      if (writing || event.key.toLowerCase() !== 'z' || !(event.ctrlKey || event.metaKey) || event.shiftKey)
        return;
      event.preventDefault();
      void undo();
    };
    addEventListener('keydown', listen);
    return () => removeEventListener('keydown', listen);
  }, [undo]);
  return (
    <p class="undo" role="status">
      {last && (
        <>
          <span>{last.says}.</span>{' '}
          <button type="button" class="plain" onClick={() => void undo()}>
            Undo
          </button>
        </>
      )}
    </p>
  );
}
