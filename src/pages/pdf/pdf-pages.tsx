import { useEffect, useRef, useState } from 'preact/hooks';
import { ownTab } from '../../host/page-talk/page-access.ts';
import { useLoaded } from '../../ui/use-loaded.ts';
import { say } from '../../wording/say.ts';
import { type DrawnPages, drawPages } from './draw-pages.ts';
import { layText } from './lay-text.ts';
import { parsePages } from './parse-pages.ts';
import { readPicturePages } from './read-picture-pages.ts';
import { listPicturePages, type ServedPdf, servePdf, takeFromPages } from './serve-pdf.ts';
import type { ShownPdf } from './use-pdf.ts';

/** The pages and text of a PDF as read so far, including picture pages that have been read. */
interface Read extends Pick<ShownPdf['pdf'], 'pages' | 'paragraphs'> {
  readonly shown: ReadonlySet<number>;
}

/** Shows the pages of a PDF, the choice of pages to check, and the actions on the pages. */
export function PdfPages({ shown: { pdf, url, name } }: { shown: ShownPdf }) {
  const holder = useRef<HTMLDivElement>(null);
  const read = useRef<Read>({ pages: pdf.pages, paragraphs: pdf.paragraphs, shown: allOf(pdf.pages.length) });
  const [drawn, setDrawn] = useState<DrawnPages | null>(null);
  const [served, setServed] = useState<ServedPdf | null>(null);
  const [unread, setUnread] = useState(() => listPicturePages(pdf.pages));
  useEffect(() => {
    const controller = new AbortController();
    setDrawn(drawPages(pdf, holder.current!, controller.signal));
    setServed(
      servePdf({
        pdf,
        url,
        name,
        holder: holder.current!,
        shown: () => takeFromPages(read.current.paragraphs, read.current.shown),
        unread: () => listPicturePages(read.current.pages).length,
      }),
    );
    return () => controller.abort();
  }, [pdf]);

  const show = (pages: ReadonlySet<number>): void => {
    read.current = { ...read.current, shown: pages };
    drawn?.show(pages);
    served?.lookAgain();
  };
  const takeRead = (page: number, of: ShownPdf['pdf']['pages'][number]): void => {
    const pages = read.current.pages.with(page - 1, of);
    const paragraphs = pdf.findParagraphs(pages);
    read.current = { ...read.current, pages, paragraphs };
    drawn?.layOver(page, layText(of, page - 1, paragraphs));
    setUnread(listPicturePages(pages));
    served?.lookAgain();
  };
  return (
    <>
      <div class="pdf-bar">
        <PagesField count={pdf.pages.length} onPages={show} />
        <PdfLinks />
      </div>
      {pdf.isForm && <p class="quiet">{say('panel.pdfForm')}</p>}
      <PicturePages pdf={pdf} unread={unread} onRead={takeRead} />
      <div ref={holder} class="pdf-sheets" />
    </>
  );
}

function allOf(count: number): ReadonlySet<number> {
  return new Set(Array.from({ length: count }, (_, n) => n + 1));
}

/** The field for the pages that are shown and checked. */
function PagesField({ count, onPages }: { count: number; onPages: (pages: ReadonlySet<number>) => void }) {
  const [isWrong, setWrong] = useState(false);
  const take = (written: string): void => {
    const pages = parsePages(written, count);
    setWrong(pages === null);
    if (pages) onPages(pages);
  };
  return (
    <div class="pdf-pages-field">
      <label for="pdf-pages">{say('pdf.pages')}</label>
      <input
        id="pdf-pages"
        class="field"
        type="text"
        inputMode="numeric"
        placeholder={`1-${count}`}
        aria-describedby="pdf-pages-hint"
        aria-invalid={isWrong}
        onChange={(event) => take(event.currentTarget.value)}
      />
      <span id="pdf-pages-hint" class="quiet" role="status">
        {isWrong ? say('pdf.pagesWrong', { count }) : say('pdf.pagesHint', { count })}
      </span>
    </div>
  );
}

/** Links that take the text of the shown pages to other parts of the extension. */
function PdfLinks() {
  const tab = useLoaded(ownTab);
  if (typeof tab !== 'number') return null;
  return (
    <p class="row">
      <a class="tool" href={`/desk.html#take/${tab}`} target="_blank" rel="noopener">
        {say('panel.takeToDesk')}
      </a>
      <a class="tool" href={`/report.html#tab/${tab}`} target="_blank" rel="noopener">
        {say('panel.climbAndReport')}
      </a>
    </p>
  );
}

interface PicturePagesProps extends Pick<ShownPdf, 'pdf'> {
  readonly unread: readonly number[];
  readonly onRead: (page: number, of: ShownPdf['pdf']['pages'][number]) => void;
}

/** Offers to read the pages that are pictures. They are read only when the teacher asks. */
function PicturePages({ pdf, unread, onRead }: PicturePagesProps) {
  const [reading, setReading] = useState<{ page: number; stop: () => void } | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  useEffect(() => reading?.stop, [pdf]);
  if (unread.length === 0) return null;
  const begin = async (): Promise<void> => {
    const controller = new AbortController();
    const stop = (): void => controller.abort();
    setFault(null);
    setReading({ page: unread[0]!, stop });
    try {
      for await (const { page, read } of readPicturePages(pdf, unread, controller.signal)) {
        if (read) onRead(page, read);
        else setReading({ page, stop });
      }
    } catch (error) {
      if (!controller.signal.aborted) {
        console.error(error);
        setFault(say('pdf.picturesFailed'));
      }
    } finally {
      setReading(null);
    }
  };
  return (
    <div class="note" aria-live="polite">
      <p>
        {reading
          ? say('pdf.readingPicture', { page: reading.page })
          : say('pdf.picturePages', { count: unread.length })}
      </p>
      {fault && <p>{fault}</p>}
      {reading ? (
        <button type="button" class="plain" onClick={reading.stop}>
          {say('pdf.stop')}
        </button>
      ) : (
        <button type="button" class="action" onClick={() => void begin()}>
          {say('pdf.readPictures', { count: unread.length })}
        </button>
      )}
    </div>
  );
}
