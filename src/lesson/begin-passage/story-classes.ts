import story from './story-classes.json' with { type: 'json' };

/** The things that stories name, by the parts they play; as `wordClasses` of the sentences. Words a setting lacks are drawn from these. */
export const storyClasses: Readonly<Record<string, string>> = story.classes;

/** Ends of sentences and lists, as they are written. */
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

/** Verbs of the sentences that are jobs, in any of their frames that fit the place. */
export const jobVerbs: ReadonlySet<string> = new Set(story.jobVerbs.split(' '));
