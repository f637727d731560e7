/** The desk. */
export const desk = {} as const;
