/** What the browser shows of the extension before any page of it is open. */
export const manifest = {} as const;
