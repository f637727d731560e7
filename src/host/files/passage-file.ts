import { say } from '../../wording/say.ts';
import type { Passage, PassageSource, PassageVersion, StoryWord } from '../store/passages-store.ts';

/** What makes a file one of ours, and which version of it this is. */
const KIND = 'wordreach-passages';
const VERSION = 1;

/** Why a file of passages cannot be taken, in a sentence with the next step. */
export class PassageFileError extends Error {}

/** All passages as one file, to keep or to move to another browser. */
export function writePassages(passages: readonly Passage[]): string {
  const kept = passages.map(({ title, source, original, versions }) => ({
    title,
    source,
    original,
    versions,
  }));
  return `${JSON.stringify({ [KIND]: VERSION, passages: kept }, null, 2)}\n`;
}

/** The passages of a file, without ids of their own. Throws `PassageFileError`; a file that is wrong in part is refused whole. */
export function readPassages(text: string): Omit<Passage, 'id' | 'rev' | 'saved'>[] {
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    throw new PassageFileError(say('host.noPassages'));
  }
  if (!isObject(file) || !Object.hasOwn(file, KIND) || !Array.isArray(file.passages))
    throw new PassageFileError(say('host.noPassages'));
  if (file[KIND] !== VERSION) throw new PassageFileError(say('host.laterVersion'));
  return file.passages.map((passage: unknown, i) =>
    readPassage(passage, say('host.passageOfFile', { number: i + 1 })),
  );
}

/** A passage as a file holds it. `where` names it in the `PassageFileError` that is thrown when it is none. */
export function readPassage(value: unknown, where: string): Omit<Passage, 'id' | 'rev' | 'saved'> {
  if (!isObject(value)) throw damaged(where);
  const { title, source, original, versions } = value;
  if (typeof title !== 'string' || typeof original !== 'string' || !isObject(versions)) throw damaged(where);
  const read = Object.entries(versions).map(
    ([group, version]) => [group, readVersion(version, where)] as const,
  );
  return { title, source: readSource(source), original, versions: Object.fromEntries(read) };
}

function readSource(value: unknown): PassageSource {
  const text = (key: string): string | null =>
    isObject(value) && typeof value[key] === 'string' ? (value[key] as string) : null;
  return { url: text('url'), byline: text('byline'), date: text('date') };
}

function readVersion(value: unknown, where: string): PassageVersion {
  if (!isObject(value) || typeof value.text !== 'string' || !Array.isArray(value.storyWords))
    throw damaged(where);
  const storyWords = value.storyWords.map((item: unknown): StoryWord => {
    if (!isObject(item) || typeof item.word !== 'string' || typeof item.meaning !== 'string')
      throw damaged(where);
    return { word: item.word, meaning: item.meaning };
  });
  return { text: value.text, storyWords };
}

function damaged(where: string): PassageFileError {
  return new PassageFileError(say('host.damagedNothingTaken', { where }));
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
