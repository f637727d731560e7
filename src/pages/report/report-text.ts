import * as v from 'valibot';
import type { WordCounts } from '../../analyze/index.ts';
import type { WordKey } from '../../analyze/types.ts';
import { loadPassage } from '../../host/store/passages-store.ts';
import { loadTexts, type ShelfText } from '../../host/store/shelf-store.ts';
import { countWords } from '../../passage/count-words.ts';
import { cutLine } from '../../passage/cut-line.ts';
import { readTabWords } from '../../passage/files/read-tab.ts';
import { TakeFault } from '../../passage/read-page-text.ts';
import { nameSource } from '../../passage/source-line.ts';
import { versionFor } from '../../passage/versions.ts';
import { readAddress } from '../../ui/address.ts';
import { say } from '../../wording/say.ts';

/** A text for a report: its words with their counts, and its source. */
export interface ReportText extends WordCounts {
  readonly title: string;
  readonly source: string | null;
  readonly words: readonly (readonly [WordKey, number])[];
  /** The id of the group the text is made for; null if the text is for no particular group. */
  readonly groupId: string | null;
  /** Whether the text was changed for the group `groupId`. */
  readonly adapted: boolean;
  /** The words taught as wholes for this text, in lower case. */
  readonly storyWords: readonly string[];
}

const keptText: v.GenericSchema<string | null, ReportText> = v.pipe(
  v.string(),
  v.parseJson(),
  v.object({
    title: v.string(),
    source: v.nullable(v.string()),
    words: v.array(v.tuple([v.string(), v.number()])),
    skipped: v.number(),
    groupId: v.nullable(v.string()),
    adapted: v.boolean(),
    storyWords: v.array(v.string()),
  }),
);

/** Thrown when there is no text to report on. The message is a sentence with the reason and the next step. */
export class ReportFault extends Error {}

/**
 * Reads the text that an address names:
 * - `#tab/7`: the shaded page in a tab
 * - `#passage/ID/GROUP`: the desk's text for a group
 * - `#shelf/ID`: a text of the shelf
 * The words of a page are saved only for this browser tab, so that the report can be loaded again when the page is
 * gone. Rejects with `ReportFault`, or with `StorageFault` if the desk or the shelf cannot be read.
 */
export async function loadReportText(address: string): Promise<ReportText> {
  const [kind, id = '', groupId = ''] = readAddress(address);
  if (kind === 'tab' && /^\d+$/.test(id)) return readTab(Number(id));
  if (kind === 'passage' && id !== '') return readPassage(id, groupId);
  if (kind === 'shelf' && id !== '') return readShelved(id);
  throw new ReportFault(say('report.chooseText'));
}

async function readTab(tab: number): Promise<ReportText> {
  const key = `report-tab-${tab}`;
  const kept = v.safeParse(keptText, sessionStorage.getItem(key));
  if (kept.success) return kept.output;
  const page = await readTabWords(tab).catch((error: unknown) => {
    throw error instanceof TakeFault ? new ReportFault(error.message) : error;
  });
  if (!page) {
    throw new ReportFault(say('report.pageGone'));
  }
  const text = asFound({ ...page, url: page.url || null });
  keep(key, JSON.stringify(text));
  return text;
}

async function readShelved(id: string): Promise<ReportText> {
  const [text] = await loadTexts([id]);
  if (!text) throw new ReportFault(say('report.notOnShelf'));
  return asFound(text);
}

/** Returns a text as it was found, for no particular group. */
function asFound({
  title,
  url,
  byline,
  date,
  words,
  skipped,
}: Pick<ShelfText, 'title' | 'url' | 'byline' | 'date' | 'words' | 'skipped'>): ReportText {
  const source = nameSource({ source: { byline, url, date } });
  return {
    title: title || (url ?? say('report.untitled')),
    source,
    words,
    skipped,
    groupId: null,
    adapted: false,
    storyWords: [],
  };
}

async function readPassage(id: string, groupId: string): Promise<ReportText> {
  const passage = await loadPassage(id);
  if (!passage) throw new ReportFault(say('report.notOnDesk'));
  const { text, storyWords } = versionFor(passage, groupId);
  const { words, skipped } = countWords(text, cutLine);
  return {
    title: passage.title,
    source: nameSource(passage),
    words: [...words],
    skipped,
    groupId,
    adapted: text !== passage.original,
    storyWords: storyWords.map(({ word }) => word),
  };
}

/** If there is no room for the text, the report is still right. It just cannot be loaded again. */
function keep(key: string, text: string): void {
  try {
    sessionStorage.setItem(key, text);
  } catch {}
}
