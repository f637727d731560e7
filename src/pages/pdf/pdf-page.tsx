import { useEffect } from 'preact/hooks';
import { nameOfPdf } from '../../passage/files/name-of-pdf.ts';
import { FileDrop } from '../../ui/file-drop.tsx';
import { Masthead } from '../../ui/masthead.tsx';
import { LoadFault, useLoaded } from '../../ui/use-loaded.ts';
import { say } from '../../wording/say.ts';
import '../../ui/page.css';
import '../../ui/wide-page.css';
import './pdf.css';
import { type PdfState, usePdf } from './use-pdf.ts';

/** Loaded on demand, because the shading of pages and its libraries are needed only when there is a PDF. */
const loadPages = () => import('./pdf-pages.tsx').then(({ PdfPages }) => PdfPages);

/** Shows a PDF from a tab or a file, with its words shaded as on a web page. */
export function PdfPage() {
  const { state, openFile } = usePdf();
  const PdfPages = useLoaded(loadPages);
  const title = state.kind === 'open' ? nameOfPdf(state.pdf, state.name) : say('pdf.title');
  useEffect(() => {
    document.title = state.kind === 'open' ? title : `${title} · Wordreach`;
  }, [title, state.kind]);
  // One page shades one PDF, so a new address reloads the page.
  useEffect(() => {
    const begin = (): void => location.reload();
    addEventListener('hashchange', begin);
    return () => removeEventListener('hashchange', begin);
  }, []);
  return (
    <div class="page pdf-page">
      <Masthead title={title} />
      <main tabIndex={-1}>
        {state.kind === 'open' && PdfPages && !(PdfPages instanceof LoadFault) ? (
          <PdfPages shown={state} />
        ) : (
          <div class="pdf-choice" aria-live="polite">
            <Reading state={state} />
            {(state.kind === 'none' || state.kind === 'failed') && <Choice onFile={openFile} />}
          </div>
        )}
      </main>
    </div>
  );
}

function Reading({ state }: { state: PdfState }) {
  if (state.kind === 'failed') return <p class="note note-wrong">{state.why}</p>;
  if (state.kind === 'none') return null;
  const [done, all] = state.kind === 'reading' ? [state.done, state.all] : [0, 0];
  return (
    <div class="note">
      <p>{all > 0 ? say('pdf.readingPages', { done, all }) : say('pdf.reading')}</p>
      {all > 0 && <progress value={done} max={all} aria-label={say('pdf.reading')} />}
    </div>
  );
}

function Choice({ onFile }: { onFile: (file: File) => void }) {
  return (
    <section class="part" aria-labelledby="pdf-file">
      <h2 id="pdf-file">{say('pdf.openFile')}</h2>
      <p class="quiet">{say('pdf.openFileHint')}</p>
      <FileDrop
        label={say('pdf.chooseFile')}
        labelledBy="pdf-file"
        accept=".pdf,application/pdf"
        onFile={onFile}
      />
    </section>
  );
}
