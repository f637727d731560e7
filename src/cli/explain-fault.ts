import { FileFault } from '../passage/files/file-fault.ts';
import { InputError } from './run-command.ts';

/** Explains a fault of a file in one sentence without the file name. */
export function explainFault(error: unknown, path: string): string {
  if (error instanceof FileFault) return error.message;
  if (error instanceof InputError) return error.message.replace(`${path}: `, '');
  const reason = error instanceof Error ? error.message : String(error);
  return `cannot be read (${reason}); get it again, or give its text as a txt file.`;
}
