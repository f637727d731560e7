/**
 * The least percentage of running words that a reader must know to read a text with help and alone. Source: E. A.
 * Betts, Foundations of Reading Instruction (1946), from memory: 95 for the instructional level, 99 for the independent
 * level. Betts counted words that a child read aloud. This tool counts words that a group has been taught to decode.
 * The levels are therefore marks on a chart and no verdict.
 */
export const READING_LEVELS = { withHelp: 95, alone: 99 } as const;
