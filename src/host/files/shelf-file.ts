import * as v from 'valibot';
import { say } from '../../wording/say.ts';
import { countSchema } from '../store/schema.ts';
import { wholeTextSchema } from '../store/shelf-schema.ts';
import type { WholeShelfText } from '../store/shelf-store.ts';
import { readFileLines } from './read-file-lines.ts';

/** What makes a file one of ours, and which version of it this is. */
const KIND = 'wordreach-shelf';
const VERSION = 1;

const headSchema = v.pipe(
  v.string(),
  v.parseJson(),
  v.object({ [KIND]: v.unknown(), texts: v.fallback(v.nullable(countSchema), null) }),
);
const lineSchema = v.pipe(v.string(), v.parseJson(), wholeTextSchema);

/** Why a file of a shelf cannot be taken, in a sentence with the next step. */
export class ShelfFileError extends Error {}

/** Whether a file says of itself that it holds a shelf. */
export async function isShelfFile(file: Blob): Promise<boolean> {
  return (await file.slice(0, 40).text()).startsWith(`{"${KIND}":`);
}

/** What a file holds of a text. */
export function pickText(text: WholeShelfText): WholeShelfText {
  const { id, title, url, byline, date, shelved, tags, notes, skipped, words } = text;
  return { id, title, url, byline, date, shelved, tags, notes, skipped, words, text: text.text };
}

/**
 * Reads a file text by text, so that one of any length fits into memory; nothing is kept of it. Throws `ShelfFileError` at the first line that is
 * not as it should be, or when texts are missing at the end.
 */
export async function* readShelfFile(file: Blob): AsyncGenerator<WholeShelfText> {
  let expected: number | null = null;
  let found = 0;
  for await (const line of readFileLines(file)) {
    if (line === null) throw new ShelfFileError(say('host.noShelf'));
    if (expected === null) {
      expected = readHead(line);
      continue;
    }
    if (line.trim() === '') continue;
    const text = v.safeParse(lineSchema, line);
    found++;
    if (!text.success)
      throw new ShelfFileError(
        say('host.damagedNothingTaken', { where: say('host.textOfFile', { number: found }) }),
      );
    yield text.output;
  }
  if (expected === null) throw new ShelfFileError(say('host.noShelf'));
  if (found !== expected) throw new ShelfFileError(say('host.shelfCutOff', { expected, found }));
}

function readHead(line: string): number {
  const head = v.safeParse(headSchema, line);
  if (!head.success) throw new ShelfFileError(say('host.noShelf'));
  if (head.output[KIND] !== VERSION) throw new ShelfFileError(say('host.laterVersion'));
  if (head.output.texts === null) throw new ShelfFileError(say('host.noShelf'));
  return head.output.texts;
}
