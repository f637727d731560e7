import { useState } from 'preact/hooks';
import { PassageFileError, readPassages, writePassages } from '../../host/files/passage-file.ts';
import { today } from '../../host/store/move-group.ts';
import { freePassageId, type Passage, savePassage } from '../../host/store/passages-store.ts';
import { saveFile } from '../../ui/save-file.ts';
import { say } from '../../wording/say.ts';
import { findDraft } from './draft.ts';
import { noteSaved } from './use-desk.ts';

/** Saves all passages in a file, with what could not be stored of late, and adds those of such a file. */
export function AllPassages({ passages }: { passages: readonly Passage[] }) {
  const [says, setSays] = useState<string | null>(null);
  const open = async (file: File | undefined): Promise<void> => {
    if (!file) return;
    try {
      const found = readPassages(await file.text());
      for (const passage of found) await savePassage({ ...passage, id: freePassageId(), rev: 0, saved: 0 });
      noteSaved();
      setSays(say('desk.added', { count: found.length }));
    } catch (error) {
      if (!(error instanceof PassageFileError)) throw error;
      setSays(error.message);
    }
  };
  return (
    <details class="unfold">
      <summary>{say('desk.allPassages')}</summary>
      <div class="part">
        <button
          type="button"
          class="plain"
          disabled={passages.length === 0}
          onClick={() =>
            saveFile(
              `wordreach-passages-${today()}.json`,
              new Blob([writePassages(passages.map((passage) => findDraft(passage.id) ?? passage))], {
                type: 'application/json',
              }),
            )
          }
        >
          {say('desk.saveAll')}
        </button>
        <label>
          <span class="quiet">{say('desk.addFromFile')}</span>
          <input
            type="file"
            class="field"
            accept=".json,application/json"
            onChange={(event) => {
              const field = event.currentTarget;
              void open(field.files?.[0]).finally(() => {
                field.value = '';
              });
            }}
          />
        </label>
        <p class="quiet" role="status">
          {says}
        </p>
      </div>
    </details>
  );
}
