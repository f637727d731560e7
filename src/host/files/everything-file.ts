import * as v from 'valibot';
import type { Passage } from '../../passage/kept/passage.ts';
import { say } from '../../wording/say.ts';
import { passageSchema } from '../store/passage-schema.ts';
import { countSchema } from '../store/schema.ts';
import { wholeTextSchema } from '../store/shelf-schema.ts';
import type { WholeShelfText } from '../store/shelf-store.ts';
import { lineOfItem, readCountedLines } from './read-file-lines.ts';

/** The mark of a file of everything, and the version of its format. */
const KIND = 'wordreach-everything';
const VERSION = 1;
/** The maximum length of the first line, in bytes. */
const LONGEST_HEAD = 200;

/**
 * One item of everything that is kept in a browser: an item of its storage with its key, a passage, or a text of the
 * shelf.
 */
export type KeptItem =
  | { readonly stored: string; readonly value: unknown }
  | { readonly passage: Passage }
  | { readonly text: WholeShelfText };

const headSchema = v.pipe(v.string(), v.parseJson(), v.object({ [KIND]: v.unknown(), items: countSchema }));

/** Nothing was ever stored under a name that every object has, such as `constructor`. */
const keySchema = v.pipe(
  v.string(),
  v.check((key) => key !== '' && !(key in Object.prototype)),
);

/** The items of a file of everything. `FileItem` has more kinds. */
export const keptItemSchemas = [
  v.object({ stored: keySchema, value: v.unknown() }),
  v.object({ passage: passageSchema }),
  v.object({ text: wholeTextSchema }),
] as const;

const itemSchema: v.GenericSchema<string | null, KeptItem> = v.pipe(
  v.string(),
  v.parseJson(),
  v.union(keptItemSchemas),
);

/** The reason why a file of everything cannot be read, in a sentence with the next step. */
export class EverythingFileError extends Error {}

/** Returns whether the beginning of a file says that the file holds everything. */
export async function isEverythingFile(file: Blob): Promise<boolean> {
  return (await file.slice(0, LONGEST_HEAD).text()).startsWith(`{"${KIND}":`);
}

/**
 * Reads a file item by item. Throws `EverythingFileError` at the first damaged line, or when items are missing at the
 * end. The value stored under a key is returned unchecked, because the stores skip values they cannot read.
 */
export function readEverything(file: Blob): AsyncGenerator<KeptItem> {
  return readCountedLines(file, {
    readHead,
    readItem,
    cutOff: (counts) => new EverythingFileError(say('host.cutOff', counts)),
  });
}

function readHead(line: string | null): number {
  const head = v.safeParse(headSchema, line);
  if (!head.success) throw new EverythingFileError(say('host.notEverything'));
  if (head.output[KIND] !== VERSION) throw new EverythingFileError(say('host.laterVersion'));
  return head.output.items;
}

function readItem(line: string | null, number: number): KeptItem {
  const item = v.safeParse(itemSchema, line);
  if (item.success) return item.output;
  throw new EverythingFileError(say('host.damaged', { where: lineOfItem(number) }));
}
