import host from './host.css?inline';

/** The one element that a card adds to a page, and the shadow root inside it, which the page cannot read. */
export interface CardHost {
  readonly element: HTMLElement;
  readonly root: ShadowRoot;
  /** Whether an event fell on the card. */
  holds(event: Event): boolean;
  /** Whether the keyboard focus is in the card. */
  hasFocus(): boolean;
  /** Removes the element from the page. If the keyboard focus was in the card, the focus moves to `next`. */
  remove(next: Element | null): void;
}

interface HostOptions {
  readonly mode: ShadowRootMode;
  /** Style rules for the content. */
  readonly style?: string;
}

/**
 * Events that do not leave the card: they are stopped before they reach the page's own shortcuts and “click outside”
 * handlers. Only listeners for the capture phase get them.
 */
const KEPT = [
  'pointerdown pointerup mousedown mouseup click dblclick auxclick contextmenu wheel touchstart touchend',
  'pointerover pointerout mouseover mouseout keydown keypress keyup focusin focusout copy selectstart',
].flatMap((kinds) => kinds.split(' '));

/** Creates an HTML element in any kind of document. */
export function makeElement<K extends keyof HTMLElementTagNameMap>(
  doc: Document,
  tag: K,
): HTMLElementTagNameMap[K] {
  return doc.createElementNS('http://www.w3.org/1999/xhtml', tag) as HTMLElementTagNameMap[K];
}

/**
 * Puts `content` above everything in the document, in the top layer. If a modal dialog is open, `content` goes inside
 * the uppermost one, because everything outside the dialog is then out of reach.
 */
export function openHost(doc: Document, content: HTMLElement, { mode, style = '' }: HostOptions): CardHost {
  const element = makeElement(doc, 'div');
  const root = element.attachShadow({ mode });
  // The page’s content security policy and style sheets do not affect a constructed sheet.
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
