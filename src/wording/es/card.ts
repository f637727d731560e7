import type { card as english } from '../en/card.ts';
import type { Translated } from '../translation.ts';

/** The card beside a word of a page. */
export const card: Translated<typeof english> = {};
