import { findSentences } from '../analyze/index.ts';
import type { LessonText } from './lesson-input.ts';

const MOST_IN_GREETING = 3;

/**
 * Returns the sentences of a passage in order, each once. Speech stays with its speaker: `“Row!” said Mr. Falk.` is one
 * sentence. A sentence cut from a longer speech has no unpaired quotation mark. Headings, entries of lists and text
 * without a word are no sentences.
 */
export function passageSentences(passage: LessonText | null): string[] {
  const sentences: string[] = [];
  for (const line of (passage?.text ?? '').split('\n')) {
    if (/^(?:#{1,3}|[-•*]) /.test(line)) continue;
    const ofLine: string[] = [];
    for (const { start, end } of findSentences(line)) {
      const text = line.slice(start, end).trim();
      if (isSaidBy(text, ofLine.at(-1))) ofLine.push(`${ofLine.pop()} ${text}`);
      else if (/\p{L}/u.test(text) && !isGreeting(text)) ofLine.push(text);
    }
    sentences.push(...ofLine.map(withWholeQuotes));
  }
  return [...new Set(sentences)];
}

/** Whether a text is the first or last line of a letter: To Gran, or From Otto. */
function isGreeting(text: string): boolean {
  return !/[.!?…:;"”’]$/.test(text) && text.split(' ').length <= MOST_IN_GREETING;
}

/** Whether a sentence tells who said the sentence before: I said to a seal. */
function isSaidBy(text: string, before: string | undefined): boolean {
  return (
    /^["“][^"“]*["”]$/.test(before ?? '') &&
    /^(?:I|\p{Lu}[\p{L}.]*(?: \p{Lu}\p{L}*)?) (?:said|asked|cried|called|shouted|yelled|answered|told|whispered|thought)\b/u.test(
      text,
    )
  );
}

/**
 * Returns a text in which every quotation mark has its partner. A single mark of a whole sentence is removed. A mark
 * inside the sentence gets its partner back.
 */
function withWholeQuotes(text: string): string {
  const marks = text.match(/["“”]/g) ?? [];
  const opens = marks.filter((mark, i) => mark === '“' || (mark === '"' && i % 2 === 0)).length;
  if (marks.length === 2 * opens) return text;
  const [first, last] = [/^["“]/.test(text), /["”]$/.test(text)];
  if (marks.length === 1 && (first || last)) return text.replace(/["“”]/, '');
  if (last) return text.slice(0, -1);
  const closes = marks.length - opens;
  if (closes > opens || (marks[0] === '"' && !first && marks.length === 1 && /^[^"]*[,.!?]"/.test(text)))
    return `${marks[0] === '"' ? '"' : '“'}${text}`;
  return `${text}${marks[0] === '"' ? '"' : '”'}`;
}
