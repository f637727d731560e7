import type { Painter } from './paint-standings.ts';

/** The least time between two checks, in milliseconds. */
const EVERY = 500;
/** A page that removes the marks `OFTEN` times within `WITHIN` milliseconds does not want them. */
const OFTEN = 5;
const WITHIN = 20_000;

const MOMENTS = ['scroll', 'pointermove', 'keydown', 'visibilitychange', 'focus'] as const;

/**
 * Restores marks that a page removes, since its scripts share the registry of highlights and the list of style sheets.
 * The marks are checked when the reader does something and when `look` is called, never by a timer. If a page keeps
 * removing the marks, the page is left alone and `onGivenUp` is called.
 */
export function keepMarks(painter: Painter, onGivenUp: () => void, signal: AbortSignal): { look(): void } {
  const taken: number[] = [];
  const listeners = new AbortController();
  signal.addEventListener('abort', () => listeners.abort());
  let last = Number.NEGATIVE_INFINITY;

  function look(): void {
    const now = performance.now();
    if (listeners.signal.aborted || now - last < EVERY) return;
    last = now;
    if (!painter.restore()) return;
    taken.push(now);
    if (taken.filter((time) => now - time < WITHIN).length < OFTEN) return;
    listeners.abort();
    onGivenUp();
  }
  for (const type of MOMENTS)
    addEventListener(type, look, { capture: true, passive: true, signal: listeners.signal });
  return { look };
}
