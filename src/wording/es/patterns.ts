import type { patterns as english } from '../en/patterns.ts';
import type { Translated } from '../translation.ts';

/** What patterns, syllables and sounds are called. */
export const patterns: Translated<typeof english> = {};
