import type { OpenPdf } from './open-pdf.ts';

/** The name of a PDF: its first heading, else its own title, else the name of its file. */
export function nameOfPdf({ paragraphs, title }: OpenPdf, address: string): string {
  const heading = paragraphs.find(({ kind }) => kind === 'heading')?.text;
  return heading ?? (title || nameOfFile(address));
}

function nameOfFile(address: string): string {
  const last =
    address
      .replace(/[?#].*$/, '')
      .split('/')
      .at(-1) ?? '';
  try {
    return decodeURIComponent(last).replace(/\.pdf$/i, '');
  } catch {
    return last.replace(/\.pdf$/i, '');
  }
}
