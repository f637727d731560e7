import { useEffect, useState } from 'preact/hooks';
import type { Look } from '../../contract/page-contract.ts';
import { keepLook, loadLook, watchLook } from '../../host/store/look.ts';
import { say } from '../../wording/say.ts';

/** Whether words are shaded, or only underlined. */
export function LookChoice() {
  const [look, setLook] = useState<Look | null>(null);
  useEffect(() => {
    const controller = new AbortController();
    watchLook(setLook, controller.signal);
    void loadLook().then((loaded) => setLook((known) => known ?? loaded));
    return () => controller.abort();
  }, []);
  return (
    <label class="tick">
      <input
        type="checkbox"
        checked={look === 'underline'}
        onChange={(event) => void keepLook(event.currentTarget.checked ? 'underline' : 'wash')}
      />{' '}
      {say('panel.onlyUnderline')}
    </label>
  );
}
