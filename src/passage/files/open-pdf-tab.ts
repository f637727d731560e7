import { fetchPdfTab, findPdfTab } from '../../host/page-talk/pdf-tab.ts';
import { say } from '../../wording/say.ts';
import { FileFault, LARGEST_FILE } from './file-fault.ts';
import { type OpenPdf, openPdf, type PdfOptions } from './open-pdf.ts';

/** A PDF with the address it comes from. */
export interface PdfOfTab extends OpenPdf {
  readonly url: string;
}

/**
 * Opens the PDF that a tab shows. The tab fetches its own file again. Returns null if the tab shows no PDF, or none
 * that may be read. Rejects with `FileFault`, or when aborted.
 */
export async function openPdfTab(tab: number, options: PdfOptions = {}): Promise<PdfOfTab | null> {
  const found = await findPdfTab(tab);
  if (!found) return null;
  const fetched = await fetchPdfTab(tab, LARGEST_FILE);
  options.signal?.throwIfAborted();
  if ('why' in fetched)
    throw new FileFault(say(fetched.why === 'gone' ? 'files.pdfNotGiven' : 'files.tooLargePdf'));
  // A site may answer the second request with another page: a login, or the page without the form that was sent.
  if (!isPdf(fetched.bytes)) throw new FileFault(say('files.pdfNotGiven'));
  return { ...(await openPdf(fetched.bytes, options)), url: found.url };
}

function isPdf(bytes: Uint8Array): boolean {
  return String.fromCharCode(...bytes.subarray(0, 1024)).includes('%PDF-');
}
