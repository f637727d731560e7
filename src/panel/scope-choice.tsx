import { useState } from 'preact/hooks';
import { setScope } from '../host/client.ts';
import type { PageWords, Scope } from '../host/messages.ts';
import './scope-choice.css';

const SCOPES: readonly (readonly [scope: Scope, says: string])[] = [
  ['story', 'Main story'],
  ['page', 'Whole page'],
  ['selection', 'Selection'],
];

/** Which text of the page is checked, to be changed at once, and what of it cannot be read from here. */
export function ScopeChoice({ tab, page }: { tab: number; page: PageWords }) {
  const [noStory, setNoStory] = useState(false);
  const choose = async (scope: Scope): Promise<void> => {
    const reached = await setScope(tab, scope);
    setNoStory(scope === 'story' && reached !== 'story');
  };
  const { foreign, restless, takenAway } = page;
  return (
    <div class="scope-part">
      <fieldset class="scope">
        <legend class="unseen">Text that is checked</legend>
        {SCOPES.map(([scope, says]) => (
          <label key={scope} class="scope-kind">
            <input
              type="radio"
              name="scope"
              checked={page.scope === scope}
              disabled={scope === 'selection' && !page.selection && page.scope !== 'selection'}
              onChange={() => void choose(scope)}
            />
            <span>{says}</span>
          </label>
        ))}
      </fieldset>
      <div role="status" class="scope-notes">
        {noStory && page.scope === 'page' && (
          <p class="quiet">
            No main story of some length was found, so the whole page is checked. You can also select the
            text.
          </p>
        )}
        {takenAway && (
          <p class="quiet">
            This page keeps taking the shading away. Take its text to the desk, where it is shaded all the
            same.
          </p>
        )}
        {restless && (
          <p class="quiet">A part of this page keeps changing by itself; that part is not shaded.</p>
        )}
      </div>
      {foreign.length > 0 && (
        <p class="quiet">
          Not read, because it comes from another site:{' '}
          {foreign.map(({ url, title }, i) => (
            <>
              {i > 0 && ', '}
              <a key={url} href={url} target="_blank" rel="noopener">
                {title}
              </a>
            </>
          ))}
          . Open it in a tab of its own to check it.
        </p>
      )}
    </div>
  );
}
