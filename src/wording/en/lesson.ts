/** The Lesson page. */
export const lesson = {} as const;
