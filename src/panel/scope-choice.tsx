import { useState } from 'preact/hooks';
import { setScope } from '../host/client.ts';
import type { PageWords, Scope } from '../host/messages.ts';
import './scope-choice.css';
import { say, sayWith, spokenLanguage, type TextId } from '../wording/say.ts';

const SCOPES = [
  ['story', 'panel.mainStory'],
  ['page', 'panel.wholePage'],
  ['selection', 'panel.selection'],
] as const satisfies readonly (readonly [scope: Scope, text: TextId])[];

/** Which text of the page is checked, to be changed at once, and what of it cannot be read from here. */
export function ScopeChoice({ tab, page }: { tab: number; page: PageWords }) {
  const [noStory, setNoStory] = useState(false);
  const choose = async (scope: Scope): Promise<void> => {
    const reached = await setScope(tab, scope);
    setNoStory(scope === 'story' && reached !== 'story');
  };
  const { foreign, restless, takenAway, language } = page;
  return (
    <div class="scope-part">
      <fieldset class="scope">
        <legend class="unseen">{say('panel.textChecked')}</legend>
        {SCOPES.map(([scope, text]) => (
          <label key={scope} class="scope-kind">
            <input
              type="radio"
              name="scope"
              checked={page.scope === scope}
              disabled={scope === 'selection' && !page.selection && page.scope !== 'selection'}
              onChange={() => void choose(scope)}
            />
            <span>{say(text)}</span>
          </label>
        ))}
      </fieldset>
      <div role="status" class="scope-notes">
        {noStory && page.scope === 'page' && <p class="quiet">{say('panel.noStory')}</p>}
        {language !== '' && !/^en\b/i.test(language) && (
          <p class="quiet">{say('panel.otherLanguage', { language: nameLanguage(language) })}</p>
        )}
        {takenAway && <p class="quiet">{say('panel.takenAway')}</p>}
        {restless && <p class="quiet">{say('panel.restless')}</p>}
      </div>
      {foreign.length > 0 && (
        <p class="quiet">
          {sayWith('panel.foreign', {
            frames: foreign.map(({ url, title }, i) => (
              <>
                {i > 0 && ', '}
                <a key={url} href={url} target="_blank" rel="noopener">
                  {title}
                </a>
              </>
            )),
          })}
        </p>
      )}
    </div>
  );
}

/** A language as the reader calls it; its code where that is none a browser knows. */
function nameLanguage(code: string): string {
  try {
    return new Intl.DisplayNames(spokenLanguage(), { type: 'language' }).of(code) ?? code;
  } catch {
    return code;
  }
}
