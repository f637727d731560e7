/** The source of a text. The line with the source stays with every copy that leaves the desk. */
export interface PassageSource {
  readonly url: string | null;
  readonly byline: string | null;
  /** The date as the page or the teacher writes it. */
  readonly date: string | null;
}

/** A word taught as a whole for this passage, with its meaning. */
export interface StoryWord {
  readonly word: string;
  readonly meaning: string;
}

/** The passage as one group is to read it. A line of text is a paragraph; `# ` begins a heading, `- ` an entry of a list. */
export interface PassageVersion {
  readonly text: string;
  readonly storyWords: readonly StoryWord[];
}

/** A text on the desk: the original as it was found, and the versions adapted for groups, by group id. */
export interface Passage {
  readonly id: string;
  readonly title: string;
  readonly source: PassageSource;
  readonly original: string;
  readonly versions: Readonly<Record<string, PassageVersion>>;
  /**
   * The number of times that the passage was saved. A change of the same passage in two windows is detected by this
   * number.
   */
  readonly rev: number;
  /** The time when the passage was last saved, in milliseconds since 1970. */
  readonly saved: number;
}

/** Returns an id that no other passage has. */
export function freePassageId(): string {
  return crypto.randomUUID();
}
