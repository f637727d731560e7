import * as v from 'valibot';
import type { Passage } from '../../passage/kept/passage.ts';
import { say } from '../../wording/say.ts';
import { passageSchema } from '../store/passage-schema.ts';
import { countSchema } from '../store/schema.ts';
import { wholeTextSchema } from '../store/shelf-schema.ts';
import type { WholeShelfText } from '../store/shelf-store.ts';
import { lineOfItem, readCountedLines } from './read-file-lines.ts';

/** The marks of our files of this kind, and their version. */
const KIND = 'wordreach-everything';
const VERSION = 1;
/** The first line is no longer, in bytes. */
const LONGEST_HEAD = 200;

/** One thing of all that is kept in a browser: an item of its storage by its key, a passage, or a text of the shelf. */
export type KeptItem =
  | { readonly stored: string; readonly value: unknown }
  | { readonly passage: Passage }
  | { readonly text: WholeShelfText };

const headSchema = v.pipe(v.string(), v.parseJson(), v.object({ [KIND]: v.unknown(), items: countSchema }));

/** A name every object has (`constructor`) is none under which anything was ever kept. */
const keySchema = v.pipe(
  v.string(),
  v.check((key) => key !== '' && !(key in Object.prototype)),
);

/** The items of such a file; `FileItem` has more. */
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

/** Why a file of everything cannot be taken, in a sentence with the next step. */
export class EverythingFileError extends Error {}

/** Whether a file says of itself that it holds everything. */
export async function isEverythingFile(file: Blob): Promise<boolean> {
  return (await file.slice(0, LONGEST_HEAD).text()).startsWith(`{"${KIND}":`);
}

/**
 * Reads a file item by item. Throws `EverythingFileError` at the first line that is not as it should be, or when items are missing at the
 * end. The value stored under a key is given as it is: the stores pass over values they cannot read.
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
