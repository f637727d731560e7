import { useAddress, writeAddress } from '../../ui/address.ts';

/** Opens the lesson of a group, for a passage or without one (null). */
export function openLesson(group: string, passage: string | null): void {
  location.hash = writeAddress(group, ...(passage === null ? [] : [passage]));
}

/** Returns the ids in the address: the group, which may be empty, and the passage, or null. */
export function useLessonAddress(): { readonly group: string; readonly passage: string | null } {
  return useAddress(readLesson);
}

function readLesson([group = '', passage]: readonly string[]): { group: string; passage: string | null } {
  return { group, passage: passage || null };
}
