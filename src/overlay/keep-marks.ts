import type { Painter } from './paint-standings.ts';

/** Looked after no oftener than this, in milliseconds. */
const EVERY = 500;
/** A page that takes marks away so often within so many milliseconds does not want them. */
const OFTEN = 5;
const WITHIN = 20_000;

const MOMENTS = ['scroll', 'pointermove', 'keydown', 'visibilitychange', 'focus'] as const;

/**
 * Puts the marks back that a page takes away: its scripts share the registry of highlights and the list of style sheets.
 * It is looked at when the reader does something and when `look` is called, never by the clock. A page that goes on
 * taking them away is let be, and `onGivenUp` told.
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
