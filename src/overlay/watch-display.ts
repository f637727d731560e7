/** Changes come in swarms; what they show is looked at once they have rested so long, in milliseconds. */
const REST = 250;

/**
 * Calls back when something may have shown or hidden text without a change of the page's nodes: a window made
 * narrower, a box ticked that a style hangs on, a style sheet that came late, the end of a transition. Until
 * aborted.
 */
export function watchDisplay(doc: Document, onChange: () => void, signal: AbortSignal): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const soon = (): void => {
    clearTimeout(timer);
    timer = setTimeout(onChange, REST);
  };
  const options = { capture: true, passive: true, signal };
  const view = doc.defaultView ?? window;
  for (const type of ['resize', 'hashchange']) view.addEventListener(type, soon, options);
  doc.addEventListener('change', soon, options);
  doc.addEventListener('load', ({ target }) => target instanceof HTMLLinkElement && soon(), options);
  doc.addEventListener(
    'transitionend',
    ({ propertyName }) => /^(visibility|display|content-visibility)$/.test(propertyName) && soon(),
    options,
  );
  signal.addEventListener('abort', () => clearTimeout(timer), { once: true });
}
