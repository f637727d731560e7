/** Something the caller of a command can put right; `message` is one sentence with the next step. */
export class InputError extends Error {
  override readonly name = 'InputError';
}

/**
 * Runs a command: prints the text it gives (nothing where it printed by itself), or, for what the caller can put right, one sentence to stderr
 * and exit code 2 with nothing printed. Any other error is our bug and is thrown. A reader that stops
 * early (`| head`) ends the command quietly.
 */
export async function runCommand(
  usage: string,
  command: () => Promise<string | undefined> | string,
): Promise<void> {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
    process.exit(0);
  });
  try {
    const text = await command();
    if (text !== undefined) process.stdout.write(`${text.trimEnd()}\n`);
  } catch (error) {
    const problem = explain(error, usage);
    if (problem === null) throw error;
    process.stderr.write(`${problem}\n`);
    process.exitCode = 2;
  }
}

function explain(error: unknown, usage: string): string | null {
  if (error instanceof InputError) return error.message;
  // What node:util parseArgs throws for an option it does not know, or one without its value.
  if (error instanceof TypeError && 'code' in error && String(error.code).startsWith('ERR_PARSE_ARGS')) {
    return `${error.message}\n${usage}`;
  }
  return null;
}
