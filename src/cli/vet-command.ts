import { basename } from 'node:path';
import { createJudge, vet } from '../analyze/index.ts';
import { FileFault } from '../passage/files/file-fault.ts';
import { countWords, expectWords, shareOf } from './count-words.ts';
import { describeReport } from './describe-report.ts';
import { explainFault } from './explain-fault.ts';
import { type FoundText, findTexts } from './find-texts.ts';
import { expectTable, loadEngine } from './load-engine.ts';
import { type LoadedGroup, loadGroup } from './load-group.ts';
import { isPlainText, openText } from './open-text.ts';
import type { OpenedText } from './opened-text.ts';
import { readBytes } from './read-file.ts';
import { readVetOptions, VET_HELP } from './read-vet-options.ts';
import { InputError } from './run-command.ts';
import { hasThreads, startPool } from './start-pool.ts';
import { openTerminal } from './terminal.ts';
import { vetLines } from './vet-lines.ts';
import { vetMany } from './vet-many.ts';

/**
 * Runs `vet` with its arguments and returns the text that is still to be printed. Rejects with errors that `runCommand`
 * turns into a sentence.
 */
export async function vetCommand(args: readonly string[]): Promise<string | undefined> {
  const options = readVetOptions([...args]);
  if (options.help) return VET_HELP;
  const groups = options.groups.map(loadGroup);
  expectTable();
  if (options.jsonl) return vetLines(options, groups);
  const texts = await findTexts(options.sources);
  if (texts.length === 1 && groups.length === 1 && options.out === null)
    return vetOne(texts[0]!, groups[0]!, options.json);
  if (options.json)
    throw new InputError(`--json is the report of one text, and there are ${texts.length}; give --out json.`);
  return vetMany(texts, options, groups);
}

/** Returns the whole report of one text. Plain text is read without a thread, which saves the thread's start time. */
async function vetOne(
  { path, error }: FoundText,
  loaded: LoadedGroup,
  json: boolean,
): Promise<string | undefined> {
  try {
    if (error !== null) throw new FileFault(error);
    const engine = loadEngine();
    const bytes = readBytes(path);
    const { text } =
      isPlainText(path, bytes) || !hasThreads
        ? await openText(path, bytes, () => engine)
        : await openInThread(path, bytes);
    const report = vet(expectWords(countWords(text)), createJudge(engine, loaded.compiled));
    if (json)
      return JSON.stringify({ ...report, tally: { ...report.tally, reach: shareOf(report.tally) } }, null, 2);
    return describeReport(report, loaded, path === '-' ? 'stdin' : basename(path), openTerminal());
  } catch (error) {
    process.stderr.write(`${path}: ${explainFault(error, path)}\n`);
    process.exitCode = 1;
    return undefined;
  }
}

/**
 * Opens a file that is not plain text in a thread with limits, since such a file may take forever. Rejects with
 * `FileFault`.
 */
async function openInThread(path: string, bytes: Uint8Array): Promise<OpenedText> {
  const pool = startPool<{ path: string; bytes: Uint8Array }, OpenedText | { error: string }>(
    { groups: [], words: false, out: 'json' },
    1,
  );
  try {
    const opened = await pool.run({ path, bytes });
    if ('error' in opened) throw new FileFault(opened.error);
    return opened;
  } finally {
    await pool.close();
  }
}
