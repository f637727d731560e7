import story from './story-classes.json' with { type: 'json' };

/**
 * The things that stories name, by the part that they play, in the same form as `wordClasses` of the sentences. If a
 * setting lacks words of a class, the words are drawn from this list.
 */
export const storyClasses: Readonly<Record<string, string>> = story.classes;

/** Phrases for meals and for play, which are put into sentences as they are written. */
export const storyPhrases: Readonly<Record<string, readonly string[]>> = story.phrases;

/** One place for a story, and the things found there. */
export interface Setting {
  readonly id: string;
  /** `dock on`: a place, and how one is at it; `sea by to` with how one goes there, where that is not `to`. */
  readonly places: string;
  /** The places that are by water. */
  readonly water: string;
  /** Classes as in `storyClasses`, for this setting. */
  readonly classes: Readonly<Record<string, string>>;
  /** The things that jobs are done with or on. */
  readonly worked: string;
}

export const settings: readonly Setting[] = story.settings;

/** Verbs of the sentences that name a job. A job may use any frame of its verb that fits the place. */
export const jobVerbs: ReadonlySet<string> = new Set(story.jobVerbs.split(' '));
