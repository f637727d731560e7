/** The shelf. */
export const shelf = {} as const;
