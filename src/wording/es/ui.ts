import type { ui as english } from '../en/ui.ts';
import type { Translated } from '../translation.ts';

/** What several pages share: reach, gaps, climb, readings, options of a group. */
export const ui: Translated<typeof english> = {};
