import host from './host.css?inline';

/** The one element a card adds to a page, and the root inside that the page cannot look into. */
export interface CardHost {
  readonly element: HTMLElement;
  readonly root: ShadowRoot;
  /** Whether an event fell on the card. */
  holds(event: Event): boolean;
  /** Whether the keyboard is in the card. */
  hasFocus(): boolean;
  /** Takes the element out of the page again; the keyboard, if it was in the card, goes to `next`. */
  remove(next: Element | null): void;
}

interface HostOptions {
  readonly mode: ShadowRootMode;
  /** Style rules for its content. */
  readonly style?: string;
}

/** Kept from the page, whose own shortcuts and "click outside" are not meant. */
const KEPT = [
  'pointerdown pointerup mousedown mouseup click dblclick auxclick contextmenu wheel touchstart touchend',
  'pointerover pointerout mouseover mouseout keydown keypress keyup focusin focusout copy selectstart',
].flatMap((kinds) => kinds.split(' '));

/** An element of HTML, in whatever kind of document. */
export function makeElement<K extends keyof HTMLElementTagNameMap>(
  doc: Document,
  tag: K,
): HTMLElementTagNameMap[K] {
  return doc.createElementNS('http://www.w3.org/1999/xhtml', tag) as HTMLElementTagNameMap[K];
}

/**
 * Puts `content` above everything in the document: in the top layer, and inside the uppermost modal dialog if one
 * is open, because all else is out of reach then.
 */
export function openHost(doc: Document, content: HTMLElement, { mode, style = '' }: HostOptions): CardHost {
  const element = makeElement(doc, 'div');
  const root = element.attachShadow({ mode });
  // Neither the page's content security policy nor its sheets have a say in a constructed sheet.
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(host + style);
  root.adoptedStyleSheets = [sheet];
  root.append(content);
  for (const kind of KEPT) element.addEventListener(kind, (event) => event.stopPropagation());

  const dialogs = doc.querySelectorAll('dialog:modal');
  (dialogs[dialogs.length - 1] ?? doc.documentElement).append(element);
  element.popover = 'manual';
  element.showPopover?.();
  return {
    element,
    root,
    holds: (event) => event.composedPath().includes(element),
    hasFocus: () => root.activeElement !== null,
    remove: (next) => {
      const hadFocus = root.activeElement !== null;
      element.remove();
      if (hadFocus && next?.isConnected) (next as HTMLElement).focus({ preventScroll: true });
    },
  };
}
