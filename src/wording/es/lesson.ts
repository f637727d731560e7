import type { lesson as english } from '../en/lesson.ts';
import type { Translated } from '../translation.ts';

/** The Lesson page. */
export const lesson: Translated<typeof english> = {};
