import type { report as english } from '../en/report.ts';
import type { Translated } from '../translation.ts';

/** The report on one text. */
export const report: Translated<typeof english> = {};
