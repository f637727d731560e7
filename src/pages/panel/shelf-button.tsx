import { useEffect, useState } from 'preact/hooks';
import { noteEdit } from '../../ui/edit-log.ts';
import { say } from '../../wording/say.ts';

type State =
  | { readonly kind: 'asked' | 'working' }
  | { readonly kind: 'done'; readonly id: string; readonly says: string }
  | { readonly kind: 'failed'; readonly why: string };

/**
 * Puts the words of the page on the shelf, and also its text if the teacher ticks that option. `version` changes when
 * another text of the page is checked.
 */
export function ShelfButton({ tab, version }: { tab: number; version: unknown }) {
  const [keepsText, setKeepsText] = useState(false);
  const [state, setState] = useState<State>({ kind: 'asked' });
  useEffect(() => setState({ kind: 'asked' }), [version]);
  const putOn = async (): Promise<void> => {
    setState({ kind: 'working' });
    // Loaded on demand, because the panel opens at every click on the button and this function is seldom used.
    const { putTab } = await import('../shelf/put-tab.ts');
    const put = await putTab(tab, keepsText);
    if ('why' in put) setState({ kind: 'failed', why: put.why });
    else {
      const isThere = put.outcome === 'there';
      setState({ kind: 'done', id: put.id, says: isThere ? say('panel.onShelfAlready') : '' });
      if (put.undo)
        noteEdit(isThere ? say('panel.textKept') : say('panel.onShelf'), async () => {
          await put.undo?.();
          setState({ kind: 'asked' });
        });
    }
  };
  return (
    <>
      <span class="page-tools">
        <button type="button" class="tool" disabled={state.kind === 'working'} onClick={() => void putOn()}>
          {say('panel.putOnShelf')}
        </button>
        <label class="tick quiet">
          <input
            type="checkbox"
            checked={keepsText}
            onChange={(event) => setKeepsText(event.currentTarget.checked)}
          />{' '}
          {say('panel.withText')}
        </label>
      </span>
      <span role="status">
        {state.kind === 'done' && (
          <>
            {state.says}{' '}
            <a class="plain" href={`/shelf.html#text/${state.id}`} target="_blank" rel="noopener">
              {say('panel.seeThere')}
            </a>
          </>
        )}
        {state.kind === 'failed' && state.why}
      </span>
    </>
  );
}
