import { useState } from 'preact/hooks';
import { listOpenTabs, type OpenTab } from '../../host/page-talk/open-tabs.ts';
import { typedStore } from '../../host/store/typed-store.ts';
import { useTyped } from '../../ui/use-typed.ts';
import { say } from '../../wording/say.ts';
import { matchAddresses } from './match-addresses.ts';

/**
 * Lists pages that are open in tabs, to be ticked or found by pasted addresses. Only pages on which the toolbar button
 * was pressed can be read.
 */
export function TabsPart({ onTake }: { onTake: (tabs: readonly OpenTab[]) => void }) {
  const [found, setFound] = useState<Awaited<ReturnType<typeof listOpenTabs>> | null>(null);
  const [left, setLeft] = useState<ReadonlySet<number>>(new Set());
  const { typed, type: setPasted, done } = useTyped(typedStore, 'addresses');
  const pasted = typed ?? '';
  const [onlySome, setOnlySome] = useState(false);
  const look = async (): Promise<void> => setFound(await listOpenTabs());
  const { matched, missing } = matchAddresses(pasted, found?.readable ?? []);
  const offered = pasted.trim() === '' ? (found?.readable ?? []) : matched;
  const chosen = offered.filter(({ id }) => !left.has(id));
  return (
    <section class="part" aria-labelledby="tabs-title">
      <h2 id="tabs-title">{say('shelf.openPages')}</h2>
      <p class="quiet">{say('shelf.openPagesHint')}</p>
      <button type="button" class="plain" onClick={() => void look()}>
        {found ? say('shelf.lookAgain') : say('shelf.lookForPages')}
      </button>
      <details open={onlySome || pasted !== ''} onToggle={({ currentTarget: { open } }) => setOnlySome(open)}>
        <summary>{say('shelf.onlySome')}</summary>
        <label class="picker">
          <span class="quiet">{say('shelf.addresses')}</span>
          <textarea
            class="field"
            rows={2}
            value={pasted}
            placeholder="https://"
            onInput={(event) => setPasted(event.currentTarget.value)}
          />
        </label>
      </details>
      {found && (
        <div aria-live="polite" class="part">
          {offered.length > 0 && (
            <ul class="shelf-open-tabs">
              {offered.map(({ id, title, url }) => (
                <li key={id}>
                  <label class="tick">
                    <input
                      type="checkbox"
                      checked={!left.has(id)}
                      onChange={({ currentTarget: { checked } }) =>
                        setLeft(new Set(checked ? [...left].filter((other) => other !== id) : [...left, id]))
                      }
                    />{' '}
                    <span>
                      {title || url} <span class="quiet">{url}</span>
                    </span>
                  </label>
                </li>
              ))}
            </ul>
          )}
          {offered.length > 0 && (
            <button
              type="button"
              class="action"
              disabled={chosen.length === 0}
              onClick={() => {
                onTake(chosen);
                // The pasted addresses are kept while some of them have no open tab.
                if (missing.length === 0) done();
              }}
            >
              {say('shelf.readPages', { count: chosen.length })}
            </button>
          )}
          {missing.length > 0 && (
            <div class="note">
              <p>{say('shelf.missingAddresses', { count: missing.length })}</p>
              <ul class="shelf-missing">
                {missing.map((address) => (
                  <li key={address}>{address}</li>
                ))}
              </ul>
            </div>
          )}
          <p class="quiet">{describeClosed(found.readable.length, found.closed)}</p>
        </div>
      )}
    </section>
  );
}

function describeClosed(readable: number, closed: number): string {
  if (readable + closed === 0) return say('shelf.noOtherPage');
  if (closed === 0) return say('shelf.allReadable');
  return say('shelf.closedTabs', { count: closed });
}
