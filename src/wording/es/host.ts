import type { host as english } from '../en/host.ts';
import type { Translated } from '../translation.ts';

/** What the background and the storage say: menus, faults, pages that cannot be read. */
export const host: Translated<typeof english> = {};
