import type { files as english } from '../en/files.ts';
import type { Translated } from '../translation.ts';

/** Opening a teacher’s files. */
export const files: Translated<typeof english> = {};
