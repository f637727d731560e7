import { degrees, PDFDocument, StandardFonts } from 'pdf-lib';
import { storyParagraphs } from '../desk/pdf-layouts.ts';

/** A book of so many pages, each begun by a heading with its number: “Part seven”, and texts of the package. */
export async function makeBook(pages: number): Promise<Uint8Array> {
  const pdf = await PDFDocument.create();
  const font = await pdf.embedFont(StandardFonts.TimesRoman);
  pdf.setTitle('The Harbour Book');
  pdf.setAuthor('Wilma Falk');
  for (let n = 1; n <= pages; n++) {
    const page = pdf.addPage([420, 595]);
    page.drawText('The Harbour Book', { x: 160, y: 570, size: 9, font });
    page.drawText(`${n}`, { x: 205, y: 24, size: 9, font });
    page.drawText(`Part ${n}`, { x: 50, y: 530, size: 20, font });
    const words = storyParagraphs(n)
      .join(' ')
      .replace(/[^\x20-\x7e]/g, '')
      .split(/\s+/);
    let y = 500;
    let line = '';
    for (const word of words) {
      if (y < 60) break;
      const longer = line === '' ? word : `${line} ${word}`;
      if (font.widthOfTextAtSize(longer, 12) <= 320) line = longer;
      else {
        page.drawText(line, { x: 50, y, size: 12, font });
        y -= 16;
        line = word;
      }
    }
  }
  return pdf.save();
}

/** Two pages in which a lantern is divided at a line's end and at a page's end. */
export async function makeDivided(): Promise<Uint8Array> {
  const pdf = await PDFDocument.create();
  const font = await pdf.embedFont(StandardFonts.TimesRoman);
  const draw = (page: ReturnType<typeof pdf.addPage>, lines: readonly string[]): void =>
    lines.forEach((line, n) => {
      page.drawText(line, { x: 40, y: 150 - n * 20, size: 16, font });
    });
  draw(pdf.addPage([260, 200]), [
    'Bram sat on the wall with a lan-',
    'tern and a big net in his hand-',
    'bag and let the rain hit his um-',
  ]);
  const last = pdf.addPage([260, 200]);
  draw(last, ['brella until it was ten.']);
  last.drawText('Up the margin', { x: 20, y: 20, size: 9, font, rotate: degrees(90) });
  return pdf.save();
}

/** A form with one field to fill in. */
export async function makeForm(): Promise<Uint8Array> {
  const pdf = await PDFDocument.create();
  const page = pdf.addPage([420, 300]);
  page.drawText('Ask Mr. Falk to sign this for the ferry trip.', { x: 40, y: 250, size: 14 });
  const field = pdf.getForm().createTextField('name');
  field.setText('Wilma');
  field.addToPage(page, { x: 40, y: 200, width: 200, height: 24 });
  return pdf.save();
}
