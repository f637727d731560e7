/** Opening a teacher’s files. */
export const files = {} as const;
