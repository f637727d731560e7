import { lookForDepth } from './expect-shallow.ts';
import type { FileTime } from './file-time.ts';
import type { Chapter, FoundLine } from './opened-file.ts';
import { parseHtml } from './parse-html.ts';
import { countPictures, findHtmlLines } from './read-html-lines.ts';

/** A document of a book, with its names in the table of contents. */
export interface BookDocument {
  readonly html: string;
  readonly labels: readonly string[];
}

/** The fewest words of a chapter that counts as the book's own text. Shorter chapters are title pages and the like. */
const ENOUGH = 100;

const AROUND =
  /^(cover|title( page)?|half[- ]?title|copyright.*|imprint|(table of )?contents|dedication|epigraph|foreword|preface|acknowledge?ments?|about the .*|also by .*|index|notes|glossary|colophon|transcriber.*|list of .*|the full .*licen[cs]e.*)$/i;

/**
 * Returns the chapters of a book that have words. A document without a heading and without a name in the table of
 * contents continues the chapter before it. A document with several names in the table of contents is cut at those
 * headings.
 */
export async function findChapters(documents: readonly BookDocument[], time: FileTime): Promise<Chapter[]> {
  const chapters: ChapterInTheMaking[] = [];
  for (const [n, { html, labels }] of documents.entries()) {
    await time.run(lookForDepth(html));
    const { body } = await time.run(parseHtml(html));
    const notes = body.querySelectorAll(NOTES);
    for (const note of [...notes, ...body.querySelectorAll('a[epub\\:type~="noteref"]')]) note.remove();
    const leftOut = { pictures: countPictures(body), footnotes: notes.length };
    const lines = await time.run(findHtmlLines(body));
    const heading = lines.slice(0, 3).find(({ kind }) => kind === 'heading')?.text;
    const before = chapters.at(-1);
    if (before && labels.length === 0 && heading === undefined) {
      goOn(before, lines, leftOut);
      continue;
    }
    cutAtLabels(lines, labels).forEach((own, part) => {
      const title = (part === 0 ? (labels[0] ?? heading) : own[0]?.text) ?? `Part ${n + 1}`;
      const chapter = { title, lines: [], words: 0, leftOut: { pictures: 0, footnotes: 0 } };
      goOn(chapter, own, part === 0 ? leftOut : chapter.leftOut);
      chapters.push(chapter);
    });
  }
  return chapters.filter(({ words }) => words > 0);
}

/**
 * A chapter that lines are still added to. Its fields are changed in place, since a book may have thousands of
 * documents.
 */
interface ChapterInTheMaking extends Chapter {
  readonly lines: FoundLine[];
  words: number;
  leftOut: Chapter['leftOut'];
}

function goOn(chapter: ChapterInTheMaking, lines: readonly FoundLine[], leftOut: Chapter['leftOut']): void {
  for (const line of lines) {
    chapter.lines.push(line);
    chapter.words += line.text.match(/\p{L}+/gu)?.length ?? 0;
  }
  const { pictures, footnotes } = chapter.leftOut;
  chapter.leftOut = {
    pictures: pictures + leftOut.pictures,
    footnotes: footnotes + leftOut.footnotes,
  };
}

const NOTES = 'aside[epub\\:type~="footnote"], aside[epub\\:type~="endnote"], [role="doc-footnote"]';

/**
 * Returns the index of the first chapter that is the book's own text. If no chapter surely is, returns the index of the
 * longest.
 */
export function findFirstChapter(chapters: readonly Pick<Chapter, 'title' | 'words'>[]): number {
  const first = chapters.findIndex(({ title, words }) => words >= ENOUGH && !AROUND.test(title.trim()));
  if (first >= 0) return first;
  return chapters.reduce((best, { words }, n) => (words > chapters[best]!.words ? n : best), 0);
}

function cutAtLabels(lines: readonly FoundLine[], labels: readonly string[]): FoundLine[][] {
  const names = new Set(labels.slice(1).map(plain));
  const parts: FoundLine[][] = [[]];
  for (const line of lines) {
    if (line.kind === 'heading' && names.delete(plain(line.text)) && parts.at(-1)!.length > 0) parts.push([]);
    parts.at(-1)!.push(line);
  }
  return parts;
}

function plain(text: string): string {
  return text.toLowerCase().replace(/\s+/g, ' ').trim();
}
