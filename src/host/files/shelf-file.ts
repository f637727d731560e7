import * as v from 'valibot';
import { say } from '../../wording/say.ts';
import { countSchema } from '../store/schema.ts';
import { wholeTextSchema } from '../store/shelf-schema.ts';
import type { WholeShelfText } from '../store/shelf-store.ts';
import { readCountedLines } from './read-file-lines.ts';

/** The mark of a file of a shelf, and the version of its format. */
const KIND = 'wordreach-shelf';
const VERSION = 1;

const headSchema = v.pipe(
  v.string(),
  v.parseJson(),
  v.object({ [KIND]: v.unknown(), texts: v.fallback(v.nullable(countSchema), null) }),
);
const lineSchema = v.pipe(v.string(), v.parseJson(), wholeTextSchema);

/** The reason why a file of a shelf cannot be read, in a sentence with the next step. */
export class ShelfFileError extends Error {}

/** Returns whether the beginning of a file says that the file holds a shelf. */
export async function isShelfFile(file: Blob): Promise<boolean> {
  return (await file.slice(0, 40).text()).startsWith(`{"${KIND}":`);
}

/** The fields of a text that a file keeps. */
export function pickText(text: WholeShelfText): WholeShelfText {
  const { id, title, url, byline, date, shelved, tags, notes, skipped, words } = text;
  return { id, title, url, byline, date, shelved, tags, notes, skipped, words, text: text.text };
}

/**
 * Reads a file text by text and keeps nothing of it, so that a file of any length fits into memory. Throws
 * `ShelfFileError` at the first damaged line, or when texts are missing at the end.
 */
export function readShelfFile(file: Blob): AsyncGenerator<WholeShelfText> {
  return readCountedLines(file, {
    readHead,
    readItem,
    cutOff: (counts) => new ShelfFileError(say('host.shelfCutOff', counts)),
  });
}

function readHead(line: string | null): number {
  const head = v.safeParse(headSchema, line);
  if (!head.success) throw new ShelfFileError(say('host.noShelf'));
  if (head.output[KIND] !== VERSION) throw new ShelfFileError(say('host.laterVersion'));
  if (head.output.texts === null) throw new ShelfFileError(say('host.noShelf'));
  return head.output.texts;
}

function readItem(line: string | null, number: number): WholeShelfText {
  if (line === null) throw new ShelfFileError(say('host.noShelf'));
  const text = v.safeParse(lineSchema, line);
  if (text.success) return text.output;
  throw new ShelfFileError(say('host.damagedNothingTaken', { where: say('host.textOfFile', { number }) }));
}
