import { findColumnKind } from './column-kinds.ts';
import { markDates, readLetterHeading, readStepHeading } from './step-heading.ts';

/** One line of a list or document, without its bullet and emphasis. */
export interface Line {
  readonly text: string;
  readonly bullet: boolean;
  readonly indent: number;
  readonly blankBefore: boolean;
  /**
   * The kind of heading. It is null for other lines.
   * - the unit that the heading counts (`week`)
   * - `number` for `4.`, `letter` for `B.`, `roman` for `II.`
   * - `#2` and `bold` for a document's own headings
   * - `lead` for a line that ends in a colon or has bullets below it
   */
  readonly heading: string | null;
}

/** Reads the lines of a text that is not a table. Blank lines are left out. */
export function readLines(text: string): readonly Line[] {
  const lines: Line[] = [];
  let blank = false;
  for (const raw of markBullets(markDates(text.split('\n')))) {
    if (!/[\p{L}\p{N}]/u.test(raw)) {
      blank ||= raw.trim() === '';
      continue;
    }
    lines.push(readLine(raw, blank));
    blank = false;
  }
  return lines.map((line, i) =>
    line.heading === null && leads(line, lines[i + 1]) ? { ...line, heading: 'lead' } : line,
  );
}

/** The letter o is a bullet if this many lines begin with it. Word processors copy second-level bullets in this way. */
const ROUND = 4;

function markBullets(lines: readonly string[]): readonly string[] {
  const round = /^(\s*)o\s+(?=\S)/;
  return lines.filter((line) => round.test(line)).length < ROUND
    ? lines
    : lines.map((line) => line.replace(round, '$1○ '));
}

function readLine(raw: string, blankBefore: boolean): Line {
  const indent = /^\s*/.exec(raw)![0].replaceAll('\t', '  ').length;
  const marked = /^(#{1,6})\s+/.exec(raw.trim());
  const unmarked = marked === null ? raw.trim() : raw.trim().slice(marked[0].length);
  const bulleted =
    /^(?:[*•◦▪●○‣–—·+▸▹►▶□■◆◇❖➢➤»›>]\uFE0F?|[✓✔✗✘☐☑☒✅⬜◻◼]{1,3}\uFE0F?|-(?=\s)|\[[ x]?\])\s+/.exec(unmarked);
  const body = bulleted === null ? unmarked : unmarked.slice(bulleted[0].length);
  const bold = /^(\*\*|__)(?<text>(?:(?!\1).)+?)\1:?$/u.exec(body);
  const text = body.replace(/\*\*|__(?=\p{L}{2}|\W|$)/gu, '').trim();
  const heading = bulleted === null ? headingOf(text, marked?.[1], bold !== null) : headingBehindBullet(text);
  return { text, bullet: bulleted !== null, indent, blankBefore, heading };
}

function headingOf(text: string, marks: string | undefined, bold: boolean): string | null {
  const step = readStepHeading(text);
  if (step !== null) return step.kind;
  const letter = readLetterHeading(text);
  if (letter !== null) return letter.kind;
  if (findColumnKind(text) !== null) return null;
  return marks !== undefined ? `#${marks.length}` : bold ? 'bold' : null;
}

/** Returns the kind of a heading after a bullet. `• Week 3: sh` begins a step. `• 2. sh` and `• week 3 test` do not. */
function headingBehindBullet(text: string): string | null {
  const step = readStepHeading(text);
  if (step === null || step.kind === 'number') return null;
  return /^\s*(?:$|[:–—(·-])/.test(text.slice(step.title.length)) ? step.kind : null;
}

/** Whether a line introduces the list below it. It ends in a colon, or the next line is a bullet or is indented further. */
function leads(line: Line, next: Line | undefined): boolean {
  if (next === undefined || line.bullet || findColumnKind(line.text) !== null) return false;
  return (
    line.text.endsWith(':') ||
    (next.bullet && next.heading === null) ||
    (next.indent > line.indent && next.heading === null)
  );
}
