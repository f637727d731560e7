import { useEffect, useState } from 'preact/hooks';
import { StorageFault } from '../../host/store/store-item.ts';
import { TakeFault } from '../../passage/read-page-text.ts';
import { say } from '../../wording/say.ts';
import { takeFromPage } from './take-from-page.ts';
import { noteSaved, openPassage, type WantedSwap } from './use-desk.ts';

interface TakeViewProps {
  readonly tab: number;
  /** A swap to be made in it, if one was asked for. */
  readonly swap: WantedSwap | null;
  /** Something the teacher should know of what was taken. */
  readonly onNote: (id: string, says: string) => void;
}

/** Takes the text of a page to the desk, and opens it there. */
export function TakeView({ tab, swap, onNote }: TakeViewProps) {
  const [fault, setFault] = useState<string | null>(null);
  useEffect(() => {
    takeFromPage(tab).then(
      ({ id, pictures }) => {
        noteSaved();
        if (pictures > 0) onNote(id, say('files.picturesLeftOut', { count: pictures }));
        openPassage(id, swap);
      },
      (error: unknown) =>
        setFault(
          error instanceof TakeFault || error instanceof StorageFault ? error.message : say('desk.notTaken'),
        ),
    );
  }, [tab]);
  return (
    <p class={fault ? 'note note-wrong' : 'note'} role="status">
      {fault ?? say('desk.taking')}
    </p>
  );
}
