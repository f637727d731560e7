/** The shared vocabulary of the engine. Nothing here depends on a page, a browser or a clock. */

/** Half-open range of UTF-16 units, always into the original text. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** Stable id of one catalogue row, for example `ai-long-a` (rain). */
export type PatternId = string;

/**
 * The key by which a word is looked up (`src/analyze/homographs/word-key.ts`). A key has straight apostrophes, no soft
 * hyphens, and is in composed form (NFC). Keys are in lower case, but a word with a capital keeps the capital (`Duke`),
 * because the word may be a name. A sign shows that the place explains the capital (`Duke^`), and another sign shows
 * that the word is part of a longer name (`School+`). If the place makes the reading of a homograph plain, the number
 * of the reading follows the word: `read#1`.
 */
export type WordKey = string;

/** One piece of a text that matters: a word to read, or something that is left out of the count. */
export interface Token extends Span {
  readonly kind: 'word' | 'skipped';
  readonly key: WordKey;
}

/** The source of a reading, surest first. `rule` and `guess` are never shown as facts. */
export type ReadingSource = 'dictionary' | 'derived' | 'rule' | 'guess' | 'none';

/** Letters that represent a sound together. `a_e` is listed where the vowel is; its e is not listed again. */
export interface Unit {
  readonly letters: string;
  /** ARPAbet without stress. Several sounds are joined by a dot. `AX` is schwa, and `-` is silent. */
  readonly sound: string;
  readonly pattern: PatternId;
  readonly affix?: 'prefix' | 'suffix';
}

export type SpellingChange = 'none' | 'double' | 'drop-e' | 'y-to-i' | 'f-to-v';

export interface Affix {
  readonly text: string;
  readonly kind: 'suffix' | 'prefix' | 'compound' | 'contraction' | 'possessive';
  readonly change: SpellingChange;
}

export type SyllableType = 'closed' | 'open' | 'vce' | 'team' | 'r-controlled' | 'consonant-le' | 'other';

export interface Syllable {
  readonly text: string;
  readonly type: SyllableType;
}

/** One way to pronounce a word, with everything that a reader needs to get from its letters to its sound. */
export interface Reading {
  /** ARPAbet without stress, sounds joined by spaces. */
  readonly pronunciation: string;
  readonly source: ReadingSource;
  readonly units: readonly Unit[];
  /** The innermost base, when the word is built from one. */
  readonly base: string | null;
  /** From the base outwards. */
  readonly affixes: readonly Affix[];
  readonly syllables: readonly Syllable[];
  /** Sorted, no repeats. */
  readonly requires: readonly PatternId[];
  /** The requirements by finer rows. Left out if no finer row adds detail. */
  readonly fine?: FineNeeds;
  /** Left out for a word that is not made of other words. */
  readonly madeOf?: MadeOf;
  /** Parts of a word with a root from Latin or Greek, in order: in, spect. */
  readonly roots?: readonly string[];
}

/** The needs of a word where the catalogue has finer rows. Every group needs `rest`. */
export interface FineNeeds {
  /** Sorted. */
  readonly rest: readonly PatternId[];
  readonly finer: readonly FinerNeed[];
}

/**
 * A finer row, and the rows that replace it for a group that does not count the finer row by itself. For ring these are
 * `rime-ing`, or `short-i` and `ng`.
 */
export interface FinerNeed {
  readonly row: PatternId;
  readonly of: readonly PatternId[];
}

/** The parts of a word, one step down, and the patterns that join them: some and one for someone, and compound. */
export interface MadeOf {
  readonly parts: readonly PartNeeds[];
  /** Sorted. Ending, spelling change, kind of word, and letters pronounced differently than in the parts. */
  readonly joint: readonly PatternId[];
  /** The joint by finer rows: `contraction-not` for can't. */
  readonly fineJoint?: FineNeeds;
}

/** A word that is a part of another word, with its own requirements. */
export interface PartNeeds {
  /** Lower case. */
  readonly word: string;
  readonly requires: readonly PatternId[];
  readonly fine?: FineNeeds;
  readonly madeOf?: MadeOf;
}

/**
 * `common`: an ordinary word that a capital does not make a name (among the commonest words, or a form of an ordinary
 * word: banners).
 * `name`: a word found only as a name (Wilma).
 * `rare`: any other word (kelp, marigold).
 */
export type Usage = 'common' | 'rare' | 'name';

/** All readings of a word, the usual one first; never empty for a word made of letters. */
export interface WordAnalysis {
  readonly word: string;
  readonly readings: readonly Reading[];
  /** Whether the readings are different words: lead, bow. False where one word is pronounced in two ways (either). */
  readonly homograph: boolean;
  /** The usage of the word; null when the table lacks the word. */
  readonly usage: Usage | null;
  /** The error with its stack. Present only if an error in the engine prevented the analysis of the word. */
  readonly fault?: string;
}

/** One pattern that can be taught. */
export interface Pattern {
  readonly id: PatternId;
  readonly family: string;
  /** The name that teachers use for the pattern: `ai as in rain`. */
  readonly label: string;
  readonly letters: string;
  readonly sounds: readonly string[];
  /** The sounds in British English, where they are different. */
  readonly british?: readonly string[];
  readonly where: string;
  readonly keyWord: string;
  readonly examples: readonly string[];
  /** Left out for rows that every group counts. */
  readonly finer?: Finer;
  /** The row that counts in place of a `kind` row that the group does not name: contraction. */
  readonly kindOf?: PatternId;
}

/**
 * The kind of a row that counts by itself only for groups that are held to it. Other groups read as they did before the
 * row was added.
 * - `kind` and `root` count where the group's sequence or its own lists name the row.
 * - `unit` counts where these name the row and the group takes endings as units.
 * - `division` counts where the group's options count divisions.
 */
export type Finer = 'kind' | 'unit' | 'division' | 'root';

export interface SequenceStep {
  readonly title?: string;
  readonly teaches: readonly PatternId[];
  readonly bySight: readonly string[];
}

/**
 * The English of a group.
 * `american`: General American, which pronounces every r that is spelt.
 * `british`: the English of southern England, which pronounces an r only before a vowel.
 */
export type Accent = 'american' | 'british';

/** An ordered scope and sequence. */
export interface Sequence {
  readonly id: string;
  readonly name: string;
  readonly source: string;
  readonly licence: string;
  readonly note?: string;
  /** The accent the sequence is made for; left out where the sequence serves both accents. */
  readonly accent?: Accent;
  readonly steps: readonly SequenceStep[];
}

/** `flex`: an unstressed vowel counts when its spelling is taught in any full reading. */
export type SchwaPolicy = 'taught' | 'flex' | 'strict';

export interface GroupOptions {
  readonly schwa?: SchwaPolicy;
  /** Short o and aw count as one sound before f, s, th, ng, g (default true). */
  readonly shortOMerged?: boolean;
  /** `counted`: wh must be taught. `free`: wh is known once w is known, where both sound alike. Default counted. */
  readonly wh?: 'counted' | 'free';
  /** `counted`: a blend must be taught; `free`: knowing its letters is enough. Default counted. */
  readonly blends?: 'counted' | 'free';
  /** `counted`: the types of the syllables in longer words must be taught. `free`: they need not be. Default free. */
  readonly syllableTypes?: 'counted' | 'free';
  /**
   * `counted`: the ways to divide longer words (VC/CV, V/CV, VC/V, V/V) must be taught. `free`: they need not be.
   * Default free.
   */
  readonly divisions?: 'counted' | 'free';
  /**
   * `units`: endings such as -ang and -el that the sequence names must be taught as units; `parts`: knowing their letters is
   * enough. Default parts.
   */
  readonly endings?: 'parts' | 'units';
  /**
   * Whether the irregular forms of by-sight words are counted or free: with go by sight, whether went is by sight too.
   * Default counted.
   */
  readonly irregularForms?: 'counted' | 'free';
  /**
   * The a of bath and grass in British English, as in father or as in cat. Default father. American English has only
   * one pronunciation.
   */
  readonly bath?: 'father' | 'cat';
  /** How sounds are written down: as in dictionaries for children, or in the International Phonetic Alphabet. Default dictionary. */
  readonly soundMarks?: 'dictionary' | 'ipa';
  /** The longest base word, in syllables, regardless of the sequence. */
  readonly maxSyllables?: number;
}

/** The step of a sequence that a group has been at since a given day (`2026-11-25`). */
export interface StepMove {
  readonly date: string;
  readonly sequence: string | null;
  readonly step: number;
}

/**
 * The group's own decision about a word, which overrides the decision of the engine. `judged` means that the group has
 * no decision of its own.
 */
export type CountsAs = 'judged' | 'by-sight' | 'name' | 'skip';

/** Some pupils at one step. A text is checked against the patterns they have been taught. */
export interface Group {
  readonly name: string;
  /** The English the group is taught. Left out by earlier versions, which means American. */
  readonly accent?: Accent;
  /** The id of a starter, a path (command line only), or null when the group has only `alsoTaught`. */
  readonly sequence: string | null;
  /** The number of steps taught so far, 1-based. The step with this number is being taught now. */
  readonly step: number;
  readonly alsoTaught: readonly PatternId[];
  readonly notYet: readonly PatternId[];
  readonly bySight: readonly string[];
  readonly names: readonly string[];
  /** Words left out of the count, in lower case or as written. For this group they are not words to read. */
  readonly skip?: readonly string[];
  readonly options: GroupOptions;
  /** The changes of the group's step, the earliest first, with one move a day. */
  readonly history?: readonly StepMove[];
}

export type Standing = 'reads' | 'fresh' | 'by-sight' | 'name' | 'unsure' | 'beyond' | 'skipped';

/** The standing of a word for a group, with the patterns that it lacks. */
export interface Verdict {
  readonly standing: Standing;
  readonly missing: readonly PatternId[];
  /**
   * The error with its stack. Present only if an error in the engine prevented the word from being judged. The word is
   * then `unsure`.
   */
  readonly fault?: string;
  /** The reason for which a word is left out although the group does not skip it. */
  readonly why?: 'initialism';
}

export interface Tally {
  /** Words counted towards reach: all words except names and skipped words. */
  readonly running: number;
  readonly reads: number;
  readonly fresh: number;
  readonly bySight: number;
  readonly names: number;
  readonly unsure: number;
  readonly beyond: number;
  readonly skipped: number;
  /** Percent of `running` that the group can read: reads + fresh + bySight, one decimal. 100 for an empty text. */
  readonly reach: number;
}

export interface Gap {
  readonly pattern: PatternId;
  /** Running words that become readable if this pattern alone is taught. */
  readonly opens: number;
  /** Distinct words of this text that lack the pattern, most frequent first. */
  readonly words: readonly string[];
}

export interface WordEntry {
  readonly word: string;
  readonly count: number;
  readonly standing: Standing;
  readonly missing: readonly PatternId[];
}

/** A word that could not be judged, with the error and its stack. */
export interface WordFault {
  readonly word: WordKey;
  readonly fault: string;
}

export interface Report {
  readonly words: readonly WordEntry[];
  readonly tally: Tally;
  /** The gaps, with the gap that opens the most words first. */
  readonly gaps: readonly Gap[];
  /** Words that could not be judged because of an error in the engine. Usually there are none. */
  readonly faults: readonly WordFault[];
}
