import type { Passage } from '../host/passages-store.ts';
import { AllPassages } from './all-passages.tsx';

const day = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });

/** The passages on the desk, the last saved first. */
export function DeskContents({ passages, opened }: { passages: readonly Passage[]; opened: string | null }) {
  return (
    <nav class="contents" aria-label="Passages">
      <h2>Passages</h2>
      <a class="plain" href="#new" aria-current={opened === null ? 'page' : undefined}>
        Put a text on the desk
      </a>
      <ul>
        {passages.map(({ id, title, saved }) => (
          <li key={id}>
            <a href={`#passage/${id}`} aria-current={id === opened ? 'page' : undefined}>
              {title || 'Untitled'}
            </a>
            <p class="quiet">{day.format(saved)}</p>
          </li>
        ))}
      </ul>
      <AllPassages passages={passages} />
    </nav>
  );
}
