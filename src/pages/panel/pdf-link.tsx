import { say } from '../../wording/say.ts';

/** Links to the page that shows a PDF: either the PDF of a tab, or a PDF that is chosen there. */
export function PdfLink({ tab }: { tab?: number }) {
  return (
    <a
      class={tab === undefined ? 'tool' : 'action'}
      href={tab === undefined ? '/pdf.html' : `/pdf.html#tab/${tab}`}
      target="_blank"
      rel="noopener"
    >
      {say(tab === undefined ? 'panel.openPdfFile' : 'panel.openPdfHere')}
    </a>
  );
}
