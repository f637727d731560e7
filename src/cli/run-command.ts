import { codeOf, explainWriting } from './explain-errno.ts';
import { OutputFault, printWhole } from './open-output.ts';

/** Something the caller of a command can put right; `message` is one sentence with the next step. */
export class InputError extends Error {
  override readonly name = 'InputError';
}

/** How a command was called, for its usage: `wordreach vet` from the package, `npm run --silent vet --` from here. */
export function calledAs(name: string): string {
  return process.env.WORDREACH_PACKAGE ? `wordreach ${name}` : `npm run --silent ${name} --`;
}

/**
 * Runs a command: prints the text it gives (nothing where it printed by itself), or, for what the caller can put right, one sentence to stderr
 * and exit code 2 with nothing printed. An output that takes no more is a sentence too, and exit code 3. Any other error is our bug and
 * is thrown. A reader that stops early (`| head`) ends the command quietly.
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
  // Who cannot be told is not told; the exit code says it all the same.
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
  // The error of parseArgs (node:util) for an option it does not know, or one without its value.
  if (error instanceof TypeError && 'code' in error && String(error.code).startsWith('ERR_PARSE_ARGS')) {
    return `${error.message}\n${usage}`;
  }
  return null;
}
