import { useEffect, useRef, useState } from 'preact/hooks';
import { ShelfFileError } from '../../host/files/shelf-file.ts';
import { today } from '../../host/store/move-group.ts';
import { StorageFault } from '../../host/store/store-item.ts';
import { FileDrop } from '../../ui/file-drop.tsx';
import { saveFile } from '../../ui/save-file.ts';
import { say } from '../../wording/say.ts';
import { DeleteQuestion } from './delete-question.tsx';
import { removeTexts } from './edit-texts.ts';
import { FirstShelfSection } from './first-shelf-part.tsx';
import { isWanted, type Wanted } from './sort-texts.ts';
import { packShelf, takeShelfFile } from './take-shelf-file.ts';
import type { ReadyShelf } from './use-shelf.ts';

interface FileViewProps {
  readonly shelf: ReadyShelf;
  /** What is searched for: the texts it finds can be saved or deleted together. */
  readonly wanted: Wanted;
}

/** The whole shelf, or what a search finds, in a file and back; or deleted. */
export function FileView({ shelf, wanted }: FileViewProps) {
  const controller = useRef(new AbortController());
  useEffect(() => () => controller.current.abort(), []);
  const { signal } = controller.current;
  const found = shelf.texts.filter((text) => isWanted(text, wanted));
  const isAll = found.length === shelf.texts.length;
  const ids = new Set(found.map(({ id }) => id));
  return (
    <div class="sheet">
      <section class="part" aria-labelledby="save-title">
        <h2 id="save-title">{say('shelf.saveTitle')}</h2>
        <p class="quiet">{say('shelf.saveHint', { texts: nameTexts(found.length, isAll) })}</p>
        <button
          type="button"
          class="action"
          disabled={found.length === 0}
          onClick={async () =>
            saveFile(`wordreach-shelf-${today()}.jsonl`, await packShelf(isAll ? null : ids, signal))
          }
        >
          {say('shelf.saveFile')}
        </button>
      </section>
      <OpenFile signal={signal} />
      <FirstShelfSection />
      <DeleteTexts key={ids.size} ids={[...ids]} says={nameTexts(found.length, isAll)} />
    </div>
  );
}

function OpenFile({ signal }: { signal: AbortSignal }) {
  const [told, setTold] = useState<{ readonly good: boolean; readonly says: string } | null>(null);
  const open = async (file: File): Promise<void> => {
    setTold({ good: true, says: say('shelf.readingFile') });
    try {
      const { added, there } = await takeShelfFile(file, signal);
      setTold({ good: true, says: describeTaken(added, there) });
    } catch (error) {
      if (signal.aborted) return;
      const isOurs = error instanceof ShelfFileError || error instanceof StorageFault;
      setTold({ good: false, says: isOurs ? error.message : say('shelf.fileFailed') });
    }
  };
  return (
    <section class="part" aria-labelledby="open-title">
      <h2 id="open-title">{say('shelf.openTitle')}</h2>
      <p class="quiet" id="open-hint">
        {say('shelf.openHint')}
      </p>
      <FileDrop
        label={say('shelf.openDrop')}
        labelledBy="open-title"
        describedBy="open-hint"
        accept=".jsonl,application/jsonl"
        onFile={open}
      />
      <div aria-live="polite">
        {told && <p class={told.good ? 'note' : 'note note-wrong'}>{told.says}</p>}
      </div>
    </section>
  );
}

function DeleteTexts({ ids, says }: { ids: readonly string[]; says: string }) {
  const [asking, setAsking] = useState(false);
  if (ids.length === 0) return null;
  return (
    <section class="part" aria-labelledby="delete-title">
      <h2 id="delete-title">{say('shelf.delete')}</h2>
      {asking ? (
        <DeleteQuestion
          says={say('shelf.deleteMany', { texts: says })}
          onDelete={() => {
            void removeTexts(ids);
            document.querySelector('main')?.focus();
          }}
          onKeep={() => setAsking(false)}
        />
      ) : (
        <button type="button" class="plain" onClick={() => setAsking(true)}>
          {say('shelf.deleteThese', { count: ids.length })}
        </button>
      )}
    </section>
  );
}

function nameTexts(n: number, isAll: boolean): string {
  return isAll ? say('shelf.allOfIt', { count: n }) : say('shelf.whatIsFound', { count: n });
}

function describeTaken(added: number, there: number): string {
  if (added === 0) return there === 0 ? say('shelf.noTextInFile') : say('shelf.allHere');
  return there === 0 ? say('shelf.added', { count: added }) : say('shelf.addedOthers', { count: added });
}
