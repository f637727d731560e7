import * as v from 'valibot';
import type { Passage } from '../../passage/kept/passage.ts';
import { say } from '../../wording/say.ts';
import { passageContentSchema } from '../store/passage-schema.ts';

/** The mark of a file of passages, and the version of its format. */
const KIND = 'wordreach-passages';
const VERSION = 1;

const fileSchema = v.pipe(
  v.string(),
  v.parseJson(),
  v.object({ [KIND]: v.unknown(), passages: v.array(v.unknown()) }),
);

/** The reason why a file of passages cannot be read, in a sentence with the next step. */
export class PassageFileError extends Error {}

/**
 * Returns the passages of a file, without ids of their own. Throws `PassageFileError`. If any part of a file is wrong,
 * the whole file is refused.
 */
export function readPassages(text: string): Omit<Passage, 'id' | 'rev' | 'saved'>[] {
  const file = v.safeParse(fileSchema, text);
  if (!file.success) throw new PassageFileError(say('host.noPassages'));
  if (file.output[KIND] !== VERSION) throw new PassageFileError(say('host.laterVersion'));
  return file.output.passages.map((passage, i) => {
    const read = v.safeParse(passageContentSchema, passage);
    if (read.success) return read.output;
    const where = say('host.passageOfFile', { number: i + 1 });
    throw new PassageFileError(say('host.damagedNothingTaken', { where }));
  });
}
