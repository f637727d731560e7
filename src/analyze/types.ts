/** The shared vocabulary of the engine. Nothing here knows a page, a browser or a clock. */

/** Half-open range of UTF-16 units, always into the original text. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** Stable id of one catalogue row, for example `ai-long-a` (rain). */
export type PatternId = string;

/**
 * The key by which a word is looked up: straight apostrophes, no soft hyphens, NFC; lower case, except that a word with a capital keeps it
 * (`Duke`), because it may be a name; where its place explains the capital, a sign says so (`Duke^`), and another where it is a part of a
 * longer name (`School+`). A homograph whose reading is plain in its place has the number of that reading behind it: `read#1`
 * (`src/analyze/homographs/word-key.ts`).
 */
export type WordKey = string;

/** One piece of a text that matters: a word to read, or something that is left out of the count. */
export interface Token extends Span {
  readonly kind: 'word' | 'skipped';
  readonly key: WordKey;
}

/** Where a reading comes from, surest first. `rule` and `guess` are never shown as facts. */
export type ReadingSource = 'dictionary' | 'derived' | 'rule' | 'guess' | 'none';

/** Letters that stand for a sound together. `a_e` is where the vowel is; its e is not listed again. */
export interface Unit {
  readonly letters: string;
  /** ARPAbet without stress, several joined by a dot, `AX` for schwa, `-` for silent. */
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

/** One way to say a word, and everything a reader needs to get there from its letters. */
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
  /** The same told by finer rows; left out where no finer row tells more. */
  readonly fine?: FineNeeds;
  /** Left out for a word that is not made of others. */
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

/** A finer row, and the rows in its place for a group that does not count it by itself: of ring `rime-ing` or `short-i` and `ng`. */
export interface FinerNeed {
  readonly row: PatternId;
  readonly of: readonly PatternId[];
}

/** The parts of a word, one step down, and the patterns that join them: some and one for someone, and compound. */
export interface MadeOf {
  readonly parts: readonly PartNeeds[];
  /** Sorted. Ending, spelling change, kind of word, and letters that say another sound than in the parts. */
  readonly joint: readonly PatternId[];
  /** The joint by finer rows: of can't `contraction-not`. */
  readonly fineJoint?: FineNeeds;
}

/** A word that another is made of, with what it requires itself. */
export interface PartNeeds {
  /** Lower case. */
  readonly word: string;
  readonly requires: readonly PatternId[];
  readonly fine?: FineNeeds;
  readonly madeOf?: MadeOf;
}

/**
 * `common`: an ordinary word that a capital does not make a name (among the commonest, or a form of an ordinary word: banners);
 * `name`: met only as a name (Wilma); `rare`: any other (kelp, marigold).
 */
export type Usage = 'common' | 'rare' | 'name';

/** All readings of a word, the usual one first; never empty for a word made of letters. */
export interface WordAnalysis {
  readonly word: string;
  readonly readings: readonly Reading[];
  /** The readings are different words: lead, bow. Not so where one word is said in two ways (either). */
  readonly homograph: boolean;
  /** How the word is met; null when the table lacks it. */
  readonly usage: Usage | null;
  /** Only where a fault of ours kept the word from being analysed: the error with its stack. */
  readonly fault?: string;
}

/** One teachable thing. */
export interface Pattern {
  readonly id: PatternId;
  readonly family: string;
  /** Its name among teachers: `ai as in rain`. */
  readonly label: string;
  readonly letters: string;
  readonly sounds: readonly string[];
  /** The sounds in British, where they are others. */
  readonly british?: readonly string[];
  readonly where: string;
  readonly keyWord: string;
  readonly examples: readonly string[];
  /** Left out for rows that every group counts. */
  readonly finer?: Finer;
  /** The row that counts in place of a `kind` which the group does not name: contraction. */
  readonly kindOf?: PatternId;
}

/**
 * A row that counts by itself only for groups that are held to it, so that others read as they did before it was there.
 * `kind` and `root`: where the group's sequence or its own lists name it; `unit`: where they do, and the group takes endings
 * as units; `division`: where the group's options count divisions.
 */
export type Finer = 'kind' | 'unit' | 'division' | 'root';

export interface SequenceStep {
  readonly title?: string;
  readonly teaches: readonly PatternId[];
  readonly bySight: readonly string[];
}

/**
 * The English of a group. `american`: General American, with an r wherever one is spelt. `british`: that of southern England,
 * which says an r only before a vowel.
 */
export type Accent = 'american' | 'british';

/** An ordered scope and sequence. */
export interface Sequence {
  readonly id: string;
  readonly name: string;
  readonly source: string;
  readonly licence: string;
  readonly note?: string;
  /** The accent it is made for; left out where it serves both. */
  readonly accent?: Accent;
  readonly steps: readonly SequenceStep[];
}

/** `flex`: an unstressed vowel counts when its spelling is taught in any full reading. */
export type SchwaPolicy = 'taught' | 'flex' | 'strict';

export interface GroupOptions {
  readonly schwa?: SchwaPolicy;
  /** Short o and aw count as one sound before f, s, th, ng, g (default true). */
  readonly shortOMerged?: boolean;
  /** `counted`: wh must be taught; `free`: it is known once w is, where both sound alike. Default counted. */
  readonly wh?: 'counted' | 'free';
  /** `counted`: a blend must be taught; `free`: knowing its letters is enough. Default counted. */
  readonly blends?: 'counted' | 'free';
  /** Same for the types of the syllables in longer words. Default free. */
  readonly syllableTypes?: 'counted' | 'free';
  /** Same for the ways to divide longer words (VC/CV, V/CV, VC/V, V/V). Default free. */
  readonly divisions?: 'counted' | 'free';
  /**
   * `units`: endings such as -ang and -el that the sequence names must be taught as units; `parts`: knowing their letters is
   * enough. Default parts.
   */
  readonly endings?: 'parts' | 'units';
  /** Same for the irregular forms of by-sight words: with go by sight, whether went is too. Default counted. */
  readonly irregularForms?: 'counted' | 'free';
  /** The a of bath and grass in British: as in father or as in cat. Default father; American has one way. */
  readonly bath?: 'father' | 'cat';
  /** How sounds are written down: as in dictionaries for children, or in the International Phonetic Alphabet. Default dictionary. */
  readonly soundMarks?: 'dictionary' | 'ipa';
  /** Longest base word, in syllables, whatever the sequence says. */
  readonly maxSyllables?: number;
}

/** From this day on (`2026-11-25`) the group was at this step of this sequence. */
export interface StepMove {
  readonly date: string;
  readonly sequence: string | null;
  readonly step: number;
}

/** The group's own word on a word, which comes before the engine's: `judged` where it has none. */
export type CountsAs = 'judged' | 'by-sight' | 'name' | 'skip';

/** Some pupils at one step: the taught-pattern profile a text is checked against. */
export interface Group {
  readonly name: string;
  /** The English it is taught; left out (by earlier versions): American. */
  readonly accent?: Accent;
  /** A starter's id, a path (command line only), or null when `alsoTaught` is all there is. */
  readonly sequence: string | null;
  /** Steps taught so far, 1-based; the step itself is the one being taught now. */
  readonly step: number;
  readonly alsoTaught: readonly PatternId[];
  readonly notYet: readonly PatternId[];
  readonly bySight: readonly string[];
  readonly names: readonly string[];
  /** Words left out of the count (in lower case or as they are written): no words to read to this group. */
  readonly skip?: readonly string[];
  readonly options: GroupOptions;
  /** When its step changed, the earliest first and one move a day. */
  readonly history?: readonly StepMove[];
}

export type Standing = 'reads' | 'fresh' | 'by-sight' | 'name' | 'unsure' | 'beyond' | 'skipped';

/** The standing of a word for a group, with the patterns that it lacks. */
export interface Verdict {
  readonly standing: Standing;
  readonly missing: readonly PatternId[];
  /** Only where a fault of ours kept the word from being judged (it is `unsure` then): the error with its stack. */
  readonly fault?: string;
  /** Why a word is left out, where the group does not say so itself. */
  readonly why?: 'initialism';
}

export interface Tally {
  /** Words counted towards reach: all but names and skipped. */
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
  /** Most opened first. */
  readonly gaps: readonly Gap[];
  /** Words that a fault of ours kept from being judged; none as a rule. */
  readonly faults: readonly WordFault[];
}
