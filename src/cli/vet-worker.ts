import { parentPort, workerData } from 'node:worker_threads';
import { createVetter, type Vetter, type VetterSettings } from './create-vetter.ts';
import { explainFault } from './explain-fault.ts';
import type { FoundText } from './find-texts.ts';
import { loadEngine } from './load-engine.ts';
import { openText } from './open-text.ts';
import type { OpenedText } from './opened-text.ts';
import type { TextRecord } from './text-record.ts';
import { type AnsweredLine, vetLine } from './vet-line.ts';

/** What a thread is asked: to open the bytes of a file, to vet a file, or to answer a line of JSON. */
export type VetTask =
  | { readonly path: string; readonly bytes: Uint8Array }
  | FoundText
  | { readonly line: string; readonly number: number };

/** What it answers: the text or why there is none, a record, a line. */
export type VetAnswer = OpenedText | { readonly error: string } | TextRecord | AnsweredLine;

/** Runs in a thread of its own: answers each task, one after the other. */
let made: Vetter | undefined;
parentPort!.on('message', async (task: VetTask) => {
  parentPort!.postMessage('bytes' in task ? await open(task) : await vet(task));
});

async function open({ path, bytes }: { path: string; bytes: Uint8Array }): Promise<VetAnswer> {
  try {
    return await openText(path, bytes, loadEngine);
  } catch (error) {
    return { error: explainFault(error, path) };
  }
}

async function vet(task: Exclude<VetTask, { readonly bytes: Uint8Array }>): Promise<VetAnswer> {
  made ??= createVetter(workerData as VetterSettings);
  return 'path' in task ? made.vetFile(task) : vetLine(task.line, task.number, made.vetText);
}
