import { say } from '../../wording/say.ts';
import type { Passage } from '../store/passages-store.ts';
import type { WholeShelfText } from '../store/shelf-store.ts';
import { PassageFileError, readPassage } from './passage-file.ts';
import { readFileLines } from './read-file-lines.ts';
import { pickText, readShelfText } from './shelf-file.ts';

/** What makes a file one of ours, and which version of it this is. */
const KIND = 'wordreach-everything';
const VERSION = 1;
/** The first line is no longer, in bytes. */
const LONGEST_HEAD = 200;

/** One thing of all that is kept in a browser: an item of its storage by its key, a passage, or a text of the shelf. */
export type KeptItem =
  | { readonly stored: string; readonly value: unknown }
  | { readonly passage: Passage }
  | { readonly text: WholeShelfText };

/** Why a file of everything cannot be taken, in a sentence with the next step. */
export class EverythingFileError extends Error {}

/** The first line of a file: what it is, and how many items follow, a line each, in JSON. */
export function writeEverythingHead(items: number): string {
  return `${JSON.stringify({ [KIND]: VERSION, items })}\n`;
}

/** The line of one item. */
export function writeItem(item: KeptItem): string {
  return `${JSON.stringify('text' in item ? { text: pickText(item.text) } : item)}\n`;
}

/** Whether a file says of itself that it holds everything. */
export async function isEverythingFile(file: Blob): Promise<boolean> {
  return (await file.slice(0, LONGEST_HEAD).text()).startsWith(`{"${KIND}":`);
}

/**
 * Reads a file item by item. Throws `EverythingFileError` at the first line that is not as it should be, or when items are missing at the
 * end. What is stored under a key is given as it is: the stores pass over what they cannot read.
 */
export async function* readEverything(file: Blob): AsyncGenerator<KeptItem> {
  let expected: number | null = null;
  let found = 0;
  for await (const line of readFileLines(file)) {
    if (expected === null) {
      expected = readHead(line);
      continue;
    }
    if (line?.trim() === '') continue;
    found++;
    yield readItem(line, say('host.lineOfFile', { number: found + 1 }));
  }
  if (found !== expected)
    throw new EverythingFileError(say('host.cutOff', { expected: expected ?? 0, found }));
}

function readHead(line: string | null): number {
  const head = parse(line);
  if (!isObject(head) || !Object.hasOwn(head, KIND) || !Number.isSafeInteger(head.items))
    throw new EverythingFileError(say('host.notEverything'));
  if (head[KIND] !== VERSION) throw new EverythingFileError(say('host.laterVersion'));
  return head.items as number;
}

function readItem(line: string | null, where: string): KeptItem {
  const item = parse(line);
  if (isObject(item)) {
    if (typeof item.stored === 'string' && isFree(item.stored) && Object.hasOwn(item, 'value'))
      return { stored: item.stored, value: item.value };
    if (Object.hasOwn(item, 'passage')) return { passage: readWholePassage(item.passage, where) };
    const text = readShelfText(item.text);
    if (text) return { text };
  }
  throw damaged(where);
}

/** A name every object has (`constructor`) is none under which anything was ever kept. */
function isFree(key: string): boolean {
  return key !== '' && !(key in Object.prototype);
}

function readWholePassage(value: unknown, where: string): Passage {
  try {
    const passage = readPassage(value, where);
    const { id, rev, saved } = value as Passage;
    const isWhole = typeof id === 'string' && id !== '' && [rev, saved].every(Number.isSafeInteger);
    if (isWhole) return { id, ...passage, rev, saved };
  } catch (error) {
    if (!(error instanceof PassageFileError)) throw error;
  }
  throw damaged(where);
}

function damaged(where: string): EverythingFileError {
  return new EverythingFileError(say('host.damaged', { where }));
}

function parse(line: string | null): unknown {
  try {
    return JSON.parse(line ?? '');
  } catch {
    return null;
  }
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
