/** Shows a group's lesson, around a passage or none. */
export function openLesson(group: string, passage: string | null): void {
  location.hash = passage === null ? `#${group}` : `#${group}/${passage}`;
}

/** Whose lesson the address names: a group's id, perhaps none, and a passage's. */
export function readAddress(): { readonly group: string; readonly passage: string | null } {
  const [group = '', passage] = location.hash.slice(1).split('/');
  return { group, passage: passage || null };
}
