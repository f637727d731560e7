import { lookForDepth } from './expect-shallow.ts';
import type { FileTime } from './file-time.ts';
import type { Chapter, FoundLine } from './opened-file.ts';
import { parseHtml } from './parse-html.ts';
import { countPictures, findHtmlLines } from './read-html-lines.ts';

/** A document of a book, and what the table of contents calls it. */
export interface BookDocument {
  readonly html: string;
  readonly labels: readonly string[];
}

/** Shorter ones are title pages and the like, in words. */
const ENOUGH = 100;

const AROUND =
  /^(cover|title( page)?|half[- ]?title|copyright.*|imprint|(table of )?contents|dedication|epigraph|foreword|preface|acknowledge?ments?|about the .*|also by .*|index|notes|glossary|colophon|transcriber.*|list of .*|the full .*licen[cs]e.*)$/i;

/**
 * The chapters of a book with words. A document the table of contents does not name and that has no heading goes on with the chapter
 * before it; one that it names more than once is cut at those headings.
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

/** A chapter that lines are still added to. It has fields that change, since a book may have thousands of documents. */
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

/** The first chapter that is the book's own text; the longest where none is surely. */
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
