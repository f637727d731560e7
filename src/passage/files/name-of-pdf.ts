import type { OpenPdf } from './open-pdf.ts';

/** What a PDF is called: its first heading, else as it calls itself, else as its file. */
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
