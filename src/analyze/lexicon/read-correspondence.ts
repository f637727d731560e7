import type { Correspondence } from './word-record.ts';

/** Reads the notation `ai:EY`. The sound comes after the last colon. */
export function readCorrespondence(text: string): Correspondence {
  const colon = text.lastIndexOf(':');
  return { letters: text.slice(0, colon), sound: text.slice(colon + 1) };
}
