import { expectShallow } from './expect-shallow.ts';
import type { Chapter, FoundLine } from './opened-file.ts';
import { countPictures, readHtmlLines } from './read-html-lines.ts';

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
export function findChapters(documents: readonly BookDocument[]): Chapter[] {
  const chapters: Chapter[] = [];
  documents.forEach(({ html, labels }, n) => {
    expectShallow(html);
    const { body } = new DOMParser().parseFromString(html, 'text/html');
    const notes = body.querySelectorAll(NOTES);
    for (const note of [...notes, ...body.querySelectorAll('a[epub\\:type~="noteref"]')]) note.remove();
    const leftOut = { pictures: countPictures(body), footnotes: notes.length };
    const lines = readHtmlLines(body);
    const heading = lines.slice(0, 3).find(({ kind }) => kind === 'heading')?.text;
    const before = chapters.at(-1);
    if (before && labels.length === 0 && heading === undefined) {
      chapters.pop();
      chapters.push(makeChapter(before.title, [...before.lines, ...lines], add(before.leftOut, leftOut)));
      return;
    }
    cutAtLabels(lines, labels).forEach((own, part) => {
      const title = (part === 0 ? (labels[0] ?? heading) : own[0]?.text) ?? `Part ${n + 1}`;
      chapters.push(makeChapter(title, own, part === 0 ? leftOut : { pictures: 0, footnotes: 0 }));
    });
  });
  return chapters.filter(({ words }) => words > 0);
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

function makeChapter(title: string, lines: readonly FoundLine[], leftOut: Chapter['leftOut']): Chapter {
  const words = lines.reduce((sum, { text }) => sum + (text.match(/\p{L}+/gu)?.length ?? 0), 0);
  return { title, lines, words, leftOut };
}

function add(one: Chapter['leftOut'], other: Chapter['leftOut']): Chapter['leftOut'] {
  return { pictures: one.pictures + other.pictures, footnotes: one.footnotes + other.footnotes };
}

function plain(text: string): string {
  return text.toLowerCase().replace(/\s+/g, ' ').trim();
}
