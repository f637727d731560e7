import { useEffect, useState } from 'preact/hooks';
import { loadGroups } from '../host/groups-store.ts';
import { noteGroups } from '../host/shelf-seen.ts';
import { StorageFault } from '../host/store-item.ts';
import { TakeFault } from '../passage/read-page-text.ts';
import { addToShelf } from '../shelf/add-to-shelf.ts';
import { readTab } from '../shelf/read-tab.ts';

type State =
  | { readonly kind: 'asked' | 'working' }
  | { readonly kind: 'done'; readonly id: string; readonly says: string }
  | { readonly kind: 'failed'; readonly why: string };

/**
 * Puts the words of the page on the shelf; its text too, if the teacher ticks that. `version` changes when another text of
 * the page is checked.
 */
export function ShelfButton({ tab, version }: { tab: number; version: unknown }) {
  const [keepsText, setKeepsText] = useState(false);
  const [state, setState] = useState<State>({ kind: 'asked' });
  useEffect(() => setState({ kind: 'asked' }), [version]);
  const put = async (): Promise<void> => {
    setState({ kind: 'working' });
    try {
      const { id, outcome } = await addToShelf(await readTab(tab, keepsText));
      // Where the groups are now is what later moves are told from.
      await noteGroups(await loadGroups());
      setState({
        kind: 'done',
        id,
        says: outcome === 'there' ? 'It is on the shelf already.' : 'It is on the shelf.',
      });
    } catch (error) {
      const isOurs = error instanceof StorageFault || error instanceof TakeFault;
      setState({
        kind: 'failed',
        why: isOurs
          ? error.message
          : 'The page could not be read. Press the Wordreach button there, and try again.',
      });
    }
  };
  return (
    <div class="shelf-button">
      <p class="page-tools">
        <button type="button" class="plain" disabled={state.kind === 'working'} onClick={() => void put()}>
          Put on the shelf
        </button>
        <label class="tick quiet">
          <input
            type="checkbox"
            checked={keepsText}
            onChange={(event) => setKeepsText(event.currentTarget.checked)}
          />{' '}
          with its text
        </label>
        <a class="plain" href="/shelf.html" target="_blank" rel="noopener">
          Open the shelf
        </a>
      </p>
      <p role="status">
        {state.kind === 'done' && (
          <>
            {state.says}{' '}
            <a class="plain" href={`/shelf.html#text/${state.id}`} target="_blank" rel="noopener">
              See it there
            </a>
          </>
        )}
        {state.kind === 'failed' && state.why}
      </p>
    </div>
  );
}
