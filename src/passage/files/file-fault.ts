/** Larger files are no passages, in bytes. */
export const LARGEST_FILE = 25_000_000;

/** Why a file cannot be opened, in a sentence with the next step. */
export class FileFault extends Error {}
