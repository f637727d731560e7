import { useEffect, useRef, useState } from 'preact/hooks';
import { today } from '../../host/store/move-group.ts';
import { saveFile } from '../../ui/save-file.ts';
import { say } from '../../wording/say.ts';
import { OpenFilePart } from '../files/open-file-part.tsx';
import { DeleteQuestion } from './delete-question.tsx';
import { removeTexts } from './edit-texts.ts';
import { FirstShelfSection } from './first-shelf-part.tsx';
import { packShelf } from './pack-shelf.ts';
import { isWanted, type Wanted } from './sort-texts.ts';
import type { ReadyShelf } from './use-shelf.ts';

interface FileViewProps {
  readonly shelf: ReadyShelf;
  /** The search. The texts it finds can be saved or deleted together. */
  readonly wanted: Wanted;
}

/** Saves the whole shelf, or the texts a search finds, to a file; opens such a file again; or deletes the texts. */
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
      <OpenFilePart />
      <FirstShelfSection />
      <DeleteTexts key={ids.size} ids={[...ids]} says={nameTexts(found.length, isAll)} />
    </div>
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
