import { useState } from 'preact/hooks';
import { StorageFault } from '../../host/store/store-item.ts';
import { addPassageOnce } from '../../passage/add-passage.ts';
import type { FoundText } from '../../passage/found-text.ts';
import { noteEdit } from '../../ui/edit-log.ts';
import { say } from '../../wording/say.ts';

interface TakeButtonsProps {
  readonly found: FoundText;
  /** The id of the group for which a lesson may be made. */
  readonly group: string;
  /** Called when the text is in a passage or on the shelf. */
  readonly onKept: () => void;
  readonly onPassage: (id: string) => void;
}

/** Buttons that take the text of pictures to the desk, onto the shelf or into a lesson. */
export function TakeButtons({ found, group, onKept, onPassage }: TakeButtonsProps) {
  const [told, setTold] = useState<{ readonly says: string; readonly shelfId?: string } | null>(null);
  if (found.text === '') return null;
  const named = { ...found, title: found.title || firstWords(found.text) };
  const orSay = (done: Promise<void>): void => {
    done.catch((error: unknown) => {
      if (!(error instanceof StorageFault)) throw error;
      setTold({ says: error.message });
    });
  };
  const makePassage = async (go: (id: string) => void): Promise<void> => {
    const { id } = await addPassageOnce(named);
    onKept();
    go(id);
  };
  const shelve = async (): Promise<void> => {
    const [{ countText }, { addToShelf }] = await Promise.all([
      import('../shelf/read-file.ts'),
      import('../shelf/add-to-shelf.ts'),
    ]);
    const counted = await countText(named.text, new AbortController().signal);
    const { id, outcome, undo } = await addToShelf({
      byline: null,
      date: null,
      url: null,
      ...named,
      ...counted,
    });
    onKept();
    const says = say(outcome === 'there' ? 'panel.onShelfAlready' : 'panel.onShelf');
    setTold({ says, shelfId: id });
    if (undo)
      noteEdit(says, async () => {
        await undo();
        setTold(null);
      });
  };
  return (
    <div class="picture-take">
      <p class="row">
        <button type="button" class="action" onClick={() => orSay(makePassage(onPassage))}>
          {say('panel.takeToDesk')}
        </button>
        <button type="button" class="plain" onClick={() => orSay(shelve())}>
          {say('panel.putOnShelf')}
        </button>
        <button
          type="button"
          class="plain"
          onClick={() =>
            orSay(makePassage((id) => location.assign(`/lesson.html#${encodeURIComponent(group)}/${id}`)))
          }
        >
          {say('desk.makeALesson')}
        </button>
      </p>
      <p role="status">
        {told?.says}{' '}
        {told?.shelfId && (
          <a class="plain" href={`/shelf.html#text/${told.shelfId}`} target="_blank" rel="noopener">
            {say('panel.seeThere')}
          </a>
        )}
      </p>
    </div>
  );
}

/** Returns the start of the first line, which is the title until the teacher gives one. */
function firstWords(text: string): string {
  const line = text.split('\n', 1)[0]!.replace(/^#+ /, '');
  return line.length > 60 ? `${line.slice(0, 60).replace(/\s+\S*$/, '')}…` : line;
}
