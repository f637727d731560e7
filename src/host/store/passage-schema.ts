import * as v from 'valibot';
import { countSchema, recordOf, textOrNull } from './schema.ts';

/** Where a text comes from; the line stays with every copy that leaves the desk. */
export interface PassageSource {
  readonly url: string | null;
  readonly byline: string | null;
  /** As the page or the teacher writes it. */
  readonly date: string | null;
}

/** A word taught as a whole for this passage, with what it means. */
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

/** An id nobody has. */
export function freePassageId(): string {
  return crypto.randomUUID();
}

const lineOfSource = v.fallback(textOrNull, null);

/** A source of any other kind says nothing. */
const source: v.GenericSchema<unknown, PassageSource> = v.fallback(
  v.object({ url: lineOfSource, byline: lineOfSource, date: lineOfSource }),
  { url: null, byline: null, date: null },
);

const version: v.GenericSchema<unknown, PassageVersion> = v.object({
  text: v.string(),
  storyWords: v.array(v.object({ word: v.string(), meaning: v.string() })),
});

const content = { title: v.string(), source, original: v.string(), versions: recordOf(version) };

/** A passage in a file of passages, where it has no id of its own. */
export const passageContentSchema: v.GenericSchema<unknown, Omit<Passage, 'id' | 'rev' | 'saved'>> = v.object(
  content,
);

/** A passage as it is stored. */
export const passageSchema: v.GenericSchema<unknown, Passage> = v.object({
  id: v.pipe(v.string(), v.nonEmpty()),
  ...content,
  rev: countSchema,
  saved: countSchema,
});
