/** The Groups page. */
export const groups = {} as const;
