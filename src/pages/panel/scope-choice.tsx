import { useState } from 'preact/hooks';
import type { PageWords, ScopeKind } from '../../contract/page-contract.ts';
import { setScope } from '../../host/page-talk/client.ts';
import './scope-choice.css';
import { say, type TextId } from '../../wording/say.ts';

const SCOPES = [
  ['story', 'panel.mainStory'],
  ['page', 'panel.wholePage'],
  ['selection', 'panel.selection'],
] as const satisfies readonly (readonly [scope: ScopeKind, text: TextId])[];

/** Lets the reader choose which text of the page is checked. The choice takes effect at once. */
export function ScopeChoice({ tab, page }: { tab: number; page: PageWords }) {
  const [noStory, setNoStory] = useState(false);
  const choose = async (scope: ScopeKind): Promise<void> => {
    const reached = await setScope(tab, scope);
    setNoStory(scope === 'story' && reached !== 'story');
  };
  return (
    <div class="scope-part">
      <fieldset class="scope">
        <legend class="unseen">{say('panel.textChecked')}</legend>
        {SCOPES.filter(([scope]) => !page.pdf || scope !== 'page').map(([scope, text]) => (
          <label key={scope} class="scope-kind">
            <input
              type="radio"
              name="scope"
              checked={page.scope === scope}
              disabled={scope === 'selection' && !page.selection && page.scope !== 'selection'}
              onChange={() => void choose(scope)}
            />
            <span>{say(page.pdf && scope === 'story' ? 'panel.chosenPages' : text)}</span>
          </label>
        ))}
      </fieldset>
      <div role="status" class="scope-notes">
        {noStory && page.scope === 'page' && <p class="quiet">{say('panel.noStory')}</p>}
        {page.takenAway && <p class="quiet">{say('panel.takenAway')}</p>}
      </div>
    </div>
  );
}
