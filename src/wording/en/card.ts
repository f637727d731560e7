/** The card beside a word of a page. */
export const card = {} as const;
