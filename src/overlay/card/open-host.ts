import { spokenDirection, spokenLanguage } from '../../wording/say.ts';
import { cardStyle } from './card-style.ts';

/** The one element a card adds to a page, and the root inside that the page cannot look into. */
export interface CardHost {
  /** What the card is drawn in. */
  readonly sheet: HTMLElement;
  /** Whether an event fell on the card. */
  holds(event: Event): boolean;
  /** Whether the keyboard is in the card. */
  hasFocus(): boolean;
  /** Takes the element out of the page again. */
  remove(): void;
}

/** Kept from the page, whose own shortcuts and "click outside" are not meant. */
const KEPT = [
  'pointerdown pointerup mousedown mouseup click dblclick auxclick contextmenu wheel touchstart touchend',
  'pointerover pointerout mouseover mouseout keydown keypress keyup focusin focusout copy selectstart',
].flatMap((kinds) => kinds.split(' '));

/**
 * Puts an empty sheet above everything in the document: in the top layer, and inside the uppermost modal dialog if one
 * is open, because all else is out of reach then.
 */
export function openHost(doc: Document, mode: ShadowRootMode): CardHost {
  const make = (): HTMLElement => doc.createElementNS('http://www.w3.org/1999/xhtml', 'div') as HTMLElement;
  const host = make();
  const root = host.attachShadow({ mode });
  // Neither the page's content security policy nor its sheets have a say in a constructed sheet.
  const style = new CSSStyleSheet();
  style.replaceSync(cardStyle);
  root.adoptedStyleSheets = [style];
  const sheet = make();
  sheet.className = 'sheet';
  sheet.lang = spokenLanguage();
  sheet.dir = spokenDirection();
  root.append(sheet);
  for (const kind of KEPT) host.addEventListener(kind, (event) => event.stopPropagation());

  const dialogs = doc.querySelectorAll('dialog:modal');
  (dialogs[dialogs.length - 1] ?? doc.documentElement).append(host);
  host.popover = 'manual';
  host.showPopover?.();
  sheet.style.setProperty('--rem', readersLetterSize(host));
  return {
    sheet,
    holds: (event) => event.composedPath().includes(host),
    hasFocus: () => root.activeElement !== null,
    remove: () => host.remove(),
  };
}

/** `all: initial` sets the host in the letter size the reader has chosen in the browser. */
function readersLetterSize(host: HTMLElement): string {
  return getComputedStyle(host).fontSize;
}
