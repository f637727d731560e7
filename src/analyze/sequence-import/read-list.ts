import { type CellKind, findColumnKind } from './column-kinds.ts';
import type { LaidCell, LaidStep, Layout } from './layout.ts';
import { readItems } from './read-items.ts';
import { type Line, readLines } from './read-lines.ts';
import { readLetterHeading, readStepHeading } from './step-heading.ts';

interface OpenStep {
  title: string;
  /** What its heading counts; null where there was none. */
  readonly kind: string | null;
  readonly cells: LaidCell[];
  /** What its heading says besides numbers. */
  readonly about?: string;
}

/** How far below a heading to look for what it is a heading of. */
const LOOK_AHEAD = 12;

/**
 * Reads a list or document into steps: one below each heading; without headings one a paragraph, or one a line
 * where there are no paragraphs.
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

/** Drops headings where stronger ones divide the text: leads under weeks, numbers that only count bullets. */
function settleHeadings(all: readonly Line[]): readonly Line[] {
  const outlined = settleOutline(all);
  const lines = settleLabels(outlined);
  const strong = lines.some(isStrong);
  const counts = countsSteps(lines, 'number');
  const letters = countsSteps(lines, 'letter');
  const kept = ({ heading }: Line) =>
    heading === 'lead'
      ? !strong && !counts && !letters
      : heading === 'number'
        ? counts
        : heading === 'letter'
          ? letters && !counts
          : true;
  return lines.map((line) => (kept(line) ? line : { ...line, heading: null }));
}

/** Roman numbers are headings where they run on from I; a lone I, V or X among letters is one of them. */
function settleOutline(lines: readonly Line[]): readonly Line[] {
  let next = 0;
  const runs = lines.flatMap((line) => {
    if (line.heading !== 'roman' || readLetterHeading(line.text)!.title.toUpperCase() !== romans[next])
      return [];
    next += 1;
    return [line];
  });
  const sections = new Set(runs.length > 1 ? runs : []);
  return lines.map((line) => {
    if (line.heading !== 'roman' || sections.has(line)) return line;
    const single = readLetterHeading(line.text)!.title.length === 1;
    return { ...line, heading: single ? 'letter' : null };
  });
}

const romans = 'I II III IV V VI VII VIII IX X XI XII XIII XIV XV XVI XVII XVIII XIX XX'.split(' ');

/**
 * Whether numbers or letters at the start of lines count the steps: under weeks only if they run on from one to the
 * next, under units and the like also where each begins anew.
 */
function countsSteps(lines: readonly Line[], kind: 'number' | 'letter'): boolean {
  let section = 0;
  let strong: string | null = null;
  let last: { places: readonly number[]; section: number } | null = null;
  let count = 0;
  let runsOn = false;
  let anew = true;
  const counted = new Set<number>();
  for (const line of lines) {
    if (isStrong(line)) {
      section += 1;
      strong = line.heading;
    }
    if (line.heading !== kind) continue;
    const places = kind === 'number' ? numbersOf(line) : [letterPlace(line)];
    const sameSection = last?.section === section;
    // Letters alone are steps only where they begin with A and run on.
    if (kind === 'letter' && places[0] !== (sameSection ? last!.places[0]! + 1 : 0)) return false;
    anew &&= strong !== null && sections.has(strong);
    counted.add(section);
    // `3.1` under one heading and `4.1` under the next run on too.
    if (strong !== null && last !== null && !isAfter(places, last.places) && !(anew && !sameSection))
      return false;
    runsOn ||= last !== null && section > last.section;
    last = { places, section };
    count += 1;
  }
  // A numbered list in one unit of many is a list.
  return count > 1 && (strong === null || runsOn || (anew && counted.size * 3 >= section * 2));
}

/** Headings of what has several steps. */
const sections = new Set(
  'unit phase stage grade gr year quarter term trimester semester module block part section chapter roman'.split(
    ' ',
  ),
);

function numbersOf({ text }: Line): readonly number[] {
  return (readStepHeading(text)?.title.match(/\d+/g) ?? []).map(Number);
}

function letterPlace({ text }: Line): number {
  return readLetterHeading(text)!.title.toLowerCase().charCodeAt(0) - 'a'.charCodeAt(0);
}

/** A name before a colon and what it names, on one line. */
const named = /^(?<name>\p{Lu}[^:,()]{2,40}):\s+\S/u;

/**
 * `Vowel digraphs: ai ee igh` is a step among others where each line of its paragraph has such a name, or is a step,
 * and none comes twice; `Focus: sh` below a week is no step.
 */
function settleLabels(lines: readonly Line[]): readonly Line[] {
  if (!lines.some(isStrong)) return lines;
  const paragraphs = paragraphsOf(lines);
  const nameOf = ({ text, heading, bullet }: Line) =>
    bullet || (heading !== null && heading !== 'lead') ? undefined : named.exec(text)?.groups!.name;
  const baseOf = (line: Line) => nameOf(line)?.replace(/\s*\d+$/, '');
  /** In how many paragraphs each name comes. */
  const counts = new Map<string | undefined, number>();
  for (const paragraph of paragraphs)
    for (const name of new Set(paragraph.map(baseOf))) counts.set(name, (counts.get(name) ?? 0) + 1);
  const isLabel = (line: Line) => {
    const name = nameOf(line);
    return name !== undefined && findColumnKind(name) === null && counts.get(baseOf(line)) === 1;
  };
  const labels = new Set<Line>();
  for (const paragraph of paragraphs) {
    const body = paragraph.filter(({ heading }) => heading === null || !sections.has(heading));
    const own = body.filter(isLabel);
    const holds = body.every(
      (line) => isLabel(line) || (isStrong(line) && readStepHeading(line.text)?.rest !== ''),
    );
    if (own.length > 1 && holds) for (const line of own) labels.add(line);
  }
  return lines.map((line) => (labels.has(line) ? { ...line, heading: 'label' } : line));
}

function paragraphsOf(lines: readonly Line[]): readonly (readonly Line[])[] {
  const paragraphs: Line[][] = [];
  for (const line of lines) {
    const last = paragraphs.at(-1);
    if (last === undefined || line.blankBefore) paragraphs.push([line]);
    else last.push(line);
  }
  return paragraphs;
}

function isAfter(numbers: readonly number[], others: readonly number[]): boolean {
  const place = numbers.findIndex((number, i) => number !== others[i]);
  return place >= 0 && (others[place] === undefined || numbers[place]! > others[place]);
}

function isStrong({ heading }: Line): boolean {
  return heading !== null && !weak.has(heading);
}

/** Headings that count only where no stronger ones divide the text. */
const weak = new Set(['lead', 'number', 'letter', 'label']);

/** How many lines at the top say what the whole is: lines before the first heading in which nothing is understood. */
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
  // A document's one heading of the first rank.
  const rank = top.heading!;
  const alone = rank.startsWith('#') && !lines.slice(1).some(({ heading }) => heading === rank);
  return alone && next.heading !== null ? 1 : 0;
}

/** Words by which a line calls the whole a plan: "Our phonics plan", "Scope and sequence". */
const planNames =
  /\b(?:scope|sequence|plan|plans|overview|map|pacing|guide|calendar|progression|curriculum|planner|outline|roadmap)\b/i;

function stepsByHeading(lines: readonly Line[]): readonly LaidStep[] {
  const steps: OpenStep[] = [];
  const cells = new CellReader(repeatedLabels(lines));
  lines.forEach((line, i) => {
    if (line.heading === null) {
      if (steps.length === 0) steps.push({ title: '', kind: null, cells: [] });
      cells.read(line.text, steps.at(-1)!.cells);
      return;
    }
    const read = headingOf(line);
    const named =
      read.rest !== '' && line.heading !== 'label' && isName(read.rest, below(lines, i, line.heading));
    const title = named ? line.text.replace(/:$/, '') : read.title;
    const before = steps.at(-1);
    cells.start(steps.at(-1)?.cells);
    if (before !== undefined && before.cells.length === 0 && before.kind !== line.heading) {
      // A unit's heading right above that of its first week.
      steps[steps.length - 1] = { title: `${before.title} · ${title}`, kind: line.heading, cells: [] };
    } else {
      steps.push({ title, kind: line.heading, cells: [], ...(named ? { about: read.rest } : {}) });
    }
    if (read.rest !== '' && !named) cells.read(read.rest, steps.at(-1)!.cells);
  });
  cells.start(steps.at(-1)?.cells);
  return steps.map(({ title, cells: laid, about }) => ({
    title,
    cells: about === undefined ? laid : laid.map((cell) => ({ ...cell, about })),
  }));
}

/** The title of a heading's step, and what of the line it teaches. */
function headingOf({ text, heading }: Line): { readonly title: string; readonly rest: string } {
  if (heading === 'letter' || heading === 'roman') return readLetterHeading(text)!;
  // Its name is the heading of its letters as well.
  if (heading === 'label') return { title: named.exec(text)!.groups!.name!, rest: text };
  return readStepHeading(text) ?? { title: text.replace(/:$/, ''), rest: '' };
}

/** The lines that stand under a heading, as far as it matters. */
function below(lines: readonly Line[], i: number, heading: string): readonly Line[] {
  const next = lines.slice(i + 1, i + 1 + LOOK_AHEAD);
  const end = next.findIndex((line) => line.heading === heading || (weak.has(heading) && isStrong(line)));
  return end < 0 ? next : next.slice(0, end);
}

/** Whether what follows "Unit 3:" is the unit's name rather than what it teaches: "Digraphs", with sh and ch below. */
function isName(rest: string, under: readonly Line[]): boolean {
  const items = readItems(rest, 'patterns');
  if (
    !items.every(
      ({ status, headings }) => headings.length > 0 || status === 'unknown' || status === 'ignored',
    )
  )
    return false;
  const taught = under
    .flatMap((line) => readItems(line.text, 'patterns'))
    .some(({ patterns }) => patterns.length > 0);
  return (
    taught ||
    (under.some(({ heading }) => heading === null) && items.every(({ headings }) => headings.length === 0))
  );
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
    cells.read(line.text, steps.at(-1)!.cells);
  }
  cells.start(steps.at(-1)?.cells);
  return steps;
}

/** A line of by-sight words or notes belongs to the step above it. */
function addsWords(text: string): boolean {
  if (findColumnKind(text) === 'by-sight' || findColumnKind(text) === 'notes') return true;
  return readItems(text, 'patterns').every(
    ({ status, bySight }) => status === 'ignored' || (status === 'matched' && bySight.length > 0),
  );
}

/** A letter or name before a colon, at the start of a line. */
const labelled = /^(\p{Lu}[\p{L}\p{N} ]{0,15}):\s+(?=\S)/u;

/** On how many lines a name stands before it is taken for that of a group or strand: "H: short a". */
const LABEL_LINES = 4;

/** Names before a colon on many lines that say nothing of what is taught, such as the first letters of groups. */
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

/** Turns lines into cells: a line that only names a column says what the lines below it hold. */
class CellReader {
  private kind: CellKind = 'patterns';
  private name = '';
  private readonly labels: ReadonlySet<string>;

  constructor(labels: ReadonlySet<string>) {
    this.labels = labels;
  }

  read(line: string, cells: LaidCell[]): void {
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

  /** Begins a new step; a name that nothing followed stays with the step before. */
  start(before: LaidCell[] | undefined): void {
    if (before !== undefined) this.flush(before);
    this.kind = 'patterns';
  }

  private flush(cells: LaidCell[]): void {
    if (this.name !== '') cells.push({ text: this.name, kind: this.kind });
    this.name = '';
  }
}
