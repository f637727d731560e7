import { splitKey } from '../../analyze/index.ts';
import type { WordKey } from '../../analyze/types.ts';
import type { Groups } from '../../host/store/groups-store.ts';
import type { Passage, StoryWord } from '../../passage/kept/passage.ts';
import { setVersion } from '../../passage/versions.ts';

/** The current view of a passage. */
export interface PassageState {
  /** The group for which the text is written. */
  readonly groupId: string;
  /** The version shown beside the group's own version: a group's id, `AS_FOUND`, or '' for none. */
  readonly beside: string;
  /** Whether the table of versions is open. */
  readonly isCounting: boolean;
  /** Most words a sentence should have; null for no limit. */
  readonly longest: number | null;
}

export function openFor(groupId: string): PassageState {
  return { groupId, beside: '', isCounting: false, longest: null };
}

/** Returns whether two versions are shown side by side instead of the field. A version is never shown beside itself. */
export function isBeside({ groupId, beside }: PassageState): boolean {
  return beside !== '' && beside !== groupId;
}

/** Returns whether the figures of all versions are needed. */
export function needsVersions(state: PassageState): boolean {
  return state.isCounting || isBeside(state);
}

/**
 * Lists the other groups with a version of their own. Each of these versions can be shown beside the version of this
 * group.
 */
export function listBeside(
  { groups }: Pick<Groups, 'groups'>,
  { versions }: Pick<Passage, 'versions'>,
  groupId: string,
): readonly { readonly id: string; readonly name: string }[] {
  return Object.entries(groups)
    .filter(([id]) => id !== groupId && Object.hasOwn(versions, id))
    .map(([id, { name }]) => ({ id, name }));
}

/** Finds the two versions that are shown side by side; returns null while one of the two is missing. */
export function findPair<V extends { readonly id: string }>(
  versions: readonly V[],
  { groupId, beside }: PassageState,
): { readonly from: V; readonly to: V } | null {
  const from = versions.find(({ id }) => id === beside);
  const to = versions.find(({ id }) => id === groupId);
  return from && to ? { from, to } : null;
}

export function writeText(passage: Passage, groupId: string, text: string): Passage {
  return setVersion(passage, groupId, (version) => ({ ...version, text }));
}

export function setStoryWords(passage: Passage, groupId: string, words: readonly StoryWord[]): Passage {
  return setVersion(passage, groupId, (version) => ({ ...version, storyWords: words }));
}

/** Adds words to teach to a passage, after the words it already has. */
export function addStoryWords(passage: Passage, groupId: string, words: readonly StoryWord[]): Passage {
  return setVersion(passage, groupId, (version) => ({
    ...version,
    storyWords: [...version.storyWords, ...words.map(({ word, meaning }) => ({ word, meaning }))],
  }));
}

/** Removes words to teach that were added. Of equal words, the last one is removed. */
export function takeStoryWords(passage: Passage, groupId: string, words: readonly StoryWord[]): Passage {
  return setVersion(passage, groupId, (version) => {
    const left = [...version.storyWords];
    for (const { word } of words) {
      const at = left.findLastIndex((one) => one.word === word);
      if (at >= 0) left.splice(at, 1);
    }
    return { ...version, storyWords: left };
  });
}

/** Returns a word in the form used in lists of story words: in lower case and without its reading. */
export function storyWordOf(key: WordKey): string {
  return splitKey(key).word.toLowerCase();
}

/** Creates a counter that counts from 0 for each word. The count is the place to go to at the next press of the word. */
export function createPlaceCounter(): (word: string) => number {
  const next = new Map<string, number>();
  return (word) => {
    const place = next.get(word) ?? 0;
    next.set(word, place + 1);
    return place;
  };
}
