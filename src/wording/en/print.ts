/** Sheets on paper and in files. */
export const print = {} as const;
