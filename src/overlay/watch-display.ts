/** Changes come in swarms; what they show is looked at once they have rested so long, in milliseconds. */
const REST = 250;
/** A page that changes without showing anything new is looked at ever more seldom, down to this. */
const LONGEST_REST = 8000;

/** Attributes by which pages say which parts are open and which are put away. */
const STATES = [
  'class',
  'aria-expanded',
  'aria-hidden',
  'aria-selected',
  'data-state',
  'slot',
  'contenteditable',
];

/** The attributes that change when a part is faded or folded. */
const SHOWS =
  /^(?:visibility|display|content-visibility|opacity|(?:max-)?height|(?:max-)?width|grid-template-rows|clip-path|left|top)$/;

/**
 * Calls back when something may have shown or hidden text without a change of the page's nodes: a window made
 * narrower, a box ticked that a style hangs on, a style sheet that came late, the end of a transition. Until
 * aborted. `onChange` tells whether there was any such text.
 */
export function watchDisplay(doc: Document, onChange: () => Promise<boolean>, signal: AbortSignal): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let rest = REST;
  const soon = (): void => {
    clearTimeout(timer);
    timer = setTimeout(look, rest);
  };
  const look = async (): Promise<void> => {
    const found = await onChange().catch(() => false);
    rest = found ? REST : Math.min(rest * 2, LONGEST_REST);
  };
  const wake = (): void => {
    rest = REST;
  };
  // A class or a state may show an element elsewhere: the answer beside its question.
  const states = new MutationObserver(soon);
  states.observe(doc, { subtree: true, attributeFilter: STATES });
  // Rules that were written anew.
  const rules = new MutationObserver((records) => records.some(isInStyle) && soon());
  rules.observe(doc, { subtree: true, characterData: true, childList: true });
  const options = { capture: true, passive: true, signal };
  const view = doc.defaultView ?? window;
  for (const type of ['resize', 'hashchange']) view.addEventListener(type, soon, options);
  for (const type of ['pointerdown', 'keydown', 'resize']) view.addEventListener(type, wake, options);
  for (const type of ['change', 'toggle']) doc.addEventListener(type, soon, options);
  doc.addEventListener('load', ({ target }) => target instanceof HTMLLinkElement && soon(), options);
  doc.addEventListener('transitionend', ({ propertyName }) => SHOWS.test(propertyName) && soon(), options);
  doc.addEventListener('animationend', soon, options);
  const stop = (): void => {
    clearTimeout(timer);
    states.disconnect();
    rules.disconnect();
  };
  signal.addEventListener('abort', stop);
}

function isInStyle({ target }: MutationRecord): boolean {
  return (target instanceof Element ? target : target.parentElement)?.tagName === 'STYLE';
}
