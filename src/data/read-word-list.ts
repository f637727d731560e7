import { readFileSync } from 'node:fs';

/** One word in small letters. */
const WORD = /^[a-z]+(?:'[a-z]+)?$/;
const PHRASE = /^[a-z]+(?: [a-z]+)+$/;

/**
 * The words of a list in src/data/source, such as `more-lesson-words.txt`: parted by spaces, lines with `#` are remarks. Throws an error
 * that names the line of an entry that is no word, is there twice or is out of the order of the alphabet, which begins anew after a remark.
 */
export function readWordList(file: string): Set<string> {
  return checkList(file, readList(file), WORD, (line) => line.split(/\s+/));
}

/** The phrases of a list in src/data/source, such as `phrases.txt`: the same, but one a line. */
export function readPhrases(file: string): Set<string> {
  return checkList(file, readList(file), PHRASE, (line) => [line]);
}

function readList(file: string): string {
  return readFileSync(new URL(`source/${file}`, import.meta.url), 'utf8');
}

/** The entries of a list given as text; see `readWordList`. */
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
