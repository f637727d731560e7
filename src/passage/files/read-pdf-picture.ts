import type { PictureReading } from '../../picture/picture-reading.ts';
import type { PdfLine, PdfPage } from './pdf-text.ts';

/**
 * Lines are set in the usual size if their letters differ from that size by less than this fraction. A picture does not
 * give sizes exactly to the point.
 */
const SAME_SIZE = 0.3;

/**
 * Returns a page with the lines that were read in its picture. The picture was drawn with `scale` pixels for each
 * point. `n` is the page number, from 0.
 */
export function readPdfPicture(
  { width, height }: PdfPage,
  n: number,
  reading: PictureReading,
  scale: number,
): PdfPage {
  const sizes = reading.lines.map(({ size }) => size / scale).sort((one, other) => one - other);
  const usual = sizes[Math.floor(sizes.length / 2)] ?? 1;
  const lines = reading.lines.flatMap(({ words, box, size }): PdfLine[] => {
    if (words.length === 0) return [];
    const own = size / scale;
    const spans = words.map(({ text, box, isSure }, at) => ({
      text: at < words.length - 1 ? `${text} ` : text,
      x: box.left / scale,
      width: (box.right - box.left) / scale,
      family: 'serif',
      isUnsure: !isSure,
    }));
    return [
      {
        text: words.map(({ text }) => text).join(' '),
        x: box.left / scale,
        right: box.right / scale,
        // The baseline of the letters is above the bottom of a p.
        y: height - (box.bottom - size * 0.2) / scale,
        size: Math.abs(own - usual) < usual * SAME_SIZE ? usual : own,
        page: n,
        spans,
      },
    ];
  });
  return { width, height, turn: 0, lines };
}
