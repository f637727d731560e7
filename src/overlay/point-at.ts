import type { WordPlace } from './find-places.ts';
import type { Painter } from './paint-standings.ts';

/** The time in milliseconds that the place looked for stays marked. */
const SHOWN = 2400;

/** Creates a function that scrolls a word into view and marks it for a moment. */
export function createPointer(painter: Painter, signal: AbortSignal): (place: WordPlace) => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  signal.addEventListener('abort', () => clearTimeout(timer));
  return ({ ranges }) => {
    const element = ranges[0]?.startContainer.parentElement;
    if (!element || signal.aborted) return;
    const calm = matchMedia('(prefers-reduced-motion: reduce)').matches;
    element.scrollIntoView({ block: 'center', inline: 'nearest', behavior: calm ? 'auto' : 'smooth' });
    painter.pointTo(ranges);
    clearTimeout(timer);
    timer = setTimeout(() => painter.pointTo([]), SHOWN);
  };
}
