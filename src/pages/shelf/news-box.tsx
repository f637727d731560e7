import type { Group } from '../../analyze/types.ts';
import { noteSeen } from '../../host/store/shelf-seen.ts';
import { noteEdit } from '../../ui/edit-log.ts';
import { say } from '../../wording/say.ts';
import type { GroupNews } from './find-news.ts';
import { addressOf } from './use-route.ts';

const SHOWN = 5;

/** Shows which texts groups can read since the teacher last looked, until the teacher dismisses the note. */
export function NewsBox({ news }: { news: readonly GroupNews[] }) {
  return (
    <>
      {news
        .filter(({ texts }) => texts.length > 0)
        .map(({ id, group, texts }) => (
          <section key={id} class="note shelf-news" aria-label={say('shelf.newsFor', { group: group.name })}>
            <h2>{say('shelf.nowRead', { count: texts.length, group: group.name })}</h2>
            <ul>
              {texts.slice(0, SHOWN).map((text) => (
                <li key={text.id}>
                  <a href={addressOf({ view: 'text', id: text.id })}>{text.title || say('shelf.untitled')}</a>
                </li>
              ))}
            </ul>
            {texts.length > SHOWN && (
              <p class="quiet">{say('shelf.newsMore', { count: texts.length - SHOWN })}</p>
            )}
            <button
              type="button"
              class="plain"
              onClick={() => {
                void dismiss(id, group);
                document.querySelector('main')?.focus();
              }}
            >
              {say('shelf.putAway')}
              <span class="unseen"> {say('shelf.newsFor', { group: group.name })}</span>
            </button>
          </section>
        ))}
    </>
  );
}

async function dismiss(id: string, group: Group): Promise<void> {
  const before = await noteSeen(id, group);
  if (before)
    noteEdit(
      say('shelf.newsDismissed', { group: group.name }),
      async () => void (await noteSeen(id, before)),
    );
}
