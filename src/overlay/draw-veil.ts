import type { Look } from '../contract/page-contract.ts';
import { LINES, type Mark, WASHES } from './mark-rules.ts';
import { own } from './own.ts';

/** The current marks. */
export interface Marked {
  readonly look: Look;
  readonly marks: readonly { readonly mark: Mark; readonly ranges: ReadonlySet<StaticRange> }[];
}

/** Marks words on a transparent layer over the page that no script of the page can read. */
export interface Veil {
  /** Draws the marks again with the next frame of the page. */
  draw(): void;
}

export type OpenVeil = typeof openVeil;

const RULES = `
:host { all: initial !important; position: fixed !important; inset: 0 !important; display: block !important; pointer-events: none !important;
  user-select: none !important; z-index: 2147483646 !important }
canvas { position: absolute; inset: 0; width: 100%; height: 100% }
@media print { :host { display: none !important } }`;

/** The least time, in milliseconds, between two reactions to changes of the page. Some pages never stop changing. */
const LATER = 250;
/** Events after which a page may look different. */
const MOVES = ['scroll', 'load', 'transitionend', 'animationend', 'toggle', 'input'] as const;

/**
 * Lays a canvas over the whole view, in a root closed to the page. The canvas always covers the whole view, whatever is
 * drawn on it. So a page that asks the browser which of its words are covered learns nothing. Covered words get no
 * mark. Letters that have colours of their own keep them. Nothing is drawn on paper.
 */
export function openVeil(doc: Document, marked: () => Marked, signal: AbortSignal): Veil {
  const view = doc.defaultView!;
  const host = doc.createElementNS('http://www.w3.org/1999/xhtml', 'div') as HTMLElement;
  const canvas = doc.createElementNS('http://www.w3.org/1999/xhtml', 'canvas') as HTMLCanvasElement;
  const root = host.attachShadow({ mode: 'closed' });
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(RULES);
  root.adoptedStyleSheets = [sheet];
  root.append(canvas);
  let frame = 0;
  let later: ReturnType<typeof setTimeout> | undefined;

  function draw(): void {
    if (signal.aborted) return;
    if (!host.isConnected) doc.documentElement.append(host);
    const scale = view.devicePixelRatio;
    const { left, top, width, height } = canvas.getBoundingClientRect();
    canvas.width = Math.round(width * scale);
    canvas.height = Math.round(height * scale);
    const context = canvas.getContext('2d');
    if (!context) return;
    context.scale(scale, scale);
    context.translate(-left, -top);
    const styles = new Map<Element, CSSStyleDeclaration>();
    const { look, marks } = marked();
    for (const { mark, ranges } of marks)
      for (const range of ranges) {
        const element = own(range.startContainer).parentElement;
        if (!element) continue;
        const style = styles.get(element) ?? view.getComputedStyle(element);
        styles.set(element, style);
        for (const box of boxesOf(doc, range)) {
          const isInView =
            box.right > 0 && box.bottom > 0 && box.left < view.innerWidth && box.top < view.innerHeight;
          if (isInView && isOnTop(doc, element, box)) drawMark(context, mark, look, box, style);
        }
      }
  }
  function soon(): void {
    if (frame) return;
    frame = view.requestAnimationFrame(() => {
      frame = 0;
      draw();
    });
  }

  const options = { capture: true, passive: true, signal };
  for (const type of MOVES) view.addEventListener(type, soon, options);
  view.addEventListener('resize', soon, { signal });
  const mutations = new MutationObserver(() => {
    later ??= setTimeout(() => {
      later = undefined;
      soon();
    }, LATER);
  });
  mutations.observe(doc, { subtree: true, childList: true, characterData: true, attributes: true });
  signal.addEventListener(
    'abort',
    () => {
      mutations.disconnect();
      clearTimeout(later);
      view.cancelAnimationFrame(frame);
      host.remove();
    },
    { once: true },
  );
  soon();
  return { draw: soon };
}

function boxesOf(
  doc: Document,
  { startContainer, startOffset, endContainer, endOffset }: StaticRange,
): DOMRect[] {
  const live = doc.createRange();
  try {
    live.setStart(startContainer, startOffset);
    live.setEnd(endContainer, endOffset);
  } catch {
    // The text of the node has changed since the range was made.
    return [];
  }
  return [...live.getClientRects()];
}

/**
 * Returns whether the middle of a box shows the element's own text: no other element covers it, and no edge cuts it
 * off.
 */
function isOnTop(doc: Document, element: Element, { left, top, width, height }: DOMRect): boolean {
  const over = doc.elementFromPoint(left + width / 2, top + height / 2);
  if (!over) return false;
  for (let at: Node | null = element; at; at = at.parentNode ?? (at as Partial<ShadowRoot>).host ?? null)
    if (at === over) return true;
  return element.contains(over);
}

function drawMark(
  context: CanvasRenderingContext2D,
  mark: Mark,
  look: Look,
  { left, right, top, bottom }: DOMRect,
  { color, fontSize }: CSSStyleDeclaration,
): void {
  const wash = WASHES[mark]?.[0];
  if (wash && (look === 'wash' || mark === 'here')) {
    context.fillStyle = wash;
    context.fillRect(left, top, right - left, bottom - top);
  }
  const [kind, thickness] = LINES[mark].split(' ') as [string, string];
  const thick = Math.max(1, Number.parseFloat(thickness) * Number.parseFloat(fontSize));
  context.strokeStyle = color;
  context.lineWidth = thick;
  context.lineCap = kind === 'dotted' ? 'round' : 'butt';
  context.setLineDash(kind === 'dotted' ? [0, thick * 2] : kind === 'dashed' ? [thick * 3, thick * 2] : []);
  for (const y of kind === 'double' ? [bottom - thick * 2.5, bottom - thick / 2] : [bottom - thick / 2]) {
    context.beginPath();
    context.moveTo(left + thick / 2, y);
    context.lineTo(right - thick / 2, y);
    context.stroke();
  }
}
