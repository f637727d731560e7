import type { passage as english } from '../en/passage.ts';
import type { Translated } from '../translation.ts';

/** A passage: versions and source. */
export const passage: Translated<typeof english> = {};
