/** The time without changes, in milliseconds, after which the page is checked. Changes come in bursts. */
const REST = 250;
/** The longest such time. A page that changes without showing anything new is checked less and less often. */
const LONGEST_REST = 8000;

/** Attributes that pages use for the open or closed state of a part. */
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
 * Calls `onChange` when text may have appeared or disappeared without a change of the page's nodes: a narrower window,
 * a ticked box that a style depends on, a style sheet that came late, the end of a transition. Continues until aborted.
 * `onChange` returns whether there was any such text.
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
  // A change of class or state may show another element, such as the answer beside its question.
  const states = new MutationObserver(soon);
  states.observe(doc, { subtree: true, attributeFilter: STATES });
  // Watches style rules that are rewritten.
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
