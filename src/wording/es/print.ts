import type { print as english } from '../en/print.ts';
import type { Translated } from '../translation.ts';

/** Sheets on paper and in files. */
export const print: Translated<typeof english> = {};
