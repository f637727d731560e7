/** Why a file cannot be opened, in a sentence with the next step. */
export class FileFault extends Error {}
