import * as v from 'valibot';
import { passageSchema } from '../../host/store/passage-schema.ts';
import type { Passage } from '../../passage/kept/passage.ts';

const PREFIX = 'draft ';

/** Keeps a passage at once, as it is when its window closes; without a word where there is no room. */
export function keepDraft(passage: Passage): void {
  try {
    localStorage.setItem(PREFIX + passage.id, JSON.stringify(passage));
  } catch {
    // The last saved state is there all the same.
  }
}

/** The draft of a passage that was not saved any more; null when there is none that can be read. */
export function findDraft(id: string): Passage | null {
  try {
    return v.parse(passageSchema, { ...JSON.parse(localStorage.getItem(PREFIX + id) ?? '{}'), id });
  } catch {
    return null;
  }
}

/** Forgets the draft of a passage, which is saved. */
export function dropDraft(id: string): void {
  localStorage.removeItem(PREFIX + id);
}
