import { readFileSync } from 'node:fs';

/** Matches one word in lower case. */
const WORD = /^[a-z]+(?:'[a-z]+)?$/;
const PHRASE = /^[a-z]+(?: [a-z]+)+$/;

/**
 * Returns the words of a list in src/data/source, such as `more-lesson-words.txt`. Words are separated by spaces, and
 * lines with `#` are comments. Words are in alphabetical order, which starts again after a comment. Throws an error
 * with the line if an entry is not a word, occurs twice or is out of order.
 */
export function readWordList(file: string): Set<string> {
  return checkList(file, readList(file), WORD, (line) => line.split(/\s+/));
}

/**
 * Returns the phrases of a list in src/data/source, such as `phrases.txt`. The format is that of `readWordList`, but
 * with one phrase on each line.
 */
export function readPhrases(file: string): Set<string> {
  return checkList(file, readList(file), PHRASE, (line) => [line]);
}

function readList(file: string): string {
  return readFileSync(new URL(`source/${file}`, import.meta.url), 'utf8');
}

/** Returns the entries of a list given as text. See `readWordList`. */
export function checkList(
  file: string,
  content: string,
  form: RegExp,
  cut: (line: string) => readonly string[],
): Set<string> {
  const found = new Set<string>();
  let before = '';
  for (const [i, line] of content.trimEnd().split('\n').entries()) {
    if (line.startsWith('#')) before = '';
    else
      for (const entry of cut(line)) {
        const wrong = faultOf(entry, before, form, found);
        if (wrong) throw new Error(`src/data/source/${file}, line ${i + 1}: ${wrong}`);
        found.add(entry);
        before = entry;
      }
  }
  return found;
}

function faultOf(entry: string, before: string, form: RegExp, found: ReadonlySet<string>): string | null {
  if (!form.test(entry)) return `"${entry}" is not in small letters with single spaces`;
  if (found.has(entry)) return `${entry} is there twice`;
  return entry < before ? `${entry} comes before ${before} in the alphabet` : null;
}
