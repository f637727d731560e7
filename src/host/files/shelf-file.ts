import type { WordKey } from '../../analyze/types.ts';
import { say } from '../../wording/say.ts';
import type { WholeShelfText } from '../store/shelf-store.ts';
import { readFileLines } from './read-file-lines.ts';

/** What makes a file one of ours, and which version of it this is. */
const KIND = 'wordreach-shelf';
const VERSION = 1;

/** Why a file of a shelf cannot be taken, in a sentence with the next step. */
export class ShelfFileError extends Error {}

/** The first line of a file: what it is, and how many texts follow, a line each, in JSON. */
export function writeHead(texts: number): string {
  return `${JSON.stringify({ [KIND]: VERSION, texts })}\n`;
}

/** The line of one text, with everything the shelf knows of it. */
export function writeText(text: WholeShelfText): string {
  return `${JSON.stringify(pickText(text))}\n`;
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
    const text = readShelfText(parse(line));
    found++;
    if (!text)
      throw new ShelfFileError(
        say('host.damagedNothingTaken', { where: say('host.textOfFile', { number: found }) }),
      );
    yield text;
  }
  if (expected === null) throw new ShelfFileError(say('host.noShelf'));
  if (found !== expected) throw new ShelfFileError(say('host.shelfCutOff', { expected, found }));
}

function readHead(line: string): number {
  const head = parse(line);
  if (!isObject(head) || !Object.hasOwn(head, KIND)) throw new ShelfFileError(say('host.noShelf'));
  if (head[KIND] !== VERSION) throw new ShelfFileError(say('host.laterVersion'));
  if (!isCount(head.texts)) throw new ShelfFileError(say('host.noShelf'));
  return head.texts;
}

/** A text as a file holds it; null where it is none. Any value may be given. */
export function readShelfText(value: unknown): WholeShelfText | null {
  if (!isObject(value)) return null;
  const { id, title, url, byline, date, shelved, tags, notes, skipped, words, text } = value;
  if (
    typeof id !== 'string' ||
    !/^[\w-]{1,64}$/.test(id) ||
    typeof title !== 'string' ||
    typeof notes !== 'string' ||
    !isTextOrNull(url) ||
    !isTextOrNull(byline) ||
    !isTextOrNull(date) ||
    !isTextOrNull(text) ||
    !isCount(shelved) ||
    !isCount(skipped) ||
    !Array.isArray(tags) ||
    !tags.every((tag) => typeof tag === 'string') ||
    !Array.isArray(words) ||
    !words.every(isWordCount) ||
    new Set(words.map(([key]) => key)).size !== words.length
  )
    return null;
  return {
    id,
    title,
    url,
    byline,
    date,
    shelved,
    tags,
    notes,
    skipped,
    words: words.map(([key, count]) => [key, count] as const),
    text,
  };
}

function isWordCount(entry: unknown): entry is [WordKey, number] {
  if (!Array.isArray(entry) || entry.length !== 2) return false;
  const [key, count] = entry as [unknown, unknown];
  return typeof key === 'string' && /^\S+$/.test(key) && isCount(count) && count > 0 && count < 2 ** 31;
}

function isCount(value: unknown): value is number {
  return Number.isSafeInteger(value) && (value as number) >= 0;
}

function isTextOrNull(value: unknown): value is string | null {
  return value === null || typeof value === 'string';
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function parse(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return null;
  }
}
