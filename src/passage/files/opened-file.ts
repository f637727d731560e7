import { say } from '../../wording/say.ts';
import type { FoundText } from '../found-text.ts';
import type { PassageLine } from '../passage-lines.ts';

/** A line as it comes out of a file. */
export type FoundLine = Pick<PassageLine, 'kind' | 'level' | 'text'>;

/** The things in a file that a passage cannot hold. */
export interface LeftOut {
  readonly pictures: number;
  readonly footnotes: number;
}

/** The text of a file, ready for the desk. */
export interface OpenedText extends FoundText {
  readonly leftOut: LeftOut;
}

/** One chapter of a book. */
export interface Chapter {
  readonly title: string;
  readonly lines: readonly FoundLine[];
  readonly words: number;
  readonly leftOut: LeftOut;
}

/** A book from which the teacher takes some chapters. */
export interface OpenedBook {
  readonly title: string;
  readonly byline: string | null;
  readonly chapters: readonly Chapter[];
  /** The index in `chapters` of the first chapter of the story itself. */
  readonly first: number;
}

/**
 * Returns a note for the teacher after opening, such as “3 pictures were left out.” Returns null when nothing was left
 * out.
 */
export function sayLeftOut({ pictures, footnotes }: LeftOut): string | null {
  if (pictures > 0 && footnotes > 0)
    return say('files.bothLeftOut', {
      pictures: say('files.picturesOfBoth', { count: pictures }),
      footnotes: say('files.footnotesOfBoth', { count: footnotes }),
    });
  if (pictures > 0) return say('files.picturesLeftOut', { count: pictures });
  return footnotes > 0 ? say('files.footnotesLeftOut', { count: footnotes }) : null;
}
