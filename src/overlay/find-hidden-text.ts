import type { HiddenText } from '../contract/page-contract.ts';
import { own } from './own.ts';
import type { ReadBlock } from './page-text.ts';
import { nextTurn, workInSlices } from './work-in-slices.ts';

/**
 * The greatest number of blocks that are checked, because the position of each block must be requested from the
 * browser.
 */
const MOST_BLOCKS = 1000;
/** Elements that may fill a stretch of the page in which there is no text to read. */
const FILLERS =
  'img, video, iframe, canvas, svg, object, embed, pre, code, table, textarea, math, [contenteditable]';
/** Matches a colour that lets the background show through. */
const SEE_THROUGH = /^rgba\(.*, 0(?:\.[0-4]\d*)?\)$|\/ 0(?:\.[0-4]\d*)?\)$/;

/** The vertical extent of a text in its scrolling box, in CSS pixels from the beginning of the box. */
type Stretch = readonly [top: number, bottom: number];

/** Finds out, in slices, where the checked text is drawn and whether some text is hidden. The page is not changed. */
export async function findHiddenText(
  doc: Document,
  blocks: ReadonlySet<ReadBlock>,
  signal: AbortSignal,
): Promise<HiddenText> {
  const paid = isPaid(doc);
  if (blocks.size > MOST_BLOCKS) return { covered: 0, rows: saysMoreRows(doc), paid };
  const scrollers = new Map<Element, Stretch[]>();
  let covered = 0;
  // The page may be scrolled between two slices, so each slice asks for the boxes anew.
  let boxes = createBoxes(doc);
  const look = ({ nodes, words }: ReadBlock): void => {
    if (!nodes[0]!.isConnected) return;
    const element = elementAround(nodes[0]!) ?? doc.body;
    const box = boxes.boxOf(nodes);
    if (box.height === 0) return;
    const { cut, scroller } = boxes.lookAround(element, box);
    const hidden = isUnderSomething(doc, element, box) ? 1 : cut;
    covered += Math.round(words.words.length * hidden);
    const begin = boxes.beginOf(scroller);
    const known = scrollers.get(scroller);
    const stretch: Stretch = [box.top - begin, box.bottom - begin];
    if (known) known.push(stretch);
    else scrollers.set(scroller, [stretch]);
  };
  const turn = async (): Promise<void> => {
    await nextTurn();
    boxes = createBoxes(doc);
  };
  await workInSlices(blocks, look, signal, turn);
  const isEmpty = [...scrollers].some(([scroller, texts]) =>
    hasEmptyStretch(scroller, texts, boxes.beginOf(scroller)),
  );
  return { covered, rows: isEmpty || saysMoreRows(doc), paid };
}

/** Reads once for each box of the page how the box shows its content. The answers hold until the page can run again. */
function createBoxes(doc: Document) {
  const page = doc.scrollingElement ?? doc.documentElement;
  const range = doc.createRange();
  const view = doc.documentElement.clientHeight;
  const known = new Map<Element, { kind: 'shows' | 'cuts' | 'scrolls'; isFixed: boolean }>();
  const boxes = new Map<Element, DOMRect>();
  const begins = new Map<Element, number>();
  function ask(element: Element) {
    const before = known.get(element);
    if (before) return before;
    const { overflowY, position } = getComputedStyle(element);
    const kind = overflowY === 'visible' ? 'shows' : kindOf(own(element), overflowY);
    const found = { kind, isFixed: position === 'fixed' } as const;
    known.set(element, found);
    return found;
  }
  function boxOf(element: Element): DOMRect {
    const box = boxes.get(element) ?? own(element).getBoundingClientRect();
    boxes.set(element, box);
    return box;
  }
  return {
    /** Returns the box around all the texts of a block. */
    boxOf(nodes: readonly Text[]): DOMRect {
      range.setStartBefore(nodes[0]!);
      range.setEndAfter(nodes.at(-1)!);
      return range.getBoundingClientRect();
    },
    /** Returns the share of a text that a box around it cuts off for good, from 0 to 1, and the nearest scrolling box. */
    lookAround(element: Element, text: DOMRect): { cut: number; scroller: Element } {
      let shown = text;
      let scroller: Element | undefined;
      let cut = 0;
      for (let at: Element | null = element; at; at = elementAround(at)) {
        const { kind, isFixed } = ask(at);
        const isPage = at === doc.body || at === doc.documentElement;
        if (kind === 'scrolls' && !isPage) {
          scroller ??= at;
          shown = boxOf(at);
        } else if (kind === 'cuts') {
          const end = isPage ? view : boxOf(at).bottom;
          const over = (shown.bottom - end) / shown.height;
          cut = Math.max(cut, Math.min(over, 1));
        }
        if (isFixed) break;
      }
      return { cut, scroller: scroller ?? page };
    },
    /** Returns the top of a scrolling box's content, in CSS pixels from the top of the view. */
    beginOf(scroller: Element): number {
      const begin =
        begins.get(scroller) ?? (scroller === page ? 0 : boxOf(scroller).top) - own(scroller).scrollTop;
      begins.set(scroller, begin);
      return begin;
    },
  };
}

function kindOf(element: Element, overflowY: string): 'shows' | 'cuts' | 'scrolls' {
  if (/auto|scroll/.test(overflowY)) return element.scrollHeight > element.clientHeight ? 'scrolls' : 'shows';
  return /hidden|clip/.test(overflowY) && element.clientHeight > 1 ? 'cuts' : 'shows';
}

/**
 * Returns whether something painted covers the middle of a text in view. A subscription offer over the end of a story
 * is painted. A link stretched over its whole card is not.
 */
function isUnderSomething(doc: Document, element: Element, { left, top, width, height }: DOMRect): boolean {
  const x = left + width / 2;
  const y = top + height / 2;
  if (x < 0 || y < 0 || x >= innerWidth || y >= innerHeight || element.getRootNode() !== doc) return false;
  const met = doc.elementFromPoint(x, y);
  if (!met || met.contains(element) || element.contains(met)) return false;
  for (let at: Element | null = met; at && !at.contains(element); at = elementAround(at)) {
    const { backgroundColor, backgroundImage } = getComputedStyle(at);
    if (backgroundImage !== 'none' || !SEE_THROUGH.test(backgroundColor)) return true;
  }
  return false;
}

/**
 * Returns whether a grid declares more rows than it draws. The value -1 means that the number of rows is unknown
 * (WAI-ARIA 1.2, aria-rowcount).
 */
function saysMoreRows(doc: Document): boolean {
  return [...doc.querySelectorAll('[aria-rowcount]')].some((grid) => {
    const said = Number(grid.getAttribute('aria-rowcount'));
    return said === -1 || said > grid.querySelectorAll('tr, [role="row"]').length;
  });
}

/** Returns whether most of a scrolling box has neither text nor any other content. */
function hasEmptyStretch(scroller: Element, texts: readonly Stretch[], begin: number): boolean {
  const { scrollHeight, clientHeight } = own(scroller);
  if (scrollHeight < clientHeight * 3) return false;
  let from = 0;
  for (const [top, bottom] of [
    ...texts.toSorted(([a], [b]) => a - b),
    [scrollHeight, scrollHeight] as const,
  ]) {
    if (top - from > scrollHeight / 2) return !isFilled(scroller, [from + begin, top + begin]);
    from = Math.max(from, bottom);
  }
  return false;
}

function isFilled(scroller: Element, [from, to]: Stretch): boolean {
  const filled = [...scroller.querySelectorAll(FILLERS)].reduce((sum, filler) => {
    const { top, bottom } = filler.getBoundingClientRect();
    return sum + Math.max(0, Math.min(bottom, to) - Math.max(top, from));
  }, 0);
  return filled > (to - from) / 4;
}

/**
 * Returns whether a page declares that it is not free, in its data for search engines (schema.org,
 * isAccessibleForFree).
 */
function isPaid(doc: Document): boolean {
  const said = [...doc.querySelectorAll('script[type="application/ld+json"]')];
  return (
    said.some(({ textContent }) => /"isAccessibleForFree"\s*:\s*"?false/i.test(textContent ?? '')) ||
    doc.querySelector('[itemprop="isAccessibleForFree"][content="false" i]') !== null
  );
}

/** Returns the element around a node. For the content of a shadow root, this is its host. */
function elementAround(node: Node): Element | null {
  const { parentNode } = own(node);
  if (parentNode instanceof ShadowRoot) return parentNode.host;
  return parentNode instanceof Element ? parentNode : null;
}
