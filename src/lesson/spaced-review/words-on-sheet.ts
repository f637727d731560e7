import type { LessonPart } from '../lesson-part.ts';

/** Returns the single words that pupils read or write on a sheet, except made-up words. */
export function wordsOnSheet(parts: readonly LessonPart[]): string[] {
  const cells = parts.flatMap(({ blocks }) =>
    blocks.flatMap(({ id, rows, columns }) =>
      id === 'nonsense' || id === 'made-up'
        ? []
        : rows.flatMap((row) =>
            row.filter((cell, i) => {
              const { shows, head } = (columns[i] ?? columns[0])!;
              const isMet = shows === 'both' || shows === 'blank';
              return isMet && head !== 'Letters' && /^\p{Ll}{2,}$/u.test(cell);
            }),
          ),
    ),
  );
  return [...new Set(cells)];
}
