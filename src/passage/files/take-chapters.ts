import { writeLines } from '../passage-lines.ts';
import type { OpenedBook, OpenedText } from './opened-file.ts';

/**
 * Joins the chosen chapters of a book into one text, in the order of the book. If there are several chapters, each
 * begins with its title.
 */
export function takeChapters(
  { title, byline, chapters }: OpenedBook,
  chosen: ReadonlySet<number>,
): OpenedText {
  const taken = chapters.filter((_, n) => chosen.has(n));
  const lines = taken.flatMap((chapter) =>
    taken.length === 1 || chapter.lines.slice(0, 3).some(({ kind }) => kind === 'heading')
      ? chapter.lines
      : [{ kind: 'heading' as const, level: 1, text: chapter.title }, ...chapter.lines],
  );
  const sum = (what: 'pictures' | 'footnotes'): number =>
    taken.reduce((all, { leftOut }) => all + leftOut[what], 0);
  return {
    title: taken.length === 1 && chapters.length > 1 ? `${title}: ${taken[0]!.title}` : title,
    text: writeLines(lines),
    byline,
    leftOut: { pictures: sum('pictures'), footnotes: sum('footnotes') },
  };
}
