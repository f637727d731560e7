import { own } from './own.ts';
import type { ReadBlock } from './page-text.ts';

/**
 * The distance from the view within which blocks are marked, in CSS pixels. This is more than one page down. Marks
 * farther off would delay the first marks that the reader sees.
 */
const MARGIN = 1000;

/** Text directly in these elements is in no block of its own, and counts as near. */
const ALWAYS = new Set(['HTML', 'BODY']);

/** Keeps track of the blocks that are in or near the view. */
export interface Nearness {
  /**
   * Returns whether the blocks of a node are near now. The next block that is added is assumed to have the same
   * nearness.
   */
  look(within: Node): boolean;
  add(block: ReadBlock): void;
  remove(block: ReadBlock): void;
  isNear(block: ReadBlock): boolean;
  /** The blocks that were added and not removed since. */
  readonly blocks: ReadonlyMap<ReadBlock, unknown>;
}

/**
 * Reports blocks that come near the view or leave it. A browser goes through all highlights of a page whenever anything
 * on it changes (measured in Chromium: a millisecond for every thousand). So marks far from the view would make a long
 * page slow.
 */
export function watchNearness(onChange: (block: ReadBlock) => void, signal: AbortSignal): Nearness {
  const elements = new Map<ReadBlock, Element>();
  const blocks = new Map<Element, Set<ReadBlock>>();
  const near = new Set<Element>();
  const looked = new Map<Element, boolean>();
  // `scrollMargin` applies to boxes that scroll by themselves. Browsers without this option mark blocks in such boxes a
  // moment later.
  const options = { rootMargin: `${MARGIN}px`, scrollMargin: `${MARGIN}px` };
  const observer = new IntersectionObserver((entries) => {
    for (const { target, isIntersecting } of entries) {
      if (near.has(target) === isIntersecting) continue;
      if (isIntersecting) near.add(target);
      else near.delete(target);
      for (const block of blocks.get(target) ?? []) onChange(block);
    }
  }, options);
  signal.addEventListener('abort', () => observer.disconnect());

  return {
    look(within) {
      const element = elementOf(within);
      const isNear = isNearNow(element);
      looked.set(element, isNear);
      return isNear;
    },
    add(block) {
      const element = elementOf(block.within);
      elements.set(block, element);
      const isNear = looked.get(element);
      looked.delete(element);
      const others = blocks.get(element);
      if (others) others.add(block);
      else {
        blocks.set(element, new Set([block]));
        if (isNear ?? isNearNow(element)) near.add(element);
        if (!ALWAYS.has(own(element).tagName)) observer.observe(element);
      }
    },
    remove(block) {
      const element = elements.get(block);
      if (!element) return;
      elements.delete(block);
      const others = blocks.get(element)!;
      others.delete(block);
      if (others.size > 0) return;
      blocks.delete(element);
      near.delete(element);
      observer.unobserve(element);
    },
    isNear(block) {
      const element = elements.get(block);
      return element !== undefined && near.has(element);
    },
    blocks: elements,
  };
}

function elementOf(within: Node): Element {
  return within instanceof Element ? within : document.documentElement;
}

function isNearNow(element: Element): boolean {
  if (ALWAYS.has(own(element).tagName)) return true;
  const { top, bottom } = own(element).getBoundingClientRect();
  return bottom > -MARGIN && top < innerHeight + MARGIN;
}
