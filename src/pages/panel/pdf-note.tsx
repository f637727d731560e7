import type { PdfFacts } from '../../contract/page-contract.ts';
import { say } from '../../wording/say.ts';
import { PdfLink } from './pdf-link.tsx';

/** Shows the facts about the PDF in front, with a link to its shaded pages. */
export function PdfNote({ tab, pdf }: { tab: number; pdf: PdfFacts }) {
  const { pages, pictures, isForm, isOpen } = pdf;
  return (
    <div class="note" role="status">
      <p>{say('panel.pdf', { count: pages })}</p>
      {pictures > 0 && <p class="quiet">{sayPictures(pdf)}</p>}
      {isForm && <p class="quiet">{say('panel.pdfForm')}</p>}
      {!isOpen && <PdfLink tab={tab} />}
    </div>
  );
}

function sayPictures({ pages, pictures, isOpen }: PdfFacts): string {
  if (isOpen) return say('pdf.picturePages', { count: pictures });
  return pictures === pages ? say('panel.pdfOfPictures') : say('panel.pdfPictures', { count: pictures });
}
