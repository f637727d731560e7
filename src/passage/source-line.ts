import type { Passage } from './kept/passage.ts';

type Sourced = Pick<Passage, 'source'>;

/**
 * Returns the source line for every copy: author, address and date. The line is in English, like the copies. Returns
 * null if nothing is known.
 */
export function sourceLine(passage: Sourced): string | null {
  const source = nameSource(passage);
  return source === null ? null : `Source: ${source}`;
}

/** The known parts of a source (`Wilma Falk, https://tarn-quay.example/news`); null when there are none. */
export function nameSource({ source: { byline, url, date } }: Sourced): string | null {
  const parts = [byline, url, date].filter((part) => part !== null && part !== '');
  return parts.length === 0 ? null : parts.join(', ');
}
