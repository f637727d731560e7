import type { Passage } from '../host/store/passages-store.ts';

type Sourced = Pick<Passage, 'source'>;

/** The line that goes with every copy, in English as they are: who wrote it, where, when; null when nothing is known. */
export function sourceLine(passage: Sourced): string | null {
  const source = nameSource(passage);
  return source === null ? null : `Source: ${source}`;
}

/** What of it is known (`Wilma Falk, https://tarn-quay.example/news`); null when nothing is. */
export function nameSource({ source: { byline, url, date } }: Sourced): string | null {
  const parts = [byline, url, date].filter((part) => part !== null && part !== '');
  return parts.length === 0 ? null : parts.join(', ');
}
