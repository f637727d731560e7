import type { StoryWord } from '../kept/passage.ts';
import type { Sheet, SheetLine, SheetRun } from './make-sheet.ts';

/** One part of a sheet, in the order of its text. */
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
  /** The lines on this page; null while the browser breaks them itself, and for a part that is never broken. */
  readonly lines: readonly SetLine[] | null;
  /** Whether the part began on the page before. */
  readonly goesOn: boolean;
}

/** All parts of a sheet but its source, which is on each page. */
export function listParts({ title, nameLine, storyWords, lines }: Sheet): SheetPart[] {
  return [
    ...(title ? [{ kind: 'title', text: title } as const] : []),
    ...(nameLine ? [{ kind: 'name' } as const] : []),
    ...storyWords.map((word) => ({ kind: 'story-word', word }) as const),
    ...lines.map((line) => ({ kind: 'text', line }) as const),
  ];
}
