import type { groups as english } from '../en/groups.ts';
import type { Translated } from '../translation.ts';

/** The Groups page. */
export const groups: Translated<typeof english> = {};
