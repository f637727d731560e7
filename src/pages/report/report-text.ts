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

/** A text as a report sees it: its words with their counts, and where it comes from. */
export interface ReportText extends WordCounts {
  readonly title: string;
  readonly source: string | null;
  readonly words: readonly (readonly [WordKey, number])[];
  /** The group the text is made for, by its id; null where it is for nobody in particular. */
  readonly groupId: string | null;
  /** Whether the text was changed for that group. */
  readonly adapted: boolean;
  /** Taught as wholes for this text, in lower case. */
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

/** Why there is nothing to report on, in a sentence with the next step. */
export class ReportFault extends Error {}

/**
 * Reads the text an address names: `#tab/7` the shaded page in a tab, `#passage/ID/GROUP` the desk's text for a group,
 * `#shelf/ID` a text of the shelf.
 * The words of a page are kept with this tab of the browser alone, so that the report can be loaded again when the page
 * is gone. Rejects with `ReportFault`, or with `StorageFault` where desk or shelf cannot be read.
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

/** A text as it was met, for no group in particular. */
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

/** Without room for it the report is right all the same; it only cannot be loaded again. */
function keep(key: string, text: string): void {
  try {
    sessionStorage.setItem(key, text);
  } catch {}
}
