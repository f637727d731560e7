import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Group } from '../../analyze/types.ts';
import { type Groups, loadGroups, watchGroups } from '../../host/store/groups-store.ts';
import { withinSequence } from '../../host/store/move-group.ts';
import {
  findSequence,
  loadSequences,
  type Sequences,
  watchSequences,
} from '../../host/store/sequences-store.ts';
import { loadMark, watchMark } from '../../host/store/shelf-mark.ts';
import { loadSeen, noteGroups, noteSeen, watchSeen } from '../../host/store/shelf-seen.ts';
import { StorageFault } from '../../host/store/store-item.ts';
import { FaultNote } from '../../ui/fault-note.tsx';
import { Masthead } from '../../ui/masthead.tsx';
import { useWatched } from '../../ui/use-watched.ts';
import '../../ui/page.css';
import '../../ui/wide-page.css';
import './shelf.css';
import { UndoBar } from '../../ui/undo-line.tsx';
import { say } from '../../wording/say.ts';
import { AddView } from './add-view.tsx';
import { FileView } from './file-view.tsx';
import { findNews } from './find-news.ts';
import { GroupsView } from './groups-view.tsx';
import { NewsBox } from './news-box.tsx';
import type { Order, Wanted } from './sort-texts.ts';
import { TextView } from './text-view.tsx';
import { TextsView } from './texts-view.tsx';
import { type Intake, useIntake } from './use-intake.ts';
import { useRanker } from './use-ranks.ts';
import { addressOf, type Route, useRoute } from './use-route.ts';
import { type ReadyShelf, useShelf } from './use-shelf.ts';

/** The page of the shelf. It shows the vetted texts and which of them fit which group. */
export function ShelfPage() {
  const groups = useWatched(loadGroups, watchGroups);
  const sequences = useWatched(loadSequences, watchSequences);
  const mark = useWatched(loadMark, watchMark);
  const shelf = useShelf();
  const intake = useIntake();
  const route = useRoute();
  const [isRefused, setRefused] = useState(false);
  const isReady = shelf.kind === 'ready' && groups && sequences && mark !== null;
  return (
    <div class="page shelf">
      <Masthead title={say('ui.shelfPage')} page="shelf" />
      <Contents route={route} intake={intake} />
      <main tabIndex={-1}>
        {isReady ? (
          <ShownPart {...{ shelf, groups, sequences, mark, route, intake }} />
        ) : shelf.kind === 'failed' ? (
          <p class="note note-wrong" role="alert">
            {shelf.why}
          </p>
        ) : (
          !isRefused && (
            <p class="note" role="status">
              {shelf.kind === 'loading' && shelf.of > 0
                ? say('shelf.openingSoFar', { done: shelf.done, of: shelf.of })
                : say('shelf.opening')}
            </p>
          )
        )}
      </main>
      <footer class="quiet">{say('shelf.footer')}</footer>
      <UndoBar />
      <FaultNote kind={StorageFault} onFault={setRefused} />
    </div>
  );
}

const VIEWS = [
  { view: 'texts', name: 'shelf.texts' },
  { view: 'groups', name: 'shelf.whichForWhom' },
  { view: 'add', name: 'shelf.addMany' },
  { view: 'file', name: 'shelf.saveOpenDelete' },
] as const;

function Contents({ route, intake }: { route: Route; intake: Intake }) {
  return (
    <nav class="contents" aria-label={say('ui.shelfPage')}>
      <ul>
        {VIEWS.map(({ view, name }) => (
          <li key={view}>
            <a
              href={addressOf({ view })}
              aria-current={
                view === route.view ? 'page' : view === 'texts' && route.view === 'text' ? 'true' : undefined
              }
            >
              {say(name)}
            </a>
            {view === 'add' && intake.running && <p class="quiet">{say('shelf.readingNow')}</p>}
          </li>
        ))}
      </ul>
    </nav>
  );
}

interface ShownPartProps {
  readonly shelf: ReadyShelf;
  readonly groups: Groups;
  readonly sequences: Sequences;
  readonly mark: number;
  readonly route: Route;
  readonly intake: Intake;
}

/** Shows the view that the address names. The search and the choices are kept when the view changes. */
function ShownPart({ shelf, groups, sequences, mark, route, intake }: ShownPartProps) {
  const [picked, setPicked] = useState<string | null>(null);
  const [wanted, setWanted] = useState<Wanted>({ search: '', tag: null });
  const [order, setOrder] = useState<Order>('fit');
  const rank = useRanker(shelf, sequences);
  const groupId = picked !== null && Object.hasOwn(groups.groups, picked) ? picked : groups.chosen;
  const stepOf = (group: Group): number =>
    withinSequence(group, findSequence(sequences, group.sequence)).step;
  const news = useNews(shelf, groups, (group) => rank(shelf.texts, group, mark), [rank, mark]);
  useFocusOnMain(route);
  const shared = { shelf, rank, mark, groups: groups.groups, stepOf };
  switch (route.view) {
    case 'text': {
      const text = shelf.texts.find(({ id }) => id === route.id);
      return text ? (
        <TextView {...{ shelf, text, groups, sequences, groupId }} onGroup={setPicked} />
      ) : (
        <p class="note">
          {say('shelf.textGone')}{' '}
          <a class="plain" href="#texts">
            {say('shelf.allTexts')}
          </a>
        </p>
      );
    }
    case 'groups':
      return <GroupsView {...shared} wanted={wanted} onWanted={setWanted} />;
    case 'add':
      return <AddView {...shared} intake={intake} />;
    case 'file':
      return <FileView shelf={shelf} wanted={wanted} />;
    case 'texts':
      return (
        <>
          <NewsBox news={news} />
          <TextsView
            {...{ shelf, rank, mark, groupId, wanted, order }}
            groups={groups.groups}
            step={stepOf(groups.groups[groupId]!)}
            sequence={findSequence(sequences, groups.groups[groupId]!.sequence)}
            onGroup={setPicked}
            onWanted={setWanted}
            onOrder={setOrder}
          />
        </>
      );
  }
}

/**
 * Returns the texts that groups have become able to read since the news was last dismissed. Moves that made no text
 * readable are noted as seen.
 */
function useNews(
  shelf: ReadyShelf,
  groups: Groups,
  rank: Parameters<typeof findNews>[3],
  inputs: readonly unknown[],
): ReturnType<typeof findNews> {
  const seen = useWatched(loadSeen, watchSeen);
  const news = useMemo(
    () => (seen ? findNews(shelf.texts, groups.groups, seen, rank) : []),
    [shelf.texts, groups, seen, ...inputs],
  );
  useEffect(() => {
    if (seen === null) return;
    void noteGroups(groups);
    for (const { id, group, texts } of news) if (texts.length === 0) void noteSeen(id, group);
  }, [news]);
  return news;
}

/** Moves the focus to the top of a new view, for keyboards, screen readers and narrow windows. */
function useFocusOnMain(route: Route): void {
  const address = addressOf(route);
  const shown = useRef(address);
  useEffect(() => {
    if (shown.current !== address) document.querySelector('main')?.focus();
    shown.current = address;
  }, [address]);
}
