import type { Box, PictureLine, PictureReading, PictureWord } from './picture-reading.ts';

/** A box as the OCR reader gives it. */
interface ReadBox {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** The reader's answer for a page: blocks of paragraphs of lines of words. */
export interface ReadBlock {
  readonly bbox: ReadBox;
  readonly paragraphs: readonly {
    readonly lines: readonly {
      readonly bbox: ReadBox;
      readonly rowAttributes?: { readonly rowHeight: number };
      readonly words: readonly {
        readonly text: string;
        readonly confidence: number;
        readonly bbox: ReadBox;
      }[];
    }[];
  }[];
}

/** The measures of a picture that was prepared for the reader. */
export interface Scaled {
  /** The width of the picture as it was given. */
  readonly width: number;
  readonly height: number;
  /** The factor by which the picture is scaled for the reader, and the margin around the scaled picture. */
  readonly scale: number;
  readonly margin: number;
}

/** The least confidence of a sure word. Measured on rendered pages (`tests/accuracy/measure-pictures.ts`). */
export const SURE = 0.6;

/** Returns the lines of a picture in reading order, with boxes in the coordinates of the original picture. */
export function findLines(blocks: readonly ReadBlock[], scaled: Scaled): PictureReading {
  const { width, height, scale, margin } = scaled;
  const within = (place: number, most: number): number =>
    Math.min(most, Math.max(0, Math.round((place - margin) / scale)));
  const place = ({ x0, y0, x1, y1 }: ReadBox): Box => ({
    left: within(x0, width),
    top: within(y0, height),
    right: within(x1, width),
    bottom: within(y1, height),
  });
  const lines = blocks.flatMap(({ paragraphs }) =>
    paragraphs.flatMap((paragraph) => {
      const found: PictureLine[] = [];
      for (const line of paragraph.lines) {
        const words = line.words
          .filter(({ text }) => text.trim() !== '')
          .map(({ text, confidence, bbox }): PictureWord => {
            const sureness = Math.min(1, Math.max(0, confidence / 100));
            return { text: mendBars(text), box: place(bbox), sureness, isSure: sureness >= SURE };
          });
        if (words.length === 0) continue;
        found.push({
          words,
          box: place(line.bbox),
          size: (line.rowAttributes?.rowHeight ?? line.bbox.y1 - line.bbox.y0) / scale,
          beginsParagraph: found.length === 0,
        });
      }
      return found;
    }),
  );
  return { width, height, lines };
}

/**
 * Replaces a vertical bar, and an l alone (“l am”, “l'll”), by an I. These characters look alike in many typefaces, and
 * running text never has a single bar or a single l.
 */
function mendBars(text: string): string {
  return text
    .replace(/(?<![|\p{N}])\|(?![|\p{N}])/gu, 'I')
    .replace(/(?<![\p{L}\p{N}’'])l(?![\p{L}\p{N}])/gu, 'I');
}
