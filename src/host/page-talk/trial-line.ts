import { browser } from '../browser.ts';

const NAME = 'trial';

/**
 * Tells the background that a step is being tried on this page, until aborted or until this page is gone. The
 * connection is opened again when the browser stops the background.
 */
export function holdTrial(signal: AbortSignal): void {
  const line = browser.runtime.connect({ name: NAME });
  line.onDisconnect.addListener(() => {
    if (!signal.aborted) holdTrial(signal);
  });
  signal.addEventListener('abort', () => line.disconnect(), { once: true });
}

/** Calls back when a page in which a step was tried is gone, or no longer tries the step. */
export function whenTrialEnds(onEnd: () => void): void {
  browser.runtime.onConnect.addListener((line) => {
    if (line.name === NAME) line.onDisconnect.addListener(onEnd);
  });
}
