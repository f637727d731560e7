import { say } from '../../wording/say.ts';

/** Leads to the page that shows a PDF: the one of a tab, or one that is chosen there. */
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
