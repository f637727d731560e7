import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { FrameWords } from '../../src/contract/page-contract.ts';
import type { Question } from '../../src/host/page-talk/messages.ts';
import { countWords } from '../../src/passage/count-words.ts';
import { cutLine } from '../../src/passage/cut-line.ts';
import { startFileTime } from '../../src/passage/files/file-time.ts';
import { readPageFile } from '../../src/passage/files/read-page-file.ts';
import { pages, tabs } from '../fakes/extension.ts';

/**
 * Simulates a tab in front whose content script has read and shaded a text with the given number of pictures. `asked`
 * collects the questions that the tab gets, except the question for its words.
 */
export function shadeTab(
  id: number,
  title: string,
  text: string,
  pictures = 0,
): { readonly asked: Question[] } {
  const { words, skipped } = countWords(text, cutLine);
  const page: FrameWords = {
    title,
    byline: null,
    date: null,
    url: `https://tarnquay.example/${id}`,
    words: [...words],
    skipped,
    scope: 'story',
    selection: false,
    foreign: [],
    drawn: null,
    written: 0,
    covered: 0,
    rows: false,
    paid: false,
    restless: false,
    language: 'en',
    takenAway: false,
    fault: null,
  };
  const asked: Question[] = [];
  tabs.push({ id, url: page.url, active: true, windowId: 1 });
  pages.set(id, (given) => {
    const question = given as Question;
    if (question.ask === 'words') return page;
    asked.push(question);
    if (question.ask === 'goTo') return 1;
    if (question.ask === 'takePassage')
      return {
        lines: text.split('\n').map((line) => ({ kind: 'paragraph', level: 0, text: line })),
        pictures,
      };
    return null;
  });
  return { asked };
}

/** Returns the story in the package, as read from its page file. */
export async function readStory(): Promise<{ readonly title: string; readonly text: string }> {
  const file = readFileSync(join(import.meta.dirname, '../../public/story/index.html'));
  const { title, text } = await readPageFile(new Uint8Array(file), 'story', startFileTime());
  return { title, text };
}
