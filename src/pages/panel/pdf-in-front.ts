import type { PageWords } from '../../contract/page-contract.ts';
import { findPdfTab } from '../../host/page-talk/pdf-tab.ts';
import { FileFault } from '../../passage/files/file-fault.ts';
import { readPdfTab } from '../../passage/files/read-tab.ts';
import { say } from '../../wording/say.ts';

type Found = PageWords | { readonly why: string };

/** The last PDF that was read. The PDF is kept because its words are needed again at each change of the group. */
let last: { readonly of: string; readonly found: Promise<Found> } | null = null;

/**
 * Returns the words of the PDF that a tab shows, or the reason why the PDF cannot be read. Null if the tab shows no PDF
 * or access is not allowed.
 */
export async function readPdfInFront(tab: number): Promise<Found | null> {
  const pdf = await findPdfTab(tab);
  if (!pdf) return null;
  const of = `${tab} ${pdf.url}`;
  if (last?.of !== of) last = { of, found: read(tab) };
  const { found } = last;
  const words = await found;
  // A PDF that failed is tried again.
  if ('why' in words && last?.found === found) last = null;
  return words;
}

async function read(tab: number): Promise<Found> {
  try {
    return (await readPdfTab(tab))?.page ?? { why: say('files.pdfNotGiven') };
  } catch (error) {
    if (error instanceof FileFault) return { why: error.message };
    throw error;
  }
}
