import type { Look } from '../contract/page-contract.ts';

/** The names of the highlights. They are plain numbers, because the page can see them. */
export const MARKS = { beyond: 'wr-1', fresh: 'wr-2', unsure: 'wr-3', here: 'wr-4', soon: 'wr-5' } as const;

/**
 * Underlines are drawn in the text's own colour. On a page of any colour, the text contrasts with its background, and
 * so do the lines. No tint is mixed in: Chromium 156 keeps a mix with the colour of one part for other parts in the
 * same font, which leaves dark lines on dark parts. The wash is thin, and is left out where the text would lose too
 * much contrast. The line style tells the marks apart.
 */
export const LINES = {
  beyond: 'dotted 0.14em',
  soon: 'dotted 0.07em',
  fresh: 'solid 0.07em',
  unsure: 'dashed 0.06em',
  here: 'double 0.08em',
} as const;
/**
 * The wash of each mark: on plain text, over a picture of letters, and over letters of a drawing. In a drawing, the
 * wash may be the only visible part of the mark.
 */
export const WASHES: Partial<Record<Mark, readonly [plain: string, picture: string, drawing: string]>> = {
  beyond: ['rgb(206 96 48 / 0.085)', 'rgb(206 96 48 / 0.16)', 'rgb(206 96 48 / 0.28)'],
  soon: ['rgb(206 96 48 / 0.05)', 'rgb(206 96 48 / 0.08)', 'rgb(206 96 48 / 0.14)'],
  here: ['rgb(30 150 132 / 0.24)', 'rgb(30 150 132 / 0.24)', 'rgb(30 150 132 / 0.24)'],
};
/**
 * The line colours under letters that something else draws. A scanned page may be light or dark, and each colour has a
 * contrast of at least 3:1 on both.
 */
const LINES_OVER_PICTURES: Record<Mark, string> = {
  beyond: 'rgb(190 92 48)',
  soon: 'rgb(190 92 48)',
  fresh: 'rgb(20 132 116)',
  unsure: 'rgb(122 122 122)',
  here: 'rgb(20 132 116)',
};

export type Mark = keyof typeof LINES;

/**
 * The paint of letters that are not in their text's colour (`color`). A highlight paints letters with `color` alone. It
 * drops outlines and the fill colour (Chromium 156 and Firefox 153), so that such letters would vanish or change.
 */
export interface Ink {
  /** The colour in which the letters are painted; `transparent` where something else draws them. */
  readonly color: string;
  /** Whether the letters belong to a drawing (SVG). Chromium 156 draws no line under such letters. */
  readonly isDrawing?: boolean;
  /** Whether the letters are only just legible, and would be less legible on a wash. */
  readonly isFaint?: boolean;
}

/** Elements with larger letters than the page's text. */
export const HEADINGS = ':is(h1, h2, h3, h4)';
/** The distance of the line from the letters. */
const OFFSET = '0.2em';

interface RuleMark {
  readonly name: string;
  readonly mark: Mark;
}

/** The marks of letters in one ink. They have their own highlight. */
export interface InkMark extends RuleMark {
  readonly ink: Ink;
}

/**
 * The version of Chromium from which the style of a highlight is inherited (CSS Pseudo-Elements Module Level 4, 3.6). From
 * memory.
 */
const INHERITS = 134;

/** Returns whether a browser is known to inherit the styles of highlights. */
export function inheritsMarks(userAgent: string): boolean {
  return Number(/Chrome\/(\d+)/.exec(userAgent)?.[1] ?? 0) >= INHERITS;
}

/**
 * Returns the style sheet of all marks in one look. With `size`, the letter size of the page's text in CSS pixels, the
 * rules are for the root, and all elements inherit them. The browser then keeps no styles of its own for each element,
 * which saves 700 bytes an element and half the time to compute the styles. Inherited lines do not grow with the letters,
 * so headings have rules for their lines. Without `size`, the rules are for all elements.
 */
export function markRules(look: Look, inkMarks: readonly InkMark[] = [], size?: number): string {
  const plain = Object.entries(MARKS).map(([mark, name]) => ({ name, mark: mark as Mark, ink: undefined }));
  const all = [...plain, ...inkMarks];
  const rules = all.flatMap((one) => [ruleOf(one, look, size), ...(size ? [headingRule(one)] : [])]);
  return [...rules, forcedRule(all.flatMap(({ name }) => selectorsOf(name, size)))].join('\n');
}

function selectorOf(name: string, size?: number): string {
  return `${size ? ':root' : ''}::highlight(${name})`;
}

/** Returns the selectors of all rules of one highlight. */
function selectorsOf(name: string, size?: number): string[] {
  return size ? [selectorOf(name, size), `${HEADINGS}::highlight(${name})`] : [selectorOf(name)];
}

function ruleOf(
  { name, mark, ink }: RuleMark & { readonly ink?: Ink | undefined },
  look: Look,
  size?: number,
): string {
  const isClear = ink?.color === 'transparent';
  const line = isClear ? LINES_OVER_PICTURES[mark] : 'currentColor';
  const wash = WASHES[mark]?.[ink?.isDrawing ? 2 : isClear ? 1 : 0];
  const isWashed = look === 'wash' || mark === 'here' || ink?.isDrawing;
  const ground = wash && isWashed && !ink?.isFaint ? `background-color: ${wash};` : '';
  const letters = ink ? `color: ${ink.color};` : '';
  const length = (text: string): string =>
    size ? text.replace(/[\d.]+em/, (em) => `${Number.parseFloat(em) * size}px`) : text;
  return `${selectorOf(name, size)} { ${ground} ${letters} text-decoration: underline ${length(LINES[mark])} ${line}; text-underline-offset: ${length(OFFSET)}; text-decoration-skip-ink: auto; }`;
}

/** Returns the rule by which the lines under headings grow with their letters. */
function headingRule({ name, mark }: RuleMark): string {
  const [, thickness] = LINES[mark].split(' ');
  return `${HEADINGS}::highlight(${name}) { text-decoration-thickness: ${thickness}; text-underline-offset: ${OFFSET}; }`;
}

/**
 * Returns the rule for forced colours. With forced colours, browsers paint all highlights alike, and draw each line in
 * the colour of its text (Chromium 156). The line must be inside the painted box to be visible.
 */
function forcedRule(selectors: readonly string[]): string {
  return `@media (forced-colors: active) { ${selectors.join(', ')} { text-underline-offset: auto; } }`;
}
