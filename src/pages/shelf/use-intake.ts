import { useEffect, useRef, useState } from 'preact/hooks';
import type { WordKey } from '../../analyze/types.ts';
import type { OpenTab } from '../../host/page-talk/open-tabs.ts';
import { StorageFault } from '../../host/store/store-item.ts';
import { FileFault } from '../../passage/files/file-fault.ts';
import { TakeFault } from '../../passage/read-page-text.ts';
import { createPause } from '../../ui/create-pause.ts';
import { say } from '../../wording/say.ts';
import { addToShelf, type VettedText } from './add-to-shelf.ts';
import { createIntakeQueue, type IntakeQueue, type IntakeSource, type IntakeView } from './intake-queue.ts';
import { readFile } from './read-file.ts';
import { readTab } from './read-tab.ts';

/** The outcome of one file or page. */
export interface IntakeResult {
  readonly shelved: number;
  /** The number of texts that were already on the shelf. */
  readonly there: number;
  /** The texts that were not added to the shelf and are only shown in a table. */
  readonly looked: readonly VettedText[];
}

/** The choices for the texts that are read. */
export interface IntakeChoices {
  readonly goesTo: 'shelf' | 'table';
  readonly keepsText: boolean;
  readonly tags: readonly string[];
  /** Looks up a word in advance, so that the table appears without delay. */
  readonly lookUp: (key: WordKey) => void;
}

/** The reading of many texts. It continues as long as the page is open. */
export interface Intake extends IntakeView<IntakeResult> {
  readonly queue: IntakeQueue<IntakeResult>;
  addFiles(files: readonly File[], choices: IntakeChoices): void;
  addTabs(tabs: readonly OpenTab[], choices: IntakeChoices): void;
}

/** Reads files and open pages one after the other, whichever view of the page is shown. */
export function useIntake(): Intake {
  const [view, setView] = useState<IntakeView<IntakeResult>>({ items: [], running: false });
  const controller = useRef(new AbortController());
  const queue = useRef<IntakeQueue<IntakeResult> | null>(null);
  queue.current ??= createIntakeQueue({ onChange: setView, sayWhy, signal: controller.current.signal });
  useEffect(() => () => controller.current.abort(), []);
  useEffect(() => {
    if (!view.running) return;
    // The browser asks for confirmation before the page is left, because texts that are not read yet would have to be
    // chosen again.
    const leaving = new AbortController();
    addEventListener('beforeunload', (event) => event.preventDefault(), { signal: leaving.signal });
    return () => leaving.abort();
  }, [view.running]);
  const add = (sources: readonly IntakeSource<IntakeResult>[]): void => queue.current!.add(sources);
  return {
    ...view,
    queue: queue.current,
    addFiles: (files, choices) =>
      add(
        files.map((file) => ({
          name: file.name,
          read: async (signal) => settle(await readFile(file, choices.keepsText, signal), choices),
        })),
      ),
    addTabs: (tabs, choices) =>
      add(
        tabs.map(({ id, title, url }) => ({
          name: title || url,
          read: async () => settle([await readTab(id, choices.keepsText)], choices),
        })),
      ),
  };
}

/** Handles the texts by the choices that were made when the files or pages were added. */
async function settle(
  texts: readonly VettedText[],
  { goesTo, tags, lookUp }: IntakeChoices,
): Promise<IntakeResult> {
  if (goesTo === 'table') {
    const pause = createPause();
    for (const [key] of texts.flatMap(({ words }) => words)) {
      await pause();
      lookUp(key);
    }
    return { shelved: 0, there: 0, looked: texts };
  }
  const result = { shelved: 0, there: 0 };
  for (const text of texts) result[(await addToShelf(text, tags)).outcome]++;
  return { ...result, looked: [] };
}

function sayWhy(error: unknown): string {
  if (error instanceof FileFault || error instanceof StorageFault || error instanceof TakeFault)
    return error.message;
  return say('shelf.itemFailed');
}
