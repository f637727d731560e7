import * as v from 'valibot';
import { passageSchema } from '../../host/store/passage-schema.ts';
import type { Passage } from '../../passage/kept/passage.ts';

const PREFIX = 'draft ';

/** Saves a draft of a passage at once, in case its window closes. Fails silently when there is no room. */
export function keepDraft(passage: Passage): void {
  try {
    localStorage.setItem(PREFIX + passage.id, JSON.stringify(passage));
  } catch {
    // The last saved state still exists.
  }
}

/** Returns the draft of a passage that could not be saved in time; null when there is no readable draft. */
export function findDraft(id: string): Passage | null {
  try {
    return v.parse(passageSchema, { ...JSON.parse(localStorage.getItem(PREFIX + id) ?? '{}'), id });
  } catch {
    return null;
  }
}

/** Removes the draft of a passage that has been saved. */
export function dropDraft(id: string): void {
  localStorage.removeItem(PREFIX + id);
}
