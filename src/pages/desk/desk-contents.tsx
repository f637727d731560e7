import type { Passage } from '../../host/store/passages-store.ts';
import { sayDay } from '../../ui/say-day.ts';
import { say } from '../../wording/say.ts';
import { AllPassages } from './all-passages.tsx';

/** The passages on the desk, the last saved first. */
export function DeskContents({ passages, opened }: { passages: readonly Passage[]; opened: string | null }) {
  return (
    <nav class="contents" aria-label={say('desk.passages')}>
      <h2>{say('desk.passages')}</h2>
      <a class="plain" href="#new" aria-current={opened === null ? 'page' : undefined}>
        {say('desk.putATextOnTheDesk')}
      </a>
      <ul>
        {passages.map(({ id, title, saved }) => (
          <li key={id}>
            <a
              href={`#passage/${id}`}
              aria-current={id === opened ? 'page' : undefined}
              lang={title === '' ? undefined : 'en'}
            >
              {title || say('desk.untitled')}
            </a>
            <p class="quiet">{sayDay(saved, 'medium')}</p>
          </li>
        ))}
      </ul>
      <AllPassages passages={passages} />
    </nav>
  );
}
