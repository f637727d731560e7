/** The largest file that is opened, in bytes. Larger files are not passages. */
export const LARGEST_FILE = 25_000_000;

/** The error for a file that cannot be opened. Its message is a sentence with the next step. */
export class FileFault extends Error {}
