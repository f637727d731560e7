import { useAddress, writeAddress } from '../../ui/address.ts';

/** Shows a group's lesson, around a passage or none. */
export function openLesson(group: string, passage: string | null): void {
  location.hash = writeAddress(group, ...(passage === null ? [] : [passage]));
}

/** Whose lesson the address names: a group's id, perhaps none, and a passage's. */
export function useLessonAddress(): { readonly group: string; readonly passage: string | null } {
  return useAddress(readLesson);
}

function readLesson([group = '', passage]: readonly string[]): { group: string; passage: string | null } {
  return { group, passage: passage || null };
}
