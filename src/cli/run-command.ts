import { codeOf, explainWriting } from './explain-errno.ts';
import { OutputFault, printWhole } from './open-output.ts';

/** An error that the caller of a command can correct. `message` is one sentence with the next step. */
export class InputError extends Error {
  override readonly name = 'InputError';
}

/**
 * Returns how a command was called, for its usage text: `wordreach vet` from the package, `npm run --silent vet --`
 * from the repository.
 */
export function calledAs(name: string): string {
  return process.env.WORDREACH_PACKAGE ? `wordreach ${name}` : `npm run --silent ${name} --`;
}

/**
 * Runs a command and prints the text it returns. A command that prints by itself returns nothing.
 * - An error that the caller can correct prints one sentence to stderr, nothing to stdout, and gives exit code 2.
 * - An output that fails prints one sentence and gives exit code 3.
 * - Any other error is our bug and is thrown.
 * - A reader that stops early (`| head`) ends the command without a message.
 */
export async function runCommand(
  usage: string,
  command: () => Promise<string | undefined> | string,
): Promise<void> {
  process.stdout.on('error', (error) => {
    if (codeOf(error) === 'EPIPE') process.exit(0);
    process.stderr.write(`${explainWriting(error)}\n`);
    process.exit(OUTPUT_FAILED);
  });
  // If stderr cannot be written, the message is lost. The exit code still reports the error.
  process.stderr.on('error', () => undefined);
  try {
    const text = await command();
    if (text !== undefined) await printWhole(`${text.trimEnd()}\n`);
  } catch (error) {
    const problem = explainMisuse(error, usage);
    if (problem === null) throw error;
    process.stderr.write(`${problem}\n`);
    process.exitCode = error instanceof OutputFault ? OUTPUT_FAILED : WRONG_USE;
  }
}

const WRONG_USE = 2;
const OUTPUT_FAILED = 3;

function explainMisuse(error: unknown, usage: string): string | null {
  if (error instanceof InputError || error instanceof OutputFault) return error.message;
  // The error of `parseArgs` (node:util) for an unknown option, or for an option without its value.
  if (error instanceof TypeError && 'code' in error && String(error.code).startsWith('ERR_PARSE_ARGS')) {
    return `${error.message}\n${usage}`;
  }
  return null;
}
