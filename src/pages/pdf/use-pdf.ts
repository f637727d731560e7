import { useEffect, useState } from 'preact/hooks';
import { FileFault, LARGEST_FILE } from '../../passage/files/file-fault.ts';
import type { OpenPdf } from '../../passage/files/open-pdf.ts';
import { useAddress } from '../../ui/address.ts';
import { say } from '../../wording/say.ts';

/** The PDF that is shown, with its address and the name of its file. */
export interface ShownPdf {
  readonly pdf: OpenPdf;
  /** The address of the PDF; null for a file on this computer. */
  readonly url: string | null;
  readonly name: string;
}

export type PdfState =
  | { readonly kind: 'none' }
  /** The number of pages read so far, and the number of all pages, which is 0 until it is known. */
  | { readonly kind: 'reading'; readonly done: number; readonly all: number }
  | { readonly kind: 'failed'; readonly why: string }
  | ({ readonly kind: 'open' } & ShownPdf);

/** Returns the PDF of the tab that the address names (`#tab/7`), or of a file opened on this page. */
export function usePdf(): { state: PdfState; openFile: (file: File) => void } {
  const tab = useAddress(readTabOf);
  const [file, setFile] = useState<File | null>(null);
  const [state, setState] = useState<PdfState>({ kind: 'none' });
  useEffect(() => {
    if (!file && tab === null) return setState({ kind: 'none' });
    const controller = new AbortController();
    const { signal } = controller;
    let opened: OpenPdf | undefined;
    const show = (next: PdfState): void => {
      if (!signal.aborted) setState(next);
    };
    show({ kind: 'reading', done: 0, all: 0 });
    const onPage = (done: number, all: number): void => show({ kind: 'reading', done, all });
    const load = file ? loadFile : loadTab;
    load({ tab: tab ?? -1, file: file!, options: { draws: true, onPage, signal } }).then(
      (found) => {
        opened = found.pdf;
        if (signal.aborted) opened.close();
        else show({ kind: 'open', ...found });
      },
      (error: unknown) => {
        if (!(error instanceof FileFault)) console.error(error);
        show({ kind: 'failed', why: error instanceof FileFault ? error.message : say('files.damagedPdf') });
      },
    );
    return () => {
      controller.abort();
      opened?.close();
    };
  }, [tab, file]);
  return { state, openFile: setFile };
}

function readTabOf([kind, id = '']: readonly string[]): number | null {
  return kind === 'tab' && /^\d+$/.test(id) ? Number(id) : null;
}

interface Wanted {
  readonly tab: number;
  readonly file: File;
  readonly options: {
    readonly draws: true;
    readonly onPage: (done: number, all: number) => void;
    readonly signal: AbortSignal;
  };
}

async function loadTab({ tab, options }: Wanted): Promise<ShownPdf> {
  const { openPdfTab } = await import('../../passage/files/open-pdf-tab.ts');
  const pdf = await openPdfTab(tab, options);
  if (!pdf) throw new FileFault(say('pdf.tabGone'));
  return { pdf, url: pdf.url, name: pdf.url };
}

async function loadFile({ file, options }: Wanted): Promise<ShownPdf> {
  if (file.size > LARGEST_FILE) throw new FileFault(say('files.tooLargePdf'));
  const bytes = new Uint8Array(
    await file.arrayBuffer().catch(() => {
      throw new FileFault(say('files.unreadable'));
    }),
  );
  const { openPdf } = await import('../../passage/files/open-pdf.ts');
  return { pdf: await openPdf(bytes, options), url: null, name: file.name };
}
