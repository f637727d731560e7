import { parentPort, workerData } from 'node:worker_threads';
import { createVetter, type VetterSettings } from './create-vetter.ts';
import type { FoundText } from './find-texts.ts';
import type { TextRecord } from './text-record.ts';
import { type AnsweredLine, vetLine } from './vet-line.ts';

/** What a thread is asked: to vet a file, or to answer a line of JSON. */
export type VetTask = FoundText | { readonly line: string; readonly number: number };

/** What it answers: a record to the former, a line to the latter. */
export type VetAnswer = TextRecord | AnsweredLine;

/** Runs in a thread of its own: answers each task, one after the other. */
const vetter = createVetter(workerData as VetterSettings);
parentPort!.on('message', async (task: VetTask) => {
  const answer: VetAnswer =
    'path' in task ? await vetter.vetFile(task) : vetLine(task.line, task.number, vetter.vetText);
  parentPort!.postMessage(answer);
});
