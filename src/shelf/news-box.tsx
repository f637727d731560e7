import { noteSeen } from '../host/shelf-seen.ts';
import type { GroupNews } from './find-news.ts';
import { addressOf } from './use-route.ts';

const SHOWN = 5;

/** Says which texts groups came to read since the teacher last looked, until that is put away. */
export function NewsBox({ news }: { news: readonly GroupNews[] }) {
  return (
    <>
      {news
        .filter(({ texts }) => texts.length > 0)
        .map(({ id, group, texts }) => (
          <section key={id} class="note shelf-news" aria-label={`News for ${group.name}`}>
            <h2>
              {texts.length === 1
                ? 'One text now reads'
                : `${texts.length.toLocaleString('en')} texts now read`}{' '}
              for {group.name}
            </h2>
            <ul>
              {texts.slice(0, SHOWN).map((text) => (
                <li key={text.id}>
                  <a href={addressOf({ view: 'text', id: text.id })}>{text.title || 'Untitled'}</a>
                </li>
              ))}
            </ul>
            {texts.length > SHOWN && (
              <p class="quiet">and {texts.length - SHOWN} more, among those that read now</p>
            )}
            <button
              type="button"
              class="plain"
              onClick={() => {
                void noteSeen(id, group);
                document.querySelector('main')?.focus();
              }}
            >
              Put away<span class="unseen"> the news for {group.name}</span>
            </button>
          </section>
        ))}
    </>
  );
}
