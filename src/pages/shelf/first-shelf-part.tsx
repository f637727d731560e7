import { useState } from 'preact/hooks';
import { say } from '../../wording/say.ts';
import { removeTexts } from './edit-texts.ts';
import { addFirstShelf, isFirstText } from './first-shelf.ts';
import type { IndexedText } from './shelf-index.ts';

/**
 * Says that texts came with the extension, with a button that removes these texts. The removal can be undone. On an
 * empty shelf, a button adds the texts.
 */
export function FirstShelfPart({ texts }: { texts: readonly IndexedText[] }) {
  const ids = texts.filter(isFirstText).map(({ id }) => id);
  const remove = async (): Promise<void> => {
    await removeTexts(ids, (count) => say('shelf.firstRemoved', { count }));
    document.querySelector('main')?.focus();
  };
  if (ids.length > 0)
    return (
      <p class="row quiet">
        <span>{say('shelf.firstHere', { count: ids.length })}</span>
        <button type="button" class="plain" onClick={remove}>
          {say('shelf.firstRemove', { count: ids.length })}
        </button>
      </p>
    );
  if (texts.length > 0) return null;
  return (
    <p class="row">
      <span>{say('shelf.firstOffer')}</span>
      <AddFirstShelf />
    </p>
  );
}

/** Adds the texts that come with the extension and are not yet on the shelf. */
export function FirstShelfSection() {
  const [told, setTold] = useState('');
  return (
    <section class="part" aria-labelledby="first-title">
      <h2 id="first-title">{say('shelf.firstTitle')}</h2>
      <p class="quiet">{say('shelf.firstOffer')}</p>
      <AddFirstShelf
        onDone={(count) => setTold(count === 0 ? say('shelf.firstThere') : say('shelf.added', { count }))}
      />
      <p role="status">{told}</p>
    </section>
  );
}

function AddFirstShelf({ onDone = () => undefined }: { onDone?: (count: number) => void }) {
  return (
    <button type="button" class="plain" onClick={async () => onDone(await addFirstShelf())}>
      {say('shelf.firstAdd')}
    </button>
  );
}
