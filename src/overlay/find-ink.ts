import { type Ink, WASHES } from './mark-rules.ts';
import { own } from './own.ts';
import { drawnIn } from './text-blocks.ts';

/**
 * Creates a function that finds the ink of a text. The ink is null for ordinary text, such as black text on white or
 * text with a shadow, and for a text that is in no element. The transparent letters over a scanned page have an ink,
 * and so do outlined letters and grey letters on white.
 */
export function createInkFinder(): (text: Text) => Ink | null {
  const grounds: Grounds = new Map();
  let last: Node | undefined;
  let ink: Ink | null = null;
  return (text) => {
    const node = drawnIn.get(text);
    if (node !== last) {
      // The page may change its colours as soon as its scripts run.
      if (!last)
        queueMicrotask(() => {
          last = undefined;
          grounds.clear();
        });
      last = node;
      ink = node instanceof Element ? findInk(node, getComputedStyle(node), grounds) : null;
    }
    return ink;
  };
}

function findInk(element: Element, style: CSSStyleDeclaration, grounds: Grounds): Ink | null {
  if (element.namespaceURI === 'http://www.w3.org/2000/svg') {
    const { fill } = style;
    const isFaint = isFaintOn(findGround(element, grounds), parse(fill), 2);
    return { color: /^rgb/.test(fill) ? fill : 'currentColor', isDrawing: true, isFaint };
  }
  const { color } = style;
  const ground = findGround(element, grounds);
  const painted = paintedColor(ground, style);
  if (isClear(painted)) return { color: 'transparent' };
  const isFaint = isFaintOn(ground, parse(painted));
  if (painted !== color) return { color: painted, isFaint };
  return isFaint ? { color: 'currentColor', isFaint } : null;
}

/** Returns the outline's colour if only the outline makes the letters visible, otherwise the fill colour. */
function paintedColor(ground: Colour, style: CSSStyleDeclaration): string {
  const { webkitTextFillColor: fill, webkitTextStrokeColor: outline } = style;
  if (!Number.parseFloat(style.webkitTextStrokeWidth) || isClear(outline)) return fill;
  return isClear(fill) || contrast(ground, parse(fill)) < 1.5 ? outline : fill;
}

/** Red, green and blue up to 255, and the opacity if the colour is not fully opaque. Empty if the colour is not known. */
type Colour = readonly number[];

/** The background colours of elements that were computed so far. */
type Grounds = Map<Element, Colour>;

/**
 * Returns the background colour of an element. A page has a white background by default. The background of letters on a
 * picture is unknown.
 */
function findGround(element: Element, grounds: Grounds): Colour {
  const layers: [Element, Colour][] = [];
  let ground: Colour = [255, 255, 255];
  for (let at: Element | null = element; at; at = own(at).parentElement) {
    const layer = grounds.get(at) ?? layerOf(at);
    layers.push([at, layer]);
    if (layer.length < 4) break;
  }
  for (const [at, layer] of layers.reverse()) {
    ground = mix(ground, layer);
    grounds.set(at, ground);
  }
  return ground;
}

function layerOf(element: Element): Colour {
  const { backgroundColor, backgroundImage } = getComputedStyle(element);
  return backgroundImage === 'none' ? parse(backgroundColor) : [];
}

/**
 * Returns whether the wash would leave letters less legible than text must be (WCAG 2.2, 1.4.3: 4.5:1, plus a little
 * for the rounding of colours). On an unknown background, returns whether the letters are not black, because the wash
 * is lighter than any background on which black is just legible. `over` is the index of the wash.
 */
function isFaintOn(ground: Colour, letters: Colour, over = 0): boolean {
  return ground.length
    ? contrast(mix(ground, parse(WASHES.beyond![over]!)), letters) < 4.6
    : lightOf(letters) > 5.7;
}

/** Returns whether a colour is invisible: `rgba(0, 0, 0, 0)` is, `rgb(0, 0, 0)` and `rgba(0, 0, 0, 0.5)` are not. */
function isClear(color: string): boolean {
  return numbersIn(color)[3]! < 0.1;
}

function parse(color: string): Colour {
  return /^rgb/.test(color) ? numbersIn(color) : [];
}

function numbersIn(color: string): Colour {
  return (color.match(/[\d.]+/g) ?? []).map(Number);
}

function mix(below: Colour, above: Colour): Colour {
  return above.length ? below.map((value, i) => value + (above[i]! - value) * (above[3] ?? 1)) : above;
}

/**
 * Returns the contrast of letters on a background (WCAG 2.2). Returns a sufficient contrast when the background is not
 * known.
 */
function contrast(ground: Colour, letters: Colour): number {
  const ratio = lightOf(ground) / lightOf(mix(ground, letters));
  return ground.length ? Math.max(ratio, 1 / ratio) : 9;
}

/**
 * Returns the luminance in percent, plus five for the light that falls on every screen (WCAG 2.2). Near black, the WCAG
 * formula is a line. This function uses the curve there too.
 */
function lightOf(color: Colour): number {
  return [21, 72, 7].reduce(
    (sum, share, i) => sum + share * (((color[i] ?? 0) / 255 + 0.055) / 1.055) ** 2.4,
    5,
  );
}
