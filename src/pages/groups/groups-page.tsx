import { useEffect, useRef } from 'preact/hooks';
import { parseGroup } from '../../analyze/index.ts';
import type { Group } from '../../analyze/types.ts';
import { accentAtFirst, freeGroupName } from '../../host/store/groups-store.ts';
import { findSequence, listSequences } from '../../host/store/sequences-store.ts';
import { StorageFault } from '../../host/store/store-item.ts';
import { FaultNote } from '../../ui/fault-note.tsx';
import { Masthead } from '../../ui/masthead.tsx';
import { say, sayWith } from '../../wording/say.ts';
import '../../ui/page.css';
import '../../ui/wide-page.css';
import { useEditLog } from '../../ui/edit-log.ts';
import { addGroup } from './edit-groups.ts';
import { addSequence, originOf } from './edit-sequences.ts';
import { GroupView } from './group-view.tsx';
import './groups.css';
import { languageOf } from './language-of.ts';
import { PasteView } from './paste-view.tsx';
import { SequenceView } from './sequence-view.tsx';
import { ShareView } from './share-view.tsx';
import { type EngineState, useEngine } from './use-engine.ts';
import { type Profiles, useProfiles } from './use-profiles.ts';
import { addressOf, go, type Route, useRoute } from './use-route.ts';

/** The page for editing groups and sequences: a list of all groups and sequences, and the one that is open. */
export function GroupsPage() {
  const profiles = useProfiles();
  const engine = useEngine();
  const route = useRoute();
  return (
    <div class="page">
      <Masthead title={say('ui.groupsPage')} page="groups" />
      {profiles && (
        <>
          <Contents profiles={profiles} route={route} />
          <main tabIndex={-1}>
            <ShownPart profiles={profiles} route={route} engine={engine} />
          </main>
        </>
      )}
      <footer class="quiet">
        {sayWith('groups.staysHere', { privacy: <a href="privacy.html">{say('groups.privacy')}</a> })}
      </footer>
      <UndoButton />
      <FaultNote kind={StorageFault} />
    </div>
  );
}

/** The part of the page that the address names. */
function ShownPart({ profiles, route, engine }: { profiles: Profiles; route: Route; engine: EngineState }) {
  useFocusOnMain(route.view + ('id' in route ? originOf(route.id ?? '') : ''));
  if (route.view === 'paste') return <PasteView {...profiles} engine={engine} />;
  if (route.view === 'share') return <ShareView profiles={profiles} />;
  const shown = route.view === 'sequence' ? findSequence(profiles.sequences, route.id) : null;
  if (shown) return <SequenceView key={originOf(shown.id)} sequence={shown} engine={engine} {...profiles} />;
  const id = shownGroup(profiles, route);
  return <GroupView key={id} id={id} engine={engine} {...profiles} />;
}

/** Moves the focus to the top of the main part when the view changes, for keyboards, screen readers and narrow windows. */
function useFocusOnMain(view: string): void {
  const shown = useRef(view);
  useEffect(() => {
    if (shown.current !== view) document.querySelector('main')?.focus();
    shown.current = view;
  }, [view]);
}

/** Returns the id of the group in the address, or else of the group that pages are checked for. */
function shownGroup({ groups }: Profiles, route: Route): string {
  return route.view === 'group' && route.id !== null && Object.hasOwn(groups.groups, route.id)
    ? route.id
    : groups.chosen;
}

function Contents({ profiles, route }: { profiles: Profiles; route: Route }) {
  const { groups, sequences } = profiles;
  const unread = Object.keys(groups.unread);
  const describe = ({ sequence: id, step }: Group): string => {
    const sequence = findSequence(sequences, id);
    return sequence
      ? say('groups.stepOfSequence', { step: Math.min(step, sequence.steps.length), sequence: sequence.name })
      : say('groups.noSequence');
  };
  return (
    <nav class="contents" aria-label={say('groups.contents')}>
      <h2>{say('groups.groups')}</h2>
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
              {id === groups.chosen && ` · ${say('groups.checkedForIt')}`}
            </p>
          </li>
        ))}
      </ul>
      {unread.length > 0 && <p class="quiet">{say('groups.unread', { groups: unread.join(', ') })}</p>}
      <button
        type="button"
        class="plain"
        onClick={async () => {
          const name = freeGroupName(say('groups.newGroup'), groups);
          const sequence = sequences.preset ?? groups.groups[groups.chosen]!.sequence;
          const accent = accentAtFirst(findSequence(sequences, sequence));
          const group = parseGroup(
            sequence === null ? { name, accent } : { name, accent, sequence, step: 1 },
          );
          go({ view: 'group', id: await addGroup(say('groups.added', { what: name }), group) });
        }}
      >
        {say('groups.newGroup')}
      </button>
      <h2>{say('groups.sequences')}</h2>
      <ul>
        {listSequences(sequences).map(({ id, name, steps }) => (
          <li key={id}>
            <a
              href={addressOf({ view: 'sequence', id })}
              lang={languageOf(id, sequences)}
              aria-current={route.view === 'sequence' && route.id === id ? 'page' : undefined}
            >
              {name}
            </a>
            <p class="quiet">
              {say('sequences.countSteps', { count: steps.length })}
              {!Object.hasOwn(sequences.own, id) &&
                ` · ${sequences.school.includes(id) ? say('groups.fromSchool') : say('groups.starter')}`}
            </p>
          </li>
        ))}
      </ul>
      <a
        class="plain"
        href={addressOf({ view: 'paste' })}
        aria-current={route.view === 'paste' ? 'page' : undefined}
      >
        {say('groups.pasteASequence')}
      </a>
      <button
        type="button"
        class="plain"
        onClick={async () => {
          const id = await addSequence(say('sequences.addedSequence'), {
            name: say('groups.newSequence'),
            source: say('sequences.madeByTeacher'),
            licence: say('sequences.teachersLicence'),
            steps: [{ title: say('sequences.firstStep'), teaches: [], bySight: [] }],
          });
          go({ view: 'sequence', id });
        }}
      >
        {say('groups.newSequence')}
      </button>
      <h2>{say('groups.files')}</h2>
      <a
        class="plain"
        href={addressOf({ view: 'share' })}
        aria-current={route.view === 'share' ? 'page' : undefined}
      >
        {say('groups.saveOrOpen')}
      </a>
    </nav>
  );
}

/** Names the last change and undoes it, by a click or by Ctrl+Z outside a text field. */
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
    <p class={last ? 'undo' : 'unseen'} role="status">
      {last && (
        <>
          <span>{last.says.endsWith('.') ? last.says : say('groups.done', { what: last.says })}</span>{' '}
          <button type="button" class="plain" onClick={() => void undo()}>
            {say('ui.undo')}
          </button>
        </>
      )}
    </p>
  );
}
