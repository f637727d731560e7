import { useEffect, useRef } from 'preact/hooks';
import { type EverythingCounts, packEverything } from '../../host/files/everything-store.ts';
import { today } from '../../host/store/move-group.ts';
import { saveFile } from '../../ui/save-file.ts';
import { sayList } from '../../ui/say-list.ts';
import { say } from '../../wording/say.ts';

/** Saves all that is kept in this browser in one file of a name with the day in it. */
export async function saveEverything(name: string): Promise<void> {
  saveFile(`${name}-${today()}.jsonl`, await packEverything());
}

/** Saves all that is kept in this browser in one file. */
export function SaveEverything() {
  return (
    <section class="part" aria-labelledby="everything-title">
      <h2 id="everything-title">{say('groups.saveEverything')}</h2>
      <p class="quiet">{say('groups.aboutEverything')}</p>
      <button type="button" class="plain" onClick={() => void saveEverything('wordreach-everything')}>
        {say('groups.saveEverything')}
      </button>
    </section>
  );
}

interface RestoreQuestionProps {
  readonly counts: EverythingCounts;
  readonly onReplace: () => void;
  readonly onKeep: () => void;
}

/** Asks before everything here gives way to what a file holds; the focus is on keeping it. */
export function RestoreQuestion({ counts, onReplace, onKeep }: RestoreQuestionProps) {
  const keep = useRef<HTMLButtonElement>(null);
  useEffect(() => keep.current?.focus(), []);
  return (
    <div class="note" role="alert">
      <p>{say('groups.replaceQuestion', { counts: describeCounts(counts) })}</p>
      <p class="row">
        <button type="button" class="plain" onClick={onReplace}>
          {say('groups.replaceAll')}
        </button>
        <button ref={keep} type="button" class="plain" onClick={onKeep}>
          {say('groups.keepAll')}
        </button>
      </p>
    </div>
  );
}

function describeCounts({ groups, sequences, passages, lessons, texts }: EverythingCounts): string {
  const parts = [
    groups > 0 && say('groups.countGroups', { count: groups }),
    sequences > 0 && say('groups.countSequences', { count: sequences }),
    passages > 0 && say('groups.countPassages', { count: passages }),
    lessons > 0 && say('groups.countLessons', { count: lessons }),
    texts > 0 && say('groups.countTexts', { count: texts }),
  ].filter((part) => part !== false);
  return parts.length === 0 ? say('groups.nothingButStarters') : sayList(parts);
}
