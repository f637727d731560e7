import { type CellKind, findColumnKind } from './column-kinds.ts';
import { findLabels, type LabelKinds, readLabelled } from './labelled-lines.ts';
import { type LaidCell, type LaidStep, type Layout, LONGEST_TITLE } from './layout.ts';
import { nothingBeside, readItems } from './read-items.ts';
import { type Line, readLines } from './read-lines.ts';
import { isStrong, named, settleHeadings, weak } from './settle-headings.ts';
import { readLetterHeading, readStepHeading } from './step-heading.ts';

interface OpenStep {
  title: string;
  /** The unit that the step's heading counts, or null without a heading. */
  readonly kind: string | null;
  readonly cells: LaidCell[];
  /** The heading without its numbers. */
  readonly about?: string;
  /** The name in the heading, if lines below it say what is taught. */
  readonly name?: string;
  /** What the heading's line says after its number. */
  readonly focus?: string | undefined;
}

/** The number of lines below a heading to search for its content. */
const LOOK_AHEAD = 12;

/**
 * Reads a list or document into steps, one below each heading. Without headings there is one step a paragraph, or one a
 * line if there are no paragraphs.
 */
export function readList(text: string): Layout {
  const all = readLines(text);
  const lines = settleHeadings(all);
  const first = lines.findIndex(({ heading }) => heading !== null);
  const opening = titleLines(lines, first);
  const rest = lines.slice(opening);
  const steps = first < 0 ? stepsByBlock(rest) : stepsByHeading(rest);
  return {
    title: lines
      .slice(0, opening)
      .map((line) => line.text)
      .join(' · '),
    steps,
  };
}

/**
 * Returns the number of lines at the top that name the whole text: lines before the first heading in which nothing is
 * understood.
 */
function titleLines(lines: readonly Line[], firstHeading: number): number {
  const isTitle = (line: Line) =>
    !line.bullet &&
    findColumnKind(line.text) === null &&
    (planNames.test(line.text) ||
      readItems(line.text, 'patterns').every(({ status }) => status === 'unknown' || status === 'ignored'));
  if (firstHeading > 0) return lines.slice(0, firstHeading).every(isTitle) ? firstHeading : 0;
  const [top, next] = lines;
  if (top === undefined || next === undefined) return 0;
  if (firstHeading < 0) return isTitle(top) ? 1 : 0;
  // The top line is the title if it is the document's only heading of the first level.
  const rank = top.heading!;
  const alone = rank.startsWith('#') && !lines.slice(1).some(({ heading }) => heading === rank);
  return alone && next.heading !== null ? 1 : 0;
}

/** Words that name the whole text as a plan: "Our phonics plan", "Scope and sequence". */
const planNames =
  /\p{Lu}[\p{L}'’]+ (?:School|Elementary|Academy|Primary|District|Department)\b|^(?:Mrs?|Ms|Miss|Dr)\.?\s+\p{Lu}[\p{L}-]*['’]s?\s|\b(?:phonics|reading|spelling|word study) (?:lessons|program|programme|course|year)\b|\b(?:scope|sequence|plan|plans|overview|map|pacing|guide|calendar|progression|curriculum|planner|outline|roadmap)\b/iu;

function stepsByHeading(lines: readonly Line[]): readonly LaidStep[] {
  const steps: OpenStep[] = [];
  const cells = new CellReader(repeatedLabels(lines), findLabels(lines));
  /** The name in the letter heading above. The numbers below this heading belong to it. */
  let section = '';
  lines.forEach((line, i) => {
    if (line.heading === null) {
      if (steps.length === 0) steps.push({ title: '', kind: null, cells: [] });
      cells.read(line.text, steps.at(-1)!.cells, line);
      return;
    }
    const read = headingOf(line);
    const isNamed =
      read.rest !== '' && !unnamed.has(line.heading) && isName(read.rest, below(lines, i, line.heading));
    const title = isNamed ? namedTitle(line, read) : read.title;
    if (line.heading !== 'number') section = line.heading === 'letter' && isNamed ? read.rest : '';
    const words = [
      ...(isNamed ? [read.rest] : []),
      ...(section === '' || section === read.rest ? [] : [section]),
    ].join('\n');
    const about = words === '' ? {} : { about: words };
    const before = steps.at(-1);
    cells.start(steps.at(-1)?.cells);
    if (before !== undefined && before.cells.length === 0 && before.kind !== line.heading) {
      // The heading of a unit is directly above the heading of its first week.
      const both = [before.title, title].filter((each) => each !== '').join(' · ');
      steps[steps.length - 1] = {
        title: both,
        kind: line.heading,
        cells: [],
        ...about,
      };
    } else {
      steps.push({ title, kind: line.heading, cells: [], ...about });
    }
    if (read.rest !== '' && !isNamed) {
      cells.read(read.rest, steps.at(-1)!.cells);
      const focus = unnamed.has(line.heading) ? undefined : shortTitle(read.rest, line.heading);
      steps[steps.length - 1] = { ...steps.at(-1)!, focus };
    } else if (isNamed && !parts.has(line.heading) && !isTitle(read.rest))
      steps[steps.length - 1] = { ...steps.at(-1)!, name: read.rest };
  });
  cells.start(steps.at(-1)?.cells);
  return steps.map(({ title, cells: laid, about, name, focus }) => {
    const below = laid.map((cell) => ({
      ...cell,
      ...(about === undefined ? {} : { about: cell.about === undefined ? about : `${cell.about}\n${about}` }),
    }));
    // The name may also say what is taught: "Short a and short i" above sight words.
    const named: readonly LaidCell[] =
      name === undefined ? [] : [{ text: name, kind: 'title', heads: below.length }];
    return { title, cells: [...named, ...below], ...(focus === undefined ? {} : { focus }) };
  });
}

/** Headings that are content themselves: the name before a colon, and the bullet of a list. */
const unnamed = new Set(['label', 'bullet']);

/** Returns the title of a step whose heading has a name: with the number before it in a numbered list, or else the whole line. */
function namedTitle(
  { heading, text }: Line,
  read: { readonly title: string; readonly rest: string },
): string {
  const whole = heading === 'number' ? `${read.title} · ${read.rest}` : text;
  return whole.replace(/:$/, '');
}

/**
 * Returns the rest of a heading's line as a title. A line too long for a title gives its first sentence, or else its
 * first clause. It gives nothing if the heading is that of a part, which has more than its first clause.
 */
function shortTitle(line: string, heading: string): string {
  if (line.length <= LONGEST_TITLE) return line;
  if (parts.has(heading)) return '';
  const pieces = [sentenceStop, clauseStop].map((stop) => line.split(stop, 1)[0]!);
  return pieces.find((piece) => piece.length <= LONGEST_TITLE) ?? '';
}

/** Ends a sentence: a stop, a semicolon, or brackets. */
const sentenceStop = /\s*(?:;|\.(?=\s+\p{Lu})|\s\()/u;
/** Ends a clause: also a colon, a comma or a dash. */
const clauseStop = /\s*(?:[;:(]|[.,](?=\s)|\s[-–—]\s)/u;

/** Headings of parts with several lessons. Their names teach nothing beyond the lines below them. */
const parts = new Set(
  'unit phase stage grade gr year quarter term trimester semester module block part section chapter roman month'.split(
    ' ',
  ),
);

/** Returns the title of a heading's step and the part of the line that is taught. */
function headingOf({ text, heading }: Line): { readonly title: string; readonly rest: string } {
  if (heading === 'letter' || heading === 'roman') return readLetterHeading(text)!;
  if (heading === 'bullet') return { title: '', rest: text };
  // The label's name is also the heading of its letters.
  if (heading === 'label') return { title: named.exec(text)!.groups!.name!, rest: text };
  return readStepHeading(text) ?? { title: text.replace(/:$/, ''), rest: '' };
}

/** Returns the lines under a heading, at most `LOOK_AHEAD`. */
function below(lines: readonly Line[], i: number, heading: string): readonly Line[] {
  const next = lines.slice(i + 1, i + 1 + LOOK_AHEAD);
  const end = next.findIndex((line) => line.heading === heading || (weak.has(heading) && isStrong(line)));
  return end < 0 ? next : next.slice(0, end);
}

/** Whether the text after "Unit 3:" is the unit's name rather than its content: "Digraphs", with sh and ch below. */
function isName(rest: string, under: readonly Line[]): boolean {
  const items = readItems(rest, 'patterns');
  const listed = under.filter(
    ({ bullet, text }) => bullet && readItems(text, 'patterns').some(({ patterns }) => patterns.length > 0),
  );
  const said = new Set(
    listed.flatMap(({ text }) => readItems(text, 'patterns').flatMap(({ patterns }) => patterns)),
  );
  // "Longer words" is the name if the lines below teach something about them.
  const only = items.every(
    ({ named, status, patterns }) => named && (status === 'guessed' || patterns.every((id) => said.has(id))),
  );
  if (listed.length > 1 && (only || isTitle(rest))) return true;
  if (
    !items.every(
      ({ status, headings }) => headings.length > 0 || status === 'unknown' || status === 'ignored',
    )
  )
    return false;
  const headings = items.flatMap((item) => item.headings);
  const taught = under
    .flatMap((line) => readItems(line.text, 'patterns', { ...nothingBeside, headings }))
    .some(({ patterns }) => patterns.length > 0);
  return (
    taught ||
    (under.some(({ heading }) => heading === null) && items.every(({ headings }) => headings.length === 0))
  );
}

/** Whether the words have capitals as in a title: "Open Syllables and y", "Vowel Teams I". */
function isTitle(text: string): boolean {
  const words = (text.match(/\p{L}+/gu) ?? []).filter(
    (word) => word.length > 3 && !/^(?:with|from|and|that)$/.test(word),
  );
  return words.length > 1 && words.every((word) => /^\p{Lu}\p{Ll}/u.test(word)) && !/[,:(/]/.test(text);
}

function stepsByBlock(lines: readonly Line[]): readonly LaidStep[] {
  const paragraphs =
    lines.some((line, i) => i > 0 && !line.blankBefore) && lines.some((line, i) => i > 0 && line.blankBefore);
  const steps: OpenStep[] = [];
  const cells = new CellReader(repeatedLabels(lines));
  for (const line of lines) {
    const goesOn = paragraphs ? !line.blankBefore : addsWords(line.text);
    if (steps.length === 0 || !goesOn) {
      cells.start(steps.at(-1)?.cells);
      steps.push({ title: '', kind: null, cells: [] });
    }
    cells.read(line.text, steps.at(-1)!.cells, line);
  }
  cells.start(steps.at(-1)?.cells);
  return steps;
}

/** Whether a line has only by-sight words or notes. It then belongs to the step above it. */
function addsWords(text: string): boolean {
  if (findColumnKind(text) === 'by-sight' || findColumnKind(text) === 'notes') return true;
  return readItems(text, 'patterns').every(
    ({ status, bySight }) => status === 'ignored' || (status === 'matched' && bySight.length > 0),
  );
}

/** A letter or name before a colon, at the start of a line. */
const labelled = /^(\p{Lu}[\p{L}\p{N} ]{0,15}):\s+(?=\S)/u;

/** The number of lines on which a name must occur to be taken for the name of a group or strand: "H: short a". */
const LABEL_LINES = 4;

/**
 * Returns names before a colon on many lines that say nothing about the content taught, such as the first letters of
 * groups.
 */
function repeatedLabels(lines: readonly Line[]): ReadonlySet<string> {
  const counts = new Map<string, number>();
  for (const { text, heading } of lines) {
    const label = heading === null ? labelled.exec(text)?.[1] : undefined;
    if (label !== undefined) counts.set(label, (counts.get(label) ?? 0) + 1);
  }
  const says = (label: string) =>
    findColumnKind(label) !== null ||
    readItems(label, 'patterns').some(({ patterns }) => patterns.length > 0);
  const repeated = [...counts].filter(
    ([label, count]) => count >= LABEL_LINES && (label.length === 1 || !says(label)),
  );
  return new Set(repeated.map(([label]) => label));
}

function cutLabel(line: string, labels: ReadonlySet<string>): readonly [string, string] {
  const found = labelled.exec(line);
  return found !== null && labels.has(found[1]!) ? [found[1]!, line.slice(found[0].length)] : ['', line];
}

/** Turns lines into cells. A line that only names a column gives the kind of the lines below it. */
class CellReader {
  private kind: CellKind = 'patterns';
  private name = '';
  /** The lines of an outline to which the next line may belong, the outermost first. */
  private above: { readonly indent: number; readonly text: string; readonly place: number }[] = [];
  private readonly labels: ReadonlySet<string>;
  private readonly columns: LabelKinds;
  private step = 0;

  constructor(labels: ReadonlySet<string>, columns: LabelKinds = new Map()) {
    this.labels = labels;
    this.columns = columns;
  }

  /** Reads a text into cells. `line` gives the position of the text in an outline. */
  read(text: string, cells: LaidCell[], line?: Line): void {
    const first = cells.length;
    const row = readLabelled(text, this.columns, this.step);
    if (row !== null) {
      this.flush(cells);
      this.kind = 'patterns';
      cells.push(...row);
      return;
    }
    this.add(text, cells);
    if (line === undefined) return;
    while (this.above.length > 0 && this.above.at(-1)!.indent >= line.indent) this.above.pop();
    for (const { place } of this.above) {
      const cell = cells[place]!;
      cells[place] = { ...cell, heads: cells.length - 1 - place };
    }
    // The nearest name comes first, because it counts most.
    const about = this.above
      .map(({ text: name }) => name)
      .reverse()
      .join('\n');
    for (let i = first; about !== '' && i < cells.length; i++) cells[i] = { ...cells[i]!, about };
    if (cells.length === first + 1) this.above.push({ indent: line.indent, text, place: first });
  }

  private add(line: string, cells: LaidCell[]): void {
    const [label, text] = cutLabel(line, this.labels);
    if (label !== '') cells.push({ text: label, kind: 'notes' });
    const kind = findColumnKind(text);
    if ((kind !== null && kind !== 'step') || /^[^,(]*:$/.test(text)) {
      this.flush(cells);
      this.kind = kind === null || kind === 'step' ? 'patterns' : kind;
      this.name = text.replace(/\s*:$/, '');
      return;
    }
    cells.push({ text: this.name === '' ? text : `${this.name}: ${text}`, kind: this.kind });
    this.name = '';
  }

  /** Begins a new step. A column's name without lines below it stays in the step before. */
  start(before: LaidCell[] | undefined): void {
    if (before !== undefined) this.flush(before);
    this.step += 1;
    this.kind = 'patterns';
    this.above = [];
  }

  private flush(cells: LaidCell[]): void {
    if (this.name !== '') cells.push({ text: this.name, kind: this.kind });
    this.name = '';
  }
}
