import { useEffect, useState } from 'preact/hooks';
import { changeSyncState, loadSyncState, type SyncState, watchSyncState } from '../host/sync-state.ts';

/** Turns the copying to the browser account on and off, and says what that has no room for. */
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
      <h2 id="others-title">Your other browsers</h2>
      <label class="tick">
        <input
          type="checkbox"
          checked={state.on}
          onChange={({ currentTarget: { checked: on } }) => void changeSyncState((now) => ({ ...now, on }))}
        />{' '}
        Copy groups and sequences to my browser account
      </label>
      <p class="quiet">
        Browsers in which you are signed in to the same account, and tick this too, get them. The names of
        pupils and places are never copied. Once it is turned off, what was copied stays in the account.
      </p>
      {state.on && state.left.length > 0 && (
        <p class="note" role="status">
          The account has no room for {new Intl.ListFormat('en-GB').format(state.left)}. It is all kept in
          this browser; for another one, save a file.
        </p>
      )}
    </section>
  );
}
