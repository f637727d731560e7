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

/** The marks of letters in one ink. They have their own highlight. */
export interface InkMark {
  readonly name: string;
  readonly mark: Mark;
  readonly ink: Ink;
}

/** Returns the style sheet of all marks in one look. */
export function markRules(look: Look, inkMarks: readonly InkMark[] = []): string {
  const plain = Object.entries(MARKS).map(([mark, name]) => ruleOf(name, mark as Mark, look));
  const inks = inkMarks.map(({ name, mark, ink }) => ruleOf(name, mark, look, ink));
  return [...plain, ...inks, forcedRule([...Object.values(MARKS), ...inkMarks.map(({ name }) => name)])].join(
    '\n',
  );
}

function ruleOf(name: string, mark: Mark, look: Look, ink?: Ink): string {
  const isClear = ink?.color === 'transparent';
  const line = isClear ? LINES_OVER_PICTURES[mark] : 'currentColor';
  const wash = WASHES[mark]?.[ink?.isDrawing ? 2 : isClear ? 1 : 0];
  const isWashed = look === 'wash' || mark === 'here' || ink?.isDrawing;
  const ground = wash && isWashed && !ink?.isFaint ? `background-color: ${wash};` : '';
  const letters = ink ? `color: ${ink.color};` : '';
  return `::highlight(${name}) { ${ground} ${letters} text-decoration: underline ${LINES[mark]} ${line}; text-underline-offset: 0.2em; text-decoration-skip-ink: auto; }`;
}

/**
 * Returns the rule for forced colours. With forced colours, browsers paint all highlights alike, and draw each line in
 * the colour of its text (Chromium 156). The line must be inside the painted box to be visible.
 */
function forcedRule(names: readonly string[]): string {
  const all = names.map((name) => `::highlight(${name})`).join(', ');
  return `@media (forced-colors: active) { ${all} { text-underline-offset: auto; } }`;
}
