/** What several pages share: reach, gaps, climb, readings, options of a group. */
export const ui = {} as const;
