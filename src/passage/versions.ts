import type { Passage, PassageVersion, StoryWord } from './kept/passage.ts';

/** The same array each time, so that a comparison finds no change. */
const NONE: readonly StoryWord[] = [];

/** Returns the passage as a group is to read it. While nothing was changed for the group, this is the original text. */
export function versionFor({ versions, original }: Passage, groupId: string): PassageVersion {
  return Object.hasOwn(versions, groupId) ? versions[groupId]! : { text: original, storyWords: NONE };
}

/** The passage with a group's version changed. */
export function setVersion(
  passage: Passage,
  groupId: string,
  change: (version: PassageVersion) => PassageVersion,
): Passage {
  const version = change(versionFor(passage, groupId));
  return { ...passage, versions: { ...passage.versions, [groupId]: version } };
}
