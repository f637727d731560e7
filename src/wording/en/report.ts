/** The report on one text. */
export const report = {} as const;
