import type { PdfJoint, PdfLine, PdfPage, PdfParagraph, PdfSpan } from '../../passage/files/pdf-text.ts';

/** A piece of a line as it is laid over the drawn page. */
interface Run {
  readonly text: string;
  readonly x: number;
  readonly width: number;
  readonly y: number;
  readonly size: number;
  readonly family: string;
  readonly isUnsure: boolean;
}

/** How wide letters are by themselves, for every kind and size of them. */
const ruler = new OffscreenCanvas(1, 1).getContext('2d')!;

/**
 * Lays the text of a page, letters that nobody sees, over where it is drawn, so that its words can be marked and chosen: one element for
 * each paragraph, in which it runs on from line to line, so that a divided word is one. `n` is the page's number from 0.
 */
export function layText(page: PdfPage, n: number, paragraphs: readonly PdfParagraph[]): HTMLElement {
  const { width, height, turn } = page;
  const isAcross = turn % 2 === 1;
  const [wide, high] = isAcross ? [height, width] : [width, height];
  const layer = document.createElement('div');
  layer.className = 'pdf-text';
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
      // The end of a word stays with its beginning on the page before.
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

/** The first word of a line, as far as its first piece has it. */
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
 * Puts runs into an element one behind the other, in one line without end, and moves each from where it would stand to where it is drawn:
 * the browser sees words that run on, and the reader sees nothing of it.
 */
function layRuns(element: HTMLElement, runs: readonly Run[], high: number): void {
  const [first] = runs;
  if (!first) return;
  const lowest = Math.min(...runs.map(({ y }) => y));
  const left = Math.min(...runs.map(({ x }) => x));
  const right = Math.max(...runs.map(({ x, width }) => x + width));
  const base = baselineOf(first);
  const top = high - first.y - base;
  element.style.cssText = `left: ${left}px; top: ${top}px; width: ${right - left}px; height: ${first.y - lowest + first.size * 1.3}px; font: ${first.size}px/1 ${first.family};`;
  let at = 0;
  for (const { text, x, width, y, size, family, isUnsure } of runs) {
    const own = measure(text.trimEnd(), size, family);
    const letters = Math.max([...text.trimEnd()].length, 1);
    const spacing = Math.max((width - own) / letters, -size);
    // What was read without being sure is not judged: it is no text to the overlay.
    const run = document.createElement(isUnsure ? 'samp' : 'span');
    run.textContent = text;
    run.style.cssText = `left: ${x - left - at}px; top: ${first.y - y}px; font-size: ${size}px; font-family: ${family}; letter-spacing: ${spacing}px;`;
    element.append(run);
    at += measure(text, size, family) + spacing * [...text].length;
  }
}

function measure(text: string, size: number, family: string): number {
  ruler.font = `${size}px ${family}`;
  ruler.fontKerning = 'none';
  ruler.textRendering = 'geometricPrecision';
  // Letters that are set apart by anything are not joined.
  ruler.letterSpacing = '0.001px';
  return ruler.measureText(text).width;
}

/** How far below the top of a line as high as its letters they stand. */
function baselineOf({ size, family }: Run): number {
  ruler.font = `${size}px ${family}`;
  const { fontBoundingBoxAscent: above, fontBoundingBoxDescent: below } = ruler.measureText('x');
  return (size - above - below) / 2 + above;
}
