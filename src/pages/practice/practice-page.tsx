import { useEffect, useRef, useState } from 'preact/hooks';
import { loadButtonShortcut } from '../../host/background/load-shortcuts.ts';
import { findArticle } from '../../overlay/find-article.ts';
import { LoadFault, useLoaded } from '../../ui/use-loaded.ts';
import { say } from '../../wording/say.ts';
import '../../ui/page.css';
import './practice.css';
import { serveOwnPage } from './serve-own-page.ts';

/** Shows a story on which the teacher can try the toolbar button, with the next step beside it. */
export function PracticePage() {
  const [isShaded, setShaded] = useState(false);
  const shortcut = useLoaded(loadButtonShortcut);
  useEffect(() => servePractice(setShaded), []);
  return (
    <>
      <aside class="practice-note">
        <div role="status">
          {isShaded ? (
            <p>
              {say('welcome.practiceShaded')} {say('welcome.practiceThen')}
            </p>
          ) : (
            <>
              <p>
                <img src="/icon/icon.svg" alt="" width="24" height="24" /> {say('welcome.practicePress')}{' '}
                {shortcut &&
                  !(shortcut instanceof LoadFault) &&
                  say('welcome.practiceShortcut', { shortcut })}
              </p>
              <p class="quiet">{say('welcome.practicePin')}</p>
            </>
          )}
        </div>
        <div class="practice-links">
          <a class="plain" href="/groups.html">
            {say('welcome.practiceGroups')}
          </a>
          <a class="plain" href="/help.html">
            {say('ui.helpPage')}
          </a>
        </div>
      </aside>
      <StoryText />
    </>
  );
}

/** Shows the story that comes with the extension, unchanged from its file. */
function StoryText() {
  const place = useRef<HTMLElement>(null);
  useEffect(() => {
    const controller = new AbortController();
    void (async () => {
      const answer = await fetch('/story/index.html', { signal: controller.signal });
      const story = new DOMParser()
        .parseFromString(await answer.text(), 'text/html')
        .querySelector('article');
      if (story && place.current && !controller.signal.aborted)
        place.current.replaceChildren(document.adoptNode(story));
    })();
    return () => controller.abort();
  }, []);
  return <main ref={place} class="practice-story" lang="en" dir="ltr" tabIndex={-1} />;
}

/** Shades the practice page; `onShaded` is told of each start and stop. */
function servePractice(onShaded: (isShaded: boolean) => void): void {
  serveOwnPage({
    article: findArticle,
    onStart: (page, signal) => {
      onShaded(true);
      signal.addEventListener('abort', () => onShaded(false), { once: true });
      return page;
    },
  });
}
