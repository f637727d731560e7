import type { PdfJoint, PdfLine, PdfPage, PdfParagraph, PdfSpan } from '../../passage/files/pdf-text.ts';

/** A piece of a line that is laid over the drawn page. */
interface Run {
  readonly text: string;
  readonly x: number;
  readonly width: number;
  readonly y: number;
  readonly size: number;
  readonly family: string;
  readonly isUnsure: boolean;
}

/** The canvas context that measures how far below the top of a line the letters are. */
const ruler = new OffscreenCanvas(1, 1).getContext('2d')!;

/** The drawn position of each run of text that was laid. An entry is dropped together with its element. */
const places = new WeakMap<Element, Pick<Run, 'x' | 'width' | 'size'>>();

/**
 * Lays the text of a page as invisible letters over the drawn page, so that its words can be marked and selected. Each
 * paragraph is one element. Its text runs on from line to line, so that a divided word is one word. `n` is the page
 * number, counted from 0.
 */
export function layText(page: PdfPage, n: number, paragraphs: readonly PdfParagraph[]): HTMLElement {
  const { width, height, turn } = page;
  const isAcross = turn % 2 === 1;
  const [wide, high] = isAcross ? [height, width] : [width, height];
  const layer = document.createElement('div');
  layer.className = 'pdf-text';
  layer.dataset.turn = `${turn}`;
  layer.lang = 'en';
  layer.dir = 'ltr';
  layer.style.width = `${wide}px`;
  layer.style.height = `${high}px`;
  layer.style.transform = [
    'scale(var(--pdf-scale))',
    ['', `translate(${width}px, 0)`, `translate(${width}px, ${height}px)`, `translate(0, ${height}px)`][turn],
    turn > 0 ? `rotate(${turn * 90}deg)` : '',
  ].join(' ');
  for (const { kind, level, parts } of paragraphs) {
    const lines = parts.map(({ line, joint }, at) => ({
      line,
      joint,
      next: parts[at + 1]?.line,
      // The end of a divided word stays with its beginning on the page before.
      cut: at > 0 && parts[at - 1]!.line.page !== line.page && parts[at - 1]!.joint !== 'blank',
    }));
    const here = lines.filter(({ line }) => line.page === n);
    if (here.length === 0) continue;
    const element = document.createElement(kind === 'heading' ? `h${level + 1}` : 'p');
    layRuns(element, here.flatMap(runsOf), high);
    layer.append(element);
  }
  return layer;
}

interface LineHere {
  readonly line: PdfLine;
  readonly joint: PdfJoint;
  readonly next: PdfLine | undefined;
  readonly cut: boolean;
}

function runsOf({ line, joint, next, cut }: LineHere): Run[] {
  const { y, size } = line;
  const spans: PdfSpan[] = line.spans.filter(({ text }) => text !== '').map((span) => ({ ...span }));
  if (cut && spans[0]) spans[0] = withoutStart(spans[0], wordAt(line).length);
  const last = spans.at(-1);
  if (last) {
    if (joint === 'hyphen') spans[spans.length - 1] = withoutHyphen(last);
    else if (joint === 'blank' && !/\s$/.test(last.text)) last.text += ' ';
    if (joint !== 'blank' && next && next.page !== line.page) spans.at(-1)!.text += wordAt(next);
  }
  return spans.map(({ isUnsure = false, ...span }) => ({ ...span, isUnsure, y, size }));
}

/** Returns the first word of a line, as far as the first piece of the line contains it. */
function wordAt({ spans }: PdfLine): string {
  return /^\S*/.exec(spans[0]?.text ?? '')![0];
}

function withoutStart(span: PdfSpan, letters: number): PdfSpan {
  const { text, x, width } = span;
  const gone = (width * letters) / Math.max(text.length, 1);
  return { ...span, text: text.slice(letters), x: x + gone, width: width - gone };
}

function withoutHyphen(span: PdfSpan): PdfSpan {
  const whole = span.text.trimEnd();
  const text = whole.slice(0, -1);
  return { ...span, text, width: (span.width * text.length) / Math.max(whole.length, 1) };
}

/**
 * Puts the runs of text into an element one after the other, on one endless line. `settleText` then moves each run to
 * its drawn place. The browser therefore sees continuous text, and the reader sees no difference.
 */
function layRuns(element: HTMLElement, runs: readonly Run[], high: number): void {
  const [first] = runs;
  if (!first) return;
  const lowest = Math.min(...runs.map(({ y }) => y));
  const left = Math.min(...runs.map(({ x }) => x));
  const right = Math.max(...runs.map(({ x, width }) => x + width));
  const top = high - first.y - baselineOf(first);
  element.style.cssText = `left: ${left}px; top: ${top}px; width: ${right - left}px; height: ${first.y - lowest + first.size * 1.3}px; font: ${first.size}px/1 ${first.family};`;
  for (const { text, x, width, y, size, family, isUnsure } of runs) {
    // Words with an unsure reading are not judged, because the overlay does not treat `samp` as text.
    const run = document.createElement(isUnsure ? 'samp' : 'span');
    run.textContent = text;
    run.style.cssText = `top: ${first.y - y}px; font-size: ${size}px; font-family: ${family};`;
    places.set(run, { x: x - left, width, size });
    element.append(run);
  }
}

/** The width of a space, as a share of the font size. */
const BLANK = 0.25;

/**
 * Gives all text that was laid under an element the width and the place of the drawn text. The element must be on the
 * page.
 */
export function settleText(root: HTMLElement): void {
  const runs = [...root.querySelectorAll<HTMLElement>('.pdf-text > * > *')].flatMap((run) => {
    const place = places.get(run);
    return place && run.textContent ? [{ run, place, letters: [...run.textContent] }] : [];
  });
  const scale = Number(getComputedStyle(root).getPropertyValue('--pdf-scale')) || 1;
  const widths = runs.map(({ run }) => widthOf(run) / scale);
  for (const [n, { run, place, letters }] of runs.entries()) {
    const wanted = place.width + (letters.at(-1) === ' ' ? BLANK * place.size : 0);
    const spacing = Math.max((wanted - widths[n]!) / letters.length, -place.size);
    run.style.letterSpacing = `${spacing}px`;
  }
  const lefts = runs.map(({ run }) => startOf(run) / scale);
  for (const [n, { run, place }] of runs.entries()) run.style.left = `${place.x - lefts[n]!}px`;
}

/** Returns the rendered width of a run along its line, on a page that may be turned. */
function widthOf(run: HTMLElement): number {
  const { width, height } = run.getBoundingClientRect();
  return turnOf(run) % 2 === 1 ? height : width;
}

/** Returns the rendered distance along the line from the start of the paragraph to the start of a run. */
function startOf(run: HTMLElement): number {
  const own = run.getBoundingClientRect();
  const around = run.parentElement!.getBoundingClientRect();
  switch (turnOf(run)) {
    case 1:
      return own.top - around.top;
    case 2:
      return around.right - own.right;
    case 3:
      return around.bottom - own.bottom;
    default:
      return own.left - around.left;
  }
}

function turnOf(run: HTMLElement): number {
  return Number(run.closest<HTMLElement>('.pdf-text')!.dataset.turn);
}

/** Returns the distance from the top of a line to its baseline, for a line as high as its font size. */
function baselineOf({ size, family }: Run): number {
  ruler.font = `${size}px ${family}`;
  const { fontBoundingBoxAscent: above, fontBoundingBoxDescent: below } = ruler.measureText('x');
  return (size - above - below) / 2 + above;
}
