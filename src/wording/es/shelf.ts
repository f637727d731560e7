import type { shelf as english } from '../en/shelf.ts';
import type { Translated } from '../translation.ts';

/** The shelf. */
export const shelf: Translated<typeof english> = {};
