import { useEffect, useState } from 'preact/hooks';
import { askBackground } from '../../host/page-talk/client.ts';
import { hearMessages } from '../../host/page-talk/hear-messages.ts';
import { readDataAddress } from '../../host/pictures/data-address.ts';
import { isPictureNews } from '../../host/pictures/taken-picture.ts';
import { loadGroups, watchGroups } from '../../host/store/groups-store.ts';
import { loadSequences, watchSequences } from '../../host/store/sequences-store.ts';
import { StorageFault } from '../../host/store/store-item.ts';
import { useAddress } from '../../ui/address.ts';
import { FaultNote } from '../../ui/fault-note.tsx';
import { Masthead } from '../../ui/masthead.tsx';
import { UndoBar } from '../../ui/undo-line.tsx';
import { useWatched } from '../../ui/use-watched.ts';
import { say } from '../../wording/say.ts';
import '../../ui/page.css';
import '../../ui/wide-page.css';
import { PictureView } from './picture-view.tsx';
import type { GivenPicture } from './use-pictures.ts';

/**
 * The page on which pictures of text are read. A picture is a file, or it was taken in a tab and more screens of that
 * tab follow.
 */
export function PicturePage() {
  const groups = useWatched(loadGroups, watchGroups);
  const sequences = useWatched(loadSequences, watchSequences);
  const { given, isGone } = useTaken();
  return (
    <div class="page">
      <Masthead title={say('picture.title')} />
      <main tabIndex={-1}>
        <p class="quiet">{say('picture.about')}</p>
        {isGone && (
          <p class="note" role="status">
            {say('picture.gone')}
          </p>
        )}
        {groups && sequences && (
          <PictureView
            given={given}
            groups={groups}
            sequences={sequences}
            onPassage={(id) => location.assign(`/desk.html#passage/${id}`)}
          />
        )}
      </main>
      <footer class="quiet">{say('desk.deference')}</footer>
      <UndoBar />
      <FaultNote kind={StorageFault} />
    </div>
  );
}

/** Returns the picture that the address names, and further screens of the same tab. */
function useTaken(): { readonly given: readonly GivenPicture[]; readonly isGone: boolean } {
  const id = useAddress(readTaken);
  const [given, setGiven] = useState<readonly GivenPicture[]>([]);
  const [tab, setTab] = useState<number | null>(null);
  const [isGone, setIsGone] = useState(false);
  const take = async (picture: string): Promise<boolean> => {
    const taken = await askBackground('fetchPicture', picture);
    if (!taken) return false;
    const blob = readDataAddress(taken.data);
    setTab(taken.tab);
    setGiven((all) => [...all, { blob, title: taken.title, url: taken.url, isScreen: true }]);
    return true;
  };
  useEffect(() => {
    if (id === null) return;
    take(id).then(
      (isThere) => setIsGone(!isThere),
      () => setIsGone(true),
    );
  }, [id]);
  useEffect(() => {
    if (tab === null) return;
    const controller = new AbortController();
    hearMessages(
      (message) => (isPictureNews(message) && message.tab === tab ? take(message.picture) : undefined),
      controller.signal,
    );
    return () => controller.abort();
  }, [tab]);
  return { given, isGone };
}

function readTaken([view, id = '']: readonly string[]): string | null {
  return view === 'take' && /^[\w-]+$/.test(id) ? id : null;
}
