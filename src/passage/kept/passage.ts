/** Where a text comes from; the line stays with every copy that leaves the desk. */
export interface PassageSource {
  readonly url: string | null;
  readonly byline: string | null;
  /** As the page or the teacher writes it. */
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

/** A text on the desk: as it was found, and as it was adapted for groups, by the id of the group. */
export interface Passage {
  readonly id: string;
  readonly title: string;
  readonly source: PassageSource;
  readonly original: string;
  readonly versions: Readonly<Record<string, PassageVersion>>;
  /** Counts the times it was saved; two windows that changed the same one are told apart by it. */
  readonly rev: number;
  /** When it was last saved, in milliseconds since 1970. */
  readonly saved: number;
}

/** An id that no other passage has. */
export function freePassageId(): string {
  return crypto.randomUUID();
}
