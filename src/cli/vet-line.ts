import { FileFault } from '../passage/files/file-fault.ts';
import { readHtml } from './read-html.ts';
import type { GroupReport } from './text-record.ts';

/** The answer to one line of input: the line of output, and whether it is an error. */
export interface AnsweredLine {
  readonly json: string;
  readonly failed: boolean;
}

/**
 * Answers a line `{"id", "text"}` or `{"id", "html"}` with `{"id", "reports"}`. A faulty line is answered with `{"id",
 * "error"}`. `id` is null if it cannot be read. `number` counts lines from 1. Never throws.
 */
export function vetLine(
  line: string,
  number: number,
  vetText: (text: string) => readonly GroupReport[],
): AnsweredLine {
  let asked: unknown;
  try {
    asked = JSON.parse(line);
  } catch {
    return failLine(null, number, 'this is no JSON; give {"id","text"} or {"id","html"}.');
  }
  const { id = null, text, html } = (asked ?? {}) as Record<string, unknown>;
  if (typeof text !== 'string' && typeof html !== 'string')
    return failLine(id, number, 'there is no "text" and no "html", which is a string.');
  try {
    const reports = vetText(typeof text === 'string' ? text : readHtml(html as string).text);
    return { json: JSON.stringify({ id, reports }), failed: false };
  } catch (error) {
    return failLine(id, number, explainLine(error));
  }
}

/** Explains in one sentence why a line has no report. The sentence does not contain the line number. */
export function explainLine(error: unknown): string {
  const why = error instanceof Error ? error.message : String(error);
  return error instanceof FileFault ? why : `this cannot be read (${why}).`;
}

/** Returns the answer to a faulty line. */
export function failLine(id: unknown, number: number, problem: string): AnsweredLine {
  return { json: JSON.stringify({ id, error: `Line ${number}: ${problem}` }), failed: true };
}
