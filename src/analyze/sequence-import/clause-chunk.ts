import type { Phrase } from './phrases.ts';
import type { Spelling } from './spellings.ts';

/** Letters in a clause, with all that stands beside them to say which of their sounds is meant. */
export interface Spelled {
  readonly spelling: Spelling;
  /** Where it begins in the clause. */
  readonly start: number;
  /** Headings and sounds that apply; each narrows what the letters can mean. */
  readonly headings: Phrase[];
  /** Sounds after the letters; any of them is meant: `-ed /t/ /d/`. */
  readonly sounds: Phrase[];
  readonly examples: string[];
  /** They stand in the list of a sound that they cannot have. */
  readonly odd: boolean;
  /** All its sounds are meant, or as many as this says; 0 where nothing says so. */
  every: number;
  /** Its examples stand behind a list of letters: "th, wh (thin, when)". */
  spread: boolean;
}

/** A run of a clause that is one item: letters, a heading with its letters, a phrase, or what is not understood. */
export interface Chunk {
  /** Where it begins in the clause; it goes on to the next. */
  readonly start: number;
  readonly phrases: Phrase[];
  readonly spelled: Spelled[];
  /** Lexemes understood, and those not. */
  known: number;
  unknown: number;
  /** A heading whose list follows in other chunks: it teaches nothing itself. */
  announces: boolean;
  /** Words beside it leave open how it goes together: "with", "from … to". */
  hedged: boolean;
  /** Lists exceptions to what it names: the teacher has to say what they are. */
  asks: boolean;
  /** Words that show what its headings teach: cake, of "silent e: cake". */
  readonly examples: string[];
  /** Says that nothing new is taught. */
  rest: boolean;
}
