import { useState } from 'preact/hooks';
import { beginFile } from '../../host/files/wordreach-file.ts';
import { today } from '../../host/store/move-group.ts';
import type { Passage } from '../../host/store/passages-store.ts';
import { saveFile } from '../../ui/save-file.ts';
import { say } from '../../wording/say.ts';
import { OpenFilePart } from '../files/open-file-part.tsx';
import { findDraft } from './draft.ts';

/** Saves all passages in a file, with edits that could not be stored of late, and adds the passages of such a file. */
export function AllPassages({ passages }: { passages: readonly Passage[] }) {
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
