import type { Passage } from '../host/passages-store.ts';

/** The line that goes with every copy: who wrote it, where, when; null when nothing is known. */
export function sourceLine({ source: { byline, url, date } }: Pick<Passage, 'source'>): string | null {
  const parts = [byline, url, date].filter((part) => part !== null && part !== '');
  return parts.length === 0 ? null : `Source: ${parts.join(', ')}`;
}
