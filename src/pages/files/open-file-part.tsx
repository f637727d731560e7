import { useEffect, useRef, useState } from 'preact/hooks';
import { restoreEverything } from '../../host/files/everything-store.ts';
import {
  type FileCounts,
  type FileLook,
  lookIntoFile,
  type Taking,
  takeFile,
} from '../../host/files/take-file.ts';
import { isFileError } from '../../host/files/wordreach-file.ts';
import { StorageFault } from '../../host/store/store-item.ts';
import { forgetEdits, noteEdit } from '../../ui/edit-log.ts';
import { FileDrop } from '../../ui/file-drop.tsx';
import { say } from '../../wording/say.ts';
import { saveEverything } from './save-everything.tsx';
import './files.css';
import { describeCounts, TakeQuestion } from './take-question.tsx';

/** Opens any file that Wordreach saved. Asks first when something in this browser would change. */
export function OpenFilePart() {
  const [told, setTold] = useState<{ readonly good: boolean; readonly says: string } | null>(null);
  const [asked, setAsked] = useState<{ readonly file: File; readonly look: FileLook } | null>(null);
  const controller = useRef(new AbortController());
  useEffect(() => () => controller.current.abort(), []);
  const { signal } = controller.current;

  /** Says that the file is being read. If the file cannot be read, says why. */
  async function attempt(says: string, work: () => Promise<void>): Promise<void> {
    setAsked(null);
    setTold({ good: true, says });
    try {
      await work();
    } catch (error) {
      if (!signal.aborted) setTold({ good: false, says: sayWhyNot(error) });
    }
  }
  const open = (file: File): Promise<void> =>
    attempt(say('groups.readingFile'), async () => {
      const look = await lookIntoFile(file, signal);
      if (!look.whole && look.clashes.length === 0) return add(file, 'add');
      setTold(null);
      setAsked({ file, look });
    });
  async function add(file: File, how: Taking): Promise<void> {
    if (how === 'merge') await saveEverything('wordreach-before-merging');
    const { added, changed, undo } = await takeFile(file, how, signal);
    const parts = [
      hasAny(added) && say('groups.tookIn', { counts: describeCounts(added) }),
      hasAny(changed) && say('groups.updated', { counts: describeCounts(changed) }),
    ].filter((part) => part !== false);
    if (parts.length === 0) return setTold({ good: true, says: say('groups.allHere') });
    setTold(null);
    noteEdit(parts.join(' '), undo);
  }
  const take = (file: File, how: Taking | 'replace'): Promise<void> =>
    attempt(how === 'replace' ? say('groups.bringingBack') : say('groups.readingFile'), async () => {
      if (how !== 'replace') return add(file, how);
      await saveEverything('wordreach-before-restoring');
      await restoreEverything(file, signal);
      forgetEdits();
      setTold({ good: true, says: say('groups.broughtBack') });
    });
  return (
    <section class="part" aria-labelledby="open-title">
      <h2 id="open-title">{say('groups.openAFile')}</h2>
      <p class="quiet" id="open-hint">
        {say('groups.aboutOpening')}
      </p>
      <FileDrop
        label={say('groups.chooseAFile')}
        labelledBy="open-title"
        describedBy="open-hint"
        accept=".json,.jsonl,application/json,application/jsonl"
        onFile={open}
      />
      {asked && (
        <TakeQuestion
          look={asked.look}
          onTake={(how) => void take(asked.file, how)}
          onKeep={() => setAsked(null)}
        />
      )}
      <div aria-live="polite">
        {told && <p class={told.good ? 'note' : 'note note-wrong'}>{told.says}</p>}
      </div>
    </section>
  );
}

function hasAny(counts: FileCounts): boolean {
  return Object.values(counts).some((count) => count > 0);
}

function sayWhyNot(error: unknown): string {
  if (error instanceof StorageFault) return error.message;
  return say('groups.nothingChanged', {
    fault: isFileError(error) ? error.message : say('groups.fileNotRead'),
  });
}
