import { getSystemErrorMap } from 'node:util';

/** The system's message for an error code: `no space left on device` for `ENOSPC`. */
const systemWords: ReadonlyMap<string, string> = new Map(getSystemErrorMap().values());

const reading: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file; check the path.',
  EISDIR: 'is a folder; give a file.',
  EACCES: 'may not be read; check its permissions.',
  EPERM: 'may not be read; check its permissions.',
  ELOOP: 'is a link that leads back to itself; give the file it was made for.',
  ENAMETOOLONG: 'the path is longer than the system allows; check it.',
  ENOTDIR: 'a part of the path is a file and no folder; check the path.',
  EMFILE: 'too many files are open; give fewer threads by --jobs.',
  ENFILE: 'too many files are open on this machine; close some programs and try again.',
  ENOMEM: 'there is not enough memory to read it; close some programs and try again.',
  EAGAIN: 'nothing has come yet; give the input as a file or through a pipe.',
  ERR_FS_FILE_TOO_LARGE: 'is larger than 2 GB; give it in parts.',
};

const writing: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full; make room and run it again.',
  EDQUOT: 'your share of the disk is used up; make room and run it again.',
  EFBIG: 'the file would be larger than is allowed; write fewer texts to a file.',
  EROFS: 'the disk can only be read; write to another.',
};

/**
 * Explains in one sentence why a file cannot be read, for any system error. The sentence does not contain the file
 * name.
 */
export function explainReading(error: unknown): string {
  const code = codeOf(error);
  return (
    find(reading, code) ?? `cannot be read (${sayCode(code, error)}); copy it to another place and try again.`
  );
}

/** Explains in one sentence why an output cannot be written, for any system error. */
export function explainWriting(error: unknown): string {
  const code = codeOf(error);
  const why = find(writing, code) ?? `${sayCode(code, error)}; write to another place.`;
  return `The output cannot be written: ${why}`;
}

/** Returns the code of a system or Node error. Empty if the error has none. */
export function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : '';
}

function find(sentences: Readonly<Record<string, string>>, code: string): string | undefined {
  return Object.hasOwn(sentences, code) ? sentences[code] : undefined;
}

function sayCode(code: string, error: unknown): string {
  const words = systemWords.get(code) ?? (error instanceof Error ? error.message : String(error));
  return code === '' ? words : `${words}, ${code}`;
}
