import type { Phrase } from './phrases.ts';
import type { Spelling } from './spellings.ts';

/** Letters in a clause, with everything beside them that tells which of their sounds is meant. */
export interface Spelled {
  readonly spelling: Spelling;
  /** Index in the clause where the letters begin. */
  readonly start: number;
  /** Headings and sounds that apply to the letters. Each limits the possible meanings. */
  readonly headings: Phrase[];
  /** Sounds after the letters: `-ed /t/ /d/`. Any of these sounds is meant. */
  readonly sounds: Phrase[];
  readonly examples: string[];
  /** Whether the letters are in the list of a sound that they cannot have. */
  readonly odd: boolean;
  /** The number of the letters' sounds that are meant, which may be all. It is 0 if the text gives no number. */
  every: number;
  /** Whether the examples follow a whole list of letters: "th, wh (thin, when)". */
  spread: boolean;
}

/**
 * A run of a clause that makes one item: letters, a heading with its letters, a phrase, or text that was not
 * understood.
 */
export interface Chunk {
  /** Index in the clause where the chunk begins. It ends where the next chunk begins. */
  readonly start: number;
  readonly phrases: Phrase[];
  readonly spelled: Spelled[];
  /** The number of lexemes that were understood. `unknown` is the number of lexemes that were not understood. */
  known: number;
  unknown: number;
  /** Whether the chunk is a heading whose list follows in other chunks. Such a heading teaches nothing itself. */
  announces: boolean;
  /** Whether words beside the chunk leave open how its parts belong together: "with", "from … to". */
  hedged: boolean;
  /** Whether the chunk lists exceptions to the pattern it names. The teacher has to say which they are. */
  asks: boolean;
  /** Words that show the pattern of the chunk's headings: cake in "silent e: cake". */
  readonly examples: string[];
  /** Whether the chunk says that nothing new is taught. */
  rest: boolean;
}
