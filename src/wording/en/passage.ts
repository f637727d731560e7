/** A passage: versions and source. */
export const passage = {} as const;
