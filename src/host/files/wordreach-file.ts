import * as v from 'valibot';
import { parseGroup, parseSequence } from '../../analyze/index.ts';
import type { Group, Sequence } from '../../analyze/types.ts';
import { type LessonPreset, parsePresets } from '../../lesson/index.ts';
import { freePassageId } from '../../passage/kept/passage.ts';
import { say } from '../../wording/say.ts';
import { countSchema } from '../store/schema.ts';
import {
  EverythingFileError,
  isEverythingFile,
  type KeptItem,
  keptItemSchemas,
  readEverything,
} from './everything-file.ts';
import { PassageFileError, readPassages } from './passage-file.ts';
import { lineOfItem, readCountedLines } from './read-file-lines.ts';
import { LARGEST_OWN_FILE, readShareFile, ShareError } from './share-file.ts';
import { isShelfFile, pickText, readShelfFile, ShelfFileError } from './shelf-file.ts';

/** The mark of a file of Wordreach, and the version of its format. */
const KIND = 'wordreach-file';
const VERSION = 1;
/** The maximum length of the first line, in bytes. */
const LONGEST_HEAD = 200;

/**
 * One item of a file: a group, a sequence, a preset of lessons, a passage, a text of the shelf, or an item of storage
 * with its key.
 */
export type FileItem =
  | KeptItem
  | { readonly group: Group }
  | { readonly sequence: Sequence }
  | { readonly preset: LessonPreset };

const headSchema = v.pipe(
  v.string(),
  v.parseJson(),
  v.object({ [KIND]: v.unknown(), whole: v.boolean(), items: countSchema }),
);

const itemSchema = v.pipe(
  v.string(),
  v.parseJson(),
  v.union([
    ...keptItemSchemas,
    v.object({ group: v.unknown() }),
    v.object({ sequence: v.unknown() }),
    v.object({ preset: v.unknown() }),
  ]),
);

/** The reason why a file cannot be read, in a sentence with the next step. */
export class WordreachFileError extends Error {}

/** Returns whether an error describes a fault in a file, of whatever version. */
export function isFileError(error: unknown): error is Error {
  return [WordreachFileError, EverythingFileError, ShelfFileError, PassageFileError, ShareError].some(
    (kind) => error instanceof kind,
  );
}

/** A file that is written piece by piece, since a long shelf with its texts does not fit into the memory of a page. */
export interface FileWriter {
  add(items: readonly FileItem[]): void;
  end(): Blob;
}

/**
 * Begins a file with one line of JSON for each item. A file that is `whole` replaces everything in the browser where it
 * is opened.
 */
export function beginFile({ whole }: { whole: boolean }): FileWriter {
  const parts: Blob[] = [];
  let items = 0;
  return {
    add(more) {
      items += more.length;
      parts.push(new Blob(more.map(writeItem)));
    },
    end: () =>
      new Blob([`${JSON.stringify({ [KIND]: VERSION, whole, items })}\n`, ...parts], {
        type: 'application/jsonl',
      }),
  };
}

function writeItem(item: FileItem): string {
  return `${JSON.stringify('text' in item ? { text: pickText(item.text) } : item)}\n`;
}

/** Returns whether the beginning of a file says that the file holds everything of a browser. */
export async function isWholeFile(file: Blob): Promise<boolean> {
  if (await isEverythingFile(file)) return true;
  const head = v.safeParse(headSchema, await firstLine(file));
  return head.success && head.output.whole;
}

/** Reads a file that holds everything. Throws an error that `isFileError` knows. */
export async function* readWholeFile(file: Blob): AsyncGenerator<KeptItem> {
  if (!(await isWholeFile(file)) || (await isEverythingFile(file))) return yield* readEverything(file);
  for await (const item of readLines(file))
    if ('stored' in item || 'passage' in item || 'text' in item) yield item;
}

/**
 * Reads any file that Wordreach saved, item by item. The file may be of this version, or a file of groups and
 * sequences, of a shelf, of passages or of everything from an earlier version. Throws an error that `isFileError` knows
 * at the first damaged line, or when items are missing at the end.
 */
export async function* readWordreachFile(file: Blob): AsyncGenerator<FileItem> {
  if ((await firstLine(file)).startsWith(`{"${KIND}":`)) return yield* readLines(file);
  if (await isEverythingFile(file)) return yield* readEverything(file);
  if (await isShelfFile(file)) {
    for await (const text of readShelfFile(file)) yield { text };
    return;
  }
  const isOfPassages = /^\s*\{\s*"wordreach-passages"/.test(await firstLine(file, 2));
  if (!isOfPassages && file.size > LARGEST_OWN_FILE) throw new WordreachFileError(say('host.tooLarge'));
  const text = await file.text();
  if (isOfPassages) {
    for (const passage of readPassages(text))
      yield { passage: { ...passage, id: freePassageId(), rev: 0, saved: 0 } };
    return;
  }
  const { groups, sequences } = readShareFile(text);
  for (const sequence of sequences) yield { sequence };
  for (const group of groups) yield { group };
}

function readLines(file: Blob): AsyncGenerator<FileItem> {
  return readCountedLines(file, {
    readHead,
    readItem,
    cutOff: (counts) => new WordreachFileError(say('host.cutOff', counts)),
  });
}

function readHead(line: string | null): number {
  const head = v.safeParse(headSchema, line);
  if (!head.success) throw new WordreachFileError(say('host.otherFile'));
  if (head.output[KIND] !== VERSION) throw new WordreachFileError(say('host.laterVersion'));
  return head.output.items;
}

function readItem(line: string | null, number: number): FileItem {
  const where = lineOfItem(number);
  const read = v.safeParse(itemSchema, line);
  const item = read.success ? checkItem(read.output, where) : null;
  if (item === null) throw new WordreachFileError(say('host.damaged', { where }));
  return item;
}

/** Groups and sequences are read by the engine's own readers, whose errors describe the fault. */
function checkItem(item: v.InferOutput<typeof itemSchema>, where: string): FileItem | null {
  try {
    if ('group' in item) return { group: parseGroup(item.group) };
    if ('sequence' in item) return { sequence: parseSequence(item.sequence) };
  } catch (error) {
    const why = `${where}, ${error instanceof Error ? error.message : error}`;
    throw new WordreachFileError(say('host.fileUnusable', { why }));
  }
  if (!('preset' in item)) return item;
  const [preset] = parsePresets([item.preset]);
  return preset ? { preset } : null;
}

async function firstLine(file: Blob, lines = 1): Promise<string> {
  return (await file.slice(0, LONGEST_HEAD).text()).split('\n', lines).join('\n');
}
