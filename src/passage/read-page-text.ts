import type { PageWords } from '../contract/page-contract.ts';
import { askFrames, askWords } from '../host/page-talk/client.ts';
import { say } from '../wording/say.ts';
import { writeLines } from './passage-lines.ts';

/**
 * The error thrown if no text can be taken from a page. Its message is a sentence that gives the reason and the next
 * step.
 */
export class TakeFault extends Error {}

/** The checked part of a page: its words, and its text in the form of a passage. */
export interface PageText {
  readonly page: PageWords;
  readonly text: string;
  /** The number of pictures that were left out. */
  readonly pictures: number;
}

/** Reads the checked text of a shaded page. Rejects with `TakeFault` when it is no longer shaded or has no words. */
export async function readPageText(tab: number): Promise<PageText> {
  const page = await askWords(tab);
  if (!page) throw new TakeFault(say('passage.notShaded'));
  const parts = await askFrames(tab, 'takePassage', undefined as never);
  const lines = parts.flatMap((part) => part.lines);
  if (lines.length === 0) throw new TakeFault(say('passage.noWords'));
  return {
    page: { ...page, title: page.title || lines[0]!.text.slice(0, 60) },
    text: writeLines(lines),
    pictures: parts.reduce((sum, { pictures }) => sum + pictures, 0),
  };
}
