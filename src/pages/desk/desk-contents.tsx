import { useState } from 'preact/hooks';
import { beginFile } from '../../host/files/wordreach-file.ts';
import { today } from '../../host/store/move-group.ts';
import type { Passage } from '../../passage/kept/passage.ts';
import { saveFile } from '../../ui/save-file.ts';
import { sayDay } from '../../ui/say-day.ts';
import { say } from '../../wording/say.ts';
import { OpenFilePart } from '../files/open-file-part.tsx';
import { findDraft } from './draft.ts';

/** The passages on the desk, the most recently saved first. */
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

/** Saves all passages in a file, including recent edits that could not be stored. Adds the passages of such a file. */
function AllPassages({ passages }: { passages: readonly Passage[] }) {
  const [isOpen, setOpen] = useState(false);
  const save = (): void => {
    const file = beginFile({ whole: false });
    file.add(passages.map((passage) => ({ passage: findDraft(passage.id) ?? passage })));
    saveFile(`wordreach-passages-${today()}.jsonl`, file.end());
  };
  return (
    <details class="unfold" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{say('desk.allPassages')}</summary>
      <div class="part">
        <button type="button" class="plain" disabled={passages.length === 0} onClick={save}>
          {say('desk.saveAll')}
        </button>
        {isOpen && <OpenFilePart />}
      </div>
    </details>
  );
}
