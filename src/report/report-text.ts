import type { WordCounts } from '../analyze/index.ts';
import type { WordKey } from '../analyze/types.ts';
import { askWords } from '../host/client.ts';
import { loadPassage } from '../host/passages-store.ts';
import { countWords } from '../passage/count-words.ts';
import { cutLine } from '../passage/cut-line.ts';
import { sourceLine } from '../passage/source-line.ts';
import { versionFor } from '../passage/versions.ts';

/** A text as a report sees it: its words with their counts, and where it comes from. */
export interface ReportText extends WordCounts {
  readonly title: string;
  readonly source: string | null;
  readonly words: readonly (readonly [WordKey, number])[];
  /** The group the text is made for, by its id; null for a page of the web. */
  readonly groupId: string | null;
  /** Whether the text was changed for that group. */
  readonly adapted: boolean;
  /** Taught as wholes for this text, in lower case. */
  readonly storyWords: readonly string[];
}

/** Why there is nothing to report on, in a sentence with the next step. */
export class ReportFault extends Error {}

/**
 * Reads the text an address names: `#tab/7` the shaded page in a tab, `#passage/ID/GROUP` the desk's text for a group.
 * The words of a page are kept with this tab of the browser alone, so that the report can be loaded again when the page
 * is gone. Rejects with `ReportFault`, or with `StorageFault` where the desk cannot be read.
 */
export async function loadReportText(address: string): Promise<ReportText> {
  const [kind, id = '', groupId = ''] = address.replace(/^#/, '').split('/').map(decode);
  if (kind === 'tab' && /^\d+$/.test(id)) return readTab(Number(id));
  if (kind === 'passage' && id !== '') return readPassage(id, groupId);
  throw new ReportFault('Choose a text first: press “Climb and report” in the panel, or at the desk.');
}

async function readTab(tab: number): Promise<ReportText> {
  const key = `report-tab-${tab}`;
  const kept = sessionStorage.getItem(key);
  if (kept !== null) return JSON.parse(kept) as ReportText;
  const page = await askWords(tab);
  if (!page) {
    throw new ReportFault(
      'The page is no longer shaded. Go back to it, press the Wordreach button, and open the report again.',
    );
  }
  const { title, url, byline, date, words, skipped } = page;
  const text = {
    title: title || url,
    source: sourceLine({ source: { byline, url, date } }),
    words,
    skipped,
    groupId: null,
    adapted: false,
    storyWords: [],
  };
  keep(key, JSON.stringify(text));
  return text;
}

async function readPassage(id: string, groupId: string): Promise<ReportText> {
  const passage = await loadPassage(id);
  if (!passage) throw new ReportFault('This passage is no longer on the desk. Open another one there.');
  const { text, storyWords } = versionFor(passage, groupId);
  const { words, skipped } = countWords(text, cutLine);
  return {
    title: passage.title,
    source: sourceLine(passage),
    words: [...words],
    skipped,
    groupId,
    adapted: text !== passage.original,
    storyWords: storyWords.map(({ word }) => word),
  };
}

/** Without room for it the report is right all the same; it only cannot be loaded again. */
function keep(key: string, text: string): void {
  try {
    sessionStorage.setItem(key, text);
  } catch {}
}

function decode(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
