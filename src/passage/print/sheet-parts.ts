import type { StoryWord } from '../kept/passage.ts';
import type { Sheet, SheetLine, SheetRun } from './make-sheet.ts';

/** One part of a sheet. Parts have the same order as the sheet's text. */
export type SheetPart =
  | { readonly kind: 'title'; readonly text: string }
  | { readonly kind: 'name' }
  | { readonly kind: 'story-word'; readonly word: StoryWord }
  | { readonly kind: 'text'; readonly line: SheetLine };

/** A line as it is printed, with the number beside it. */
export interface SetLine {
  readonly runs: readonly SheetRun[];
  readonly number: number | null;
}

/** The rows of a part on one page. */
export interface SheetPiece {
  readonly part: SheetPart;
  /** The lines on this page. Null while the browser breaks the lines itself, and for a part that is never broken. */
  readonly lines: readonly SetLine[] | null;
  /** Whether the part began on the page before. */
  readonly goesOn: boolean;
}

/** Lists all parts of a sheet except the source, which is on each page. */
export function listParts({ title, nameLine, storyWords, lines }: Sheet): SheetPart[] {
  return [
    ...(title ? [{ kind: 'title', text: title } as const] : []),
    ...(nameLine ? [{ kind: 'name' } as const] : []),
    ...storyWords.map((word) => ({ kind: 'story-word', word }) as const),
    ...lines.map((line) => ({ kind: 'text', line }) as const),
  ];
}
