import { findColumnKind } from './column-kinds.ts';
import { readItems } from './read-items.ts';
import type { Line } from './read-lines.ts';
import { readLetterHeading, readStepHeading } from './step-heading.ts';

/** Drops headings if stronger ones divide the text: lead lines under weeks, and numbers that only count bullets. */
export function settleHeadings(all: readonly Line[]): readonly Line[] {
  const lines = settleLabels(settleOutline(all));
  const counts = countsSteps(lines, 'number');
  const letters = countsSteps(lines, 'letter');
  const counting = new Map([
    ['lead', !lines.some(isStrong) && !counts && !letters],
    ['number', counts],
    ['letter', letters && (!counts || lettersLead(lines))],
  ]);
  const points = counting.get('letter') === false ? letteredPoints(lines) : new Set<Line>();
  const bullets = bulletSteps(lines);
  return lines.map((line) => {
    if (bullets.has(line)) return { ...line, heading: 'bullet' };
    if (points.has(line))
      return { ...line, text: readLetterHeading(line.text)!.rest, bullet: true, heading: null };
    return line.heading !== null && counting.get(line.heading) === false ? { ...line, heading: null } : line;
  });
}

/**
 * Finds lines below headings that are lettered from a on: `a. ai, ay` and `b. Words: rain`. Their letters teach
 * nothing.
 */
function letteredPoints(lines: readonly Line[]): ReadonlySet<Line> {
  const points = new Set<Line>();
  let run: Line[] = [];
  const close = () => {
    if (run.length > 1) for (const line of run) points.add(line);
    run = [];
  };
  for (const line of lines) {
    if (line.heading === 'letter' && letterPlace(line) === run.length) run.push(line);
    else if (line.heading !== null) {
      close();
      if (line.heading === 'letter' && letterPlace(line) === 0) run.push(line);
    }
  }
  close();
  return points;
}

/** The smallest average number of bullets below a heading if each bullet is a step. */
const MANY_BULLETS = 4;
/** Headings for a large part of the time at school. */
const spans = new Set('stage phase grade gr year quarter term trimester semester'.split(' '));

/**
 * Finds bullets that are steps. There are many such bullets below each year, term or stage (`- sh, ch` below "Stage
 * two"), or below each name in which nothing is taught ("Senior class"). The bullets below "Week 2" or "Digraphs" are
 * parts of one step.
 */
function bulletSteps(lines: readonly Line[]): ReadonlySet<Line> {
  const heads = lines.filter(({ heading }) => heading !== null);
  const isSpan = ({ text, heading }: Line) =>
    spans.has(heading!) || (heading === 'lead' && teachesNothing(text));
  const bullets = lines.filter(({ bullet, heading }) => bullet && heading === null);
  const own = Math.min(...bullets.map(({ indent }) => indent));
  const steps = bullets.filter(({ indent, text }) => indent === own && findColumnKind(text) === null);
  if (heads.length === 0 || steps.length < heads.length * MANY_BULLETS) return new Set();
  return new Set(heads.every(isSpan) && !steps.some(({ text }) => named.test(text)) ? steps : []);
}

function teachesNothing(text: string): boolean {
  return readItems(text, 'patterns').every(
    ({ status, headings }) => headings.length === 0 && (status === 'unknown' || status === 'ignored'),
  );
}

/** Settles Roman numbers. They are headings if they continue from I. A single I, V or X among letters is a letter. */
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
 * Whether numbers or letters at the start of lines count the steps. Under weeks they must continue from one week to the
 * next. Under units and the like, each unit may also begin anew.
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
    // Letters are steps only if they begin with A and continue in order.
    if (kind === 'letter' && places[0] !== (sameSection ? last!.places[0]! + 1 : 0)) return false;
    anew &&= strong !== null && sections.has(strong);
    counted.add(section);
    // `3.1` under one heading and `4.1` under the next also continue in order.
    if (strong !== null && last !== null && !isAfter(places, last.places) && !(anew && !sameSection))
      return false;
    runsOn ||= last !== null && section > last.section;
    last = { places, section };
    count += 1;
  }
  // A numbered list in one unit of many does not count steps.
  return count > 1 && (strong === null || runsOn || (anew && counted.size * 3 >= section * 2));
}

/** Headings for parts with several steps. */
const sections = new Set(
  'unit phase stage grade gr year quarter term trimester semester module block part section chapter roman'.split(
    ' ',
  ),
);

function numbersOf({ text }: Line): readonly number[] {
  // "2a" may follow "1a" and "1b".
  const places = readStepHeading(text)?.title.match(/\d+|(?<=\d)[a-z]$/g) ?? [];
  return places.map((place) => (/\d/.test(place) ? Number(place) : place.charCodeAt(0)));
}

/** Whether each letter has its own numbers below it: `A. Short vowels`, `1. a, i`, `2. o`, `B. Digraphs`, `1. sh`. */
function lettersLead(lines: readonly Line[]): boolean {
  const outline = lines.filter(({ heading }) => heading === 'letter' || heading === 'number');
  return outline.every(({ heading }, i) => {
    const next = outline[i + 1];
    if (heading === 'letter') return next?.heading === 'number' && numbersOf(next)[0] === 1;
    return i > 0;
  });
}

function letterPlace({ text }: Line): number {
  return readLetterHeading(text)!.title.toLowerCase().charCodeAt(0) - 'a'.charCodeAt(0);
}

/** A line with a name, a colon and the content it names. */
export const named = /^(?<name>\p{Lu}[^:,()]{2,40}):\s+\S/u;

/**
 * Turns lines such as `Vowel digraphs: ai ee igh` into steps. Each line of the paragraph must have such a name or be a
 * step, and no name may occur twice. `Focus: sh` below a week is not a step.
 */
function settleLabels(lines: readonly Line[]): readonly Line[] {
  if (!lines.some(isStrong)) return lines;
  const paragraphs = paragraphsOf(lines);
  const nameOf = ({ text, heading, bullet }: Line) =>
    bullet || (heading !== null && heading !== 'lead') ? undefined : named.exec(text)?.groups?.name;
  const baseOf = (line: Line) => nameOf(line)?.replace(/\s*\d+$/, '');
  /** The number of paragraphs in which each name occurs. */
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

export function isStrong({ heading }: Line): boolean {
  return heading !== null && !weak.has(heading);
}

/** Headings that count only if no stronger ones divide the text. */
export const weak = new Set(['lead', 'number', 'letter', 'label', 'bullet']);
