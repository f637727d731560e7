/**
 * The least share of words a reader knows in a text to read it with help and alone, in percent of running words. E. A. Betts, Foundations of
 * Reading Instruction (1946): 95 for the instructional, 99 for the independent level; from memory. He counted words
 * read aloud by a child. This tool counts words a group has been taught to decode, so the levels are marks on a chart and no verdict.
 */
export const READING_LEVELS = { withHelp: 95, alone: 99 } as const;
