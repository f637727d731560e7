import { own } from './own.ts';

/**
 * What letters are painted with where that is not their text's colour (`color`). A highlight paints letters with `color` alone: it
 * drops outlines and the colour to fill with (Chromium 156 and Firefox 153), so that letters would vanish or change.
 */
export interface Ink {
  /** The colour to paint the letters with; `transparent` where something else draws them. */
  readonly color: string;
  /** Letters of a drawing (SVG), under which Chromium 156 draws no line. */
  readonly isDrawing: boolean;
}

/** A transparent colour, or one that nobody sees: `rgba(0, 0, 0, 0)` is, `rgb(0, 0, 0)` and `rgba(0, 0, 0, 0.5)` are not. */
const TRANSPARENT = /^rgba\(.*, 0(?:\.0\d*)?\)$|\/ 0(?:\.0\d*)?\)$/;

/**
 * The ink of an element's own text; null for ordinary text. The transparent letters over a scanned page have one, and so do
 * outlined ones; black text on white, or text with a shadow, has none.
 */
export function findInk(element: Element, style: CSSStyleDeclaration): Ink | null {
  if (element.namespaceURI === 'http://www.w3.org/2000/svg') {
    const { fill } = style;
    return { color: /^rgb/.test(fill) ? fill : 'currentColor', isDrawing: true };
  }
  const { color, webkitTextFillColor: fill } = style;
  const painted = paintedColor(element, style, fill);
  if (TRANSPARENT.test(painted)) return { color: 'transparent', isDrawing: false };
  return painted === color ? null : { color: painted, isDrawing: false };
}

/** The outline's colour where letters are seen by it alone, else the colour they are filled with. */
function paintedColor(element: Element, style: CSSStyleDeclaration, fill: string): string {
  if (Number.parseFloat(style.webkitTextStrokeWidth) === 0) return fill;
  const outline = style.webkitTextStrokeColor;
  if (TRANSPARENT.test(outline)) return fill;
  return TRANSPARENT.test(fill) || isLikeGround(element, fill) ? outline : fill;
}

/** Colours whose red, green and blue differ by less than this together are taken for one. */
const ALIKE = 120;

/** Whether letters filled so do not stand out: white ones on white paper. Behind letters on a picture anything may be. */
function isLikeGround(element: Element, fill: string): boolean {
  for (let at: Element | null = element; at; at = own(at).parentElement) {
    const { backgroundColor, backgroundImage } = getComputedStyle(at);
    if (backgroundImage !== 'none') return false;
    if (!TRANSPARENT.test(backgroundColor)) return areAlike(backgroundColor, fill);
  }
  return areAlike('rgb(255, 255, 255)', fill);
}

function areAlike(one: string, other: string): boolean {
  const [a, b] = [one, other].map((color) => (color.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number));
  return a!.reduce((sum, value, i) => sum + Math.abs(value - (b![i] ?? 0)), 0) < ALIKE;
}
