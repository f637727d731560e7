import { useEffect, useState } from 'preact/hooks';
import type { Look } from '../../contract/page-contract.ts';
import {
  keepLook,
  keepPrivateMarks,
  loadLook,
  loadPrivateMarks,
  watchLook,
  watchPrivateMarks,
} from '../../host/store/look.ts';
import { say } from '../../wording/say.ts';

/** Lets the reader choose whether words are shaded or only underlined, and whether the page can see the marks. */
export function LookChoice() {
  const [look, setLook] = useState<Look | null>(null);
  const [isPrivate, setPrivate] = useState<boolean | null>(null);
  useEffect(() => {
    const controller = new AbortController();
    watchLook(setLook, controller.signal);
    watchPrivateMarks(setPrivate, controller.signal);
    void loadLook().then((loaded) => setLook((known) => known ?? loaded));
    void loadPrivateMarks().then((loaded) => setPrivate((known) => known ?? loaded));
    return () => controller.abort();
  }, []);
  return (
    <>
      <label class="tick">
        <input
          type="checkbox"
          checked={look === 'underline'}
          onChange={(event) => void keepLook(event.currentTarget.checked ? 'underline' : 'wash')}
        />{' '}
        {say('panel.onlyUnderline')}
      </label>
      <label class="tick">
        <input
          type="checkbox"
          checked={isPrivate === true}
          onChange={(event) => void keepPrivateMarks(event.currentTarget.checked)}
        />{' '}
        {say('panel.privateMarks')}
      </label>
    </>
  );
}
