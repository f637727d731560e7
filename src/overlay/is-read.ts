/** Never read to a child, or not text of the page. */
const LEFT_OUT = new Set(
  'SCRIPT STYLE NOSCRIPT TEMPLATE CODE PRE KBD SAMP TEXTAREA INPUT SELECT OPTION DATALIST OBJECT EMBED IFRAME FRAME AUDIO VIDEO CANVAS SVG MATH svg math HEAD TITLE RT RP METER PROGRESS'.split(
    ' ',
  ),
);
const ANY_LEFT_OUT = [...LEFT_OUT].join().toLowerCase();

/**
 * How much of an element is read: all, only elements inside that show again (of a hidden one), or none of it,
 * because it is not drawn, or is code, a field, or text the reader is writing.
 */
export function isRead(element: Element): 'all' | 'parts' | 'none' {
  if (LEFT_OUT.has(element.tagName)) return 'none';
  if (element instanceof HTMLElement && element.isContentEditable) return 'none';
  const style = getComputedStyle(element);
  if (style.contentVisibility === 'hidden' || style.display === 'none') return 'none';
  if (element instanceof HTMLDetailsElement && !element.open) return 'parts';
  if (element.checkVisibility({ visibilityProperty: true })) return 'all';
  if (style.visibility !== 'visible') return 'parts';
  return style.display === 'contents' && isDrawn(element) ? 'all' : 'none';
}

/** An element without a box of its own (display: contents) is drawn when what is around it is. */
function isDrawn(element: Element): boolean {
  const around = element.assignedSlot ?? element.parentNode;
  if (around instanceof ShadowRoot) return isDrawn(around.host);
  if (!(around instanceof Element)) return true;
  if (around.checkVisibility()) return true;
  return getComputedStyle(around).display === 'contents' && isDrawn(around);
}

/** True for a node somewhere inside an element that is never read. */
export function isInsideUnread(node: Node): boolean {
  return node.parentElement?.closest(ANY_LEFT_OUT) != null;
}
