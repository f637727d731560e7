import { FileFault } from '../passage/files/file-fault.ts';
import { readHtml } from './read-html.ts';
import type { GroupReport } from './text-record.ts';

/** One line of input answered: the line of output, and whether it is an error. */
export interface AnsweredLine {
  readonly json: string;
  readonly failed: boolean;
}

/**
 * Answers a line `{"id", "text"}` or `{"id", "html"}` with `{"id", "reports"}`; a fault of a line is its answer,
 * `{"id", "error"}`, with a null for an id that cannot be read. `number` counts lines from 1. Never throws.
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

/** Why a line has no report, in a sentence without its number. */
export function explainLine(error: unknown): string {
  const why = error instanceof Error ? error.message : String(error);
  return error instanceof FileFault ? why : `this cannot be read (${why}).`;
}

/** The answer to a line in which something is wrong. */
export function failLine(id: unknown, number: number, problem: string): AnsweredLine {
  return { json: JSON.stringify({ id, error: `Line ${number}: ${problem}` }), failed: true };
}
