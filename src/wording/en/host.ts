/** What the background and the storage say: menus, faults, pages that cannot be read. */
export const host = {} as const;
