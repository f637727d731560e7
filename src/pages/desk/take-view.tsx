import { useEffect, useState } from 'preact/hooks';
import { StorageFault } from '../../host/store/store-item.ts';
import { addPassageOnce } from '../../passage/add-passage.ts';
import { readTabText } from '../../passage/files/read-tab.ts';
import { writePageDate } from '../../passage/files/write-page-date.ts';
import { TakeFault } from '../../passage/read-page-text.ts';
import { say } from '../../wording/say.ts';
import { noteSaved, openPassage, type WantedSwap } from './use-desk.ts';

interface TakeViewProps {
  readonly tab: number;
  /** A swap to make in the taken text, if a swap was asked for. */
  readonly swap: WantedSwap | null;
  /** Called with a note for the teacher about the taken text. */
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

/** The outcome of taking a text from a page. */
interface Taken {
  readonly id: string;
  /** The number of pictures that were left out. */
  readonly pictures: number;
}

/**
 * Puts the checked text of a shaded page on the desk, together with its source. A text that is already on the desk is
 * found again. Rejects with `TakeFault` when the page is no longer shaded or has no words, and with `StorageFault` when
 * the text cannot be saved.
 */
async function takeFromPage(tab: number): Promise<Taken> {
  const { page, text, pictures } = await readTabText(tab);
  const { id, isNew } = await addPassageOnce({
    title: page.title,
    text,
    url: page.url || null,
    byline: page.byline,
    date: writePageDate(page.date),
  });
  return { id, pictures: isNew ? pictures : 0 };
}
