import { useEffect, useState } from 'preact/hooks';
import {
  changeSyncState,
  loadSyncState,
  type SyncState,
  watchSyncState,
} from '../../host/sync/sync-state.ts';
import { sayList } from '../../ui/say-list.ts';
import { say } from '../../wording/say.ts';

/** Turns copying to the browser account on or off, and lists what does not fit into the account. */
export function OtherBrowsers() {
  const [state, setState] = useState<SyncState | null>(null);
  useEffect(() => {
    const controller = new AbortController();
    watchSyncState(setState, controller.signal);
    void loadSyncState().then((loaded) => setState((known) => known ?? loaded));
    return () => controller.abort();
  }, []);
  if (!state) return null;
  return (
    <section class="part" aria-labelledby="others-title">
      <h2 id="others-title">{say('groups.otherBrowsers')}</h2>
      <label class="tick">
        <input
          type="checkbox"
          checked={state.on}
          onChange={({ currentTarget: { checked: on } }) => void changeSyncState((now) => ({ ...now, on }))}
        />{' '}
        {say('groups.copyToAccount')}
      </label>
      <p class="quiet">{say('groups.aboutAccount')}</p>
      {state.on && state.left.length > 0 && (
        <p class="note" role="status">
          {say('groups.noRoom', { what: sayList(state.left) })}
        </p>
      )}
    </section>
  );
}
