import { readText } from './read-file.ts';
import { InputError } from './run-command.ts';

/** The content of a JSON file. Throws `InputError` with line and column when it is not JSON. */
export function readJson(path: string): unknown {
  const text = readText(path);
  try {
    return JSON.parse(text);
  } catch (error) {
    const problem = error instanceof Error ? error.message : String(error);
    const short = problem
      .replace(/,? in JSON at position \d+.*$/s, '')
      .replace(/, .* is not valid JSON$/s, '');
    throw new InputError(`${path}${placeOf(problem, text)}: this is not valid JSON: ${short}.`);
  }
}

/** `:3:7` from the offset V8 puts into its messages; empty where it gives none. */
function placeOf(problem: string, text: string): string {
  const offset = /position (\d+)/.exec(problem)?.[1];
  if (offset === undefined) return '';
  const lines = text.slice(0, Number(offset)).split('\n');
  return `:${lines.length}:${lines.at(-1)!.length + 1}`;
}
