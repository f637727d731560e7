/** What patterns, syllables and sounds are called. */
export const patterns = {} as const;
