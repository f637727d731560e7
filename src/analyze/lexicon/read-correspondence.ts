import type { Correspondence } from './word-record.ts';

/** Reads the notation `ai:EY`; the sound is behind the last colon. */
export function readCorrespondence(text: string): Correspondence {
  const colon = text.lastIndexOf(':');
  return { letters: text.slice(0, colon), sound: text.slice(colon + 1) };
}
