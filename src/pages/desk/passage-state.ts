import { splitKey } from '../../analyze/index.ts';
import type { WordKey } from '../../analyze/types.ts';
import type { Groups } from '../../host/store/groups-store.ts';
import type { Passage, StoryWord } from '../../passage/kept/passage.ts';
import { setVersion } from '../../passage/versions.ts';

/** The part of a passage that is looked at. */
export interface PassageState {
  /** The group it is written for. */
  readonly groupId: string;
  /** The version beside that group's own: a group's id, `AS_FOUND`, or '' for none. */
  readonly beside: string;
  /** Whether the table of versions is open. */
  readonly isCounting: boolean;
  /** Most words a sentence should have; null for no limit. */
  readonly longest: number | null;
}

export function openFor(groupId: string): PassageState {
  return { groupId, beside: '', isCounting: false, longest: null };
}

/** Whether two versions are shown side by side, instead of the field; a version is never beside itself. */
export function isBeside({ groupId, beside }: PassageState): boolean {
  return beside !== '' && beside !== groupId;
}

/** Whether the figures of all versions are needed. */
export function needsVersions(state: PassageState): boolean {
  return state.isCounting || isBeside(state);
}

/** The other groups that have a version of their own, which can be put beside this one. */
export function listBeside(
  { groups }: Pick<Groups, 'groups'>,
  { versions }: Pick<Passage, 'versions'>,
  groupId: string,
): readonly { readonly id: string; readonly name: string }[] {
  return Object.entries(groups)
    .filter(([id]) => id !== groupId && Object.hasOwn(versions, id))
    .map(([id, { name }]) => ({ id, name }));
}

/** Finds the two versions that are side by side; null while one of them is not there. */
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

/** With more words to teach for the passage, after those it has. */
export function addStoryWords(passage: Passage, groupId: string, words: readonly StoryWord[]): Passage {
  return setVersion(passage, groupId, (version) => ({
    ...version,
    storyWords: [...version.storyWords, ...words.map(({ word, meaning }) => ({ word, meaning }))],
  }));
}

/** Without words to teach that were added, each the last of its kind. */
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

/** A word as lists of story words have it: in lower case, without its reading. */
export function storyWordOf(key: WordKey): string {
  return splitKey(key).word.toLowerCase();
}

/** Counts up for each word, from 0: the place that is gone to when it is pressed the next time. */
export function createPlaceCounter(): (word: string) => number {
  const next = new Map<string, number>();
  return (word) => {
    const place = next.get(word) ?? 0;
    next.set(word, place + 1);
    return place;
  };
}
