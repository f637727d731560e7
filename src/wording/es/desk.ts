import type { desk as english } from '../en/desk.ts';
import type { Translated } from '../translation.ts';

/** The desk. */
export const desk: Translated<typeof english> = {};
