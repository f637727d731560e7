import { parentPort, workerData } from 'node:worker_threads';
import { createVetter, type Vetter, type VetterSettings } from './create-vetter.ts';
import { explainFault } from './explain-fault.ts';
import type { FoundText } from './find-texts.ts';
import { loadEngine } from './load-engine.ts';
import { openText } from './open-text.ts';
import { openWriter } from './open-writer.ts';
import type { OpenedText } from './opened-text.ts';
import type { ReportWriter } from './report-writer.ts';
import { type AnsweredLine, vetLine } from './vet-line.ts';

/** A task for a thread: to open the bytes of a file, to vet files, or to answer a line of JSON. */
export type VetTask =
  | { readonly path: string; readonly bytes: Uint8Array }
  | { readonly texts: readonly FoundText[] }
  | { readonly line: string; readonly number: number };

/** The printed lines of a file. `problem` tells why the file could not be read, and is null if it was read. */
export interface Row {
  readonly path: string;
  readonly problem: string | null;
  readonly row: string;
}

/** The answer to a task: an opened text or the reason why it cannot be opened, a row for each file, or an answered line. */
export type VetAnswer = OpenedText | { readonly error: string } | readonly Row[] | AnsweredLine;

/** Runs in its own thread and answers the tasks one after the other. */
let made: Vetter | undefined;
let writer: ReportWriter | undefined;
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
  const settings = workerData as VetterSettings;
  made ??= createVetter(settings);
  if ('line' in task) return vetLine(task.line, task.number, made.vetText);
  writer ??= openWriter(settings.out, settings.groups);
  const rows: Row[] = [];
  for (const text of task.texts) {
    const record = await made.vetFile(text);
    rows.push({
      path: text.path,
      problem: 'error' in record ? record.error : null,
      row: writer.row(record),
    });
  }
  return rows;
}
