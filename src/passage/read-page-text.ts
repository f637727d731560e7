import { askPage, askWords, listFrames } from '../host/client.ts';
import type { PageWords } from '../host/messages.ts';
import { say } from '../wording/say.ts';
import { writeLines } from './passage-lines.ts';

/** Why nothing could be taken from a page, in a sentence with the next step. */
export class TakeFault extends Error {}

/** What is checked on a page: its words, and its text as that of a passage. */
export interface PageText {
  readonly page: PageWords;
  readonly text: string;
  /** How many pictures were left out. */
  readonly pictures: number;
}

/** Reads what is checked on a shaded page. Rejects with `TakeFault` when it is no longer shaded or has no words. */
export async function readPageText(tab: number): Promise<PageText> {
  const page = await askWords(tab);
  if (!page) throw new TakeFault(say('passage.notShaded'));
  const frames = await listFrames(tab).catch(() => [0]);
  const parts = await Promise.all(
    frames.map((frame) => askPage(tab, 'takePassage', undefined as never, frame)),
  );
  const lines = parts.flatMap((part) => part?.lines ?? []);
  if (lines.length === 0) throw new TakeFault(say('passage.noWords'));
  return {
    page: { ...page, title: page.title || lines[0]!.text.slice(0, 60) },
    text: writeLines(lines),
    pictures: parts.reduce((sum, part) => sum + (part?.pictures ?? 0), 0),
  };
}
