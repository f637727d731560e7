import { readFileSync } from 'node:fs';

/** The words of a list in src/data/source, such as `more-lesson-words.txt`: parted by spaces, lines with `#` are remarks. */
export function readWordList(file: string): Set<string> {
  const text = readFileSync(new URL(`source/${file}`, import.meta.url), 'utf8');
  const lines = text.split('\n').filter((line) => !line.startsWith('#'));
  return new Set(lines.join(' ').split(/\s+/).filter(Boolean));
}

/** The phrases of a list in src/data/source, such as `phrases.txt`: one a line, lines with `#` are remarks. */
export function readPhrases(file: string): Set<string> {
  const text = readFileSync(new URL(`source/${file}`, import.meta.url), 'utf8');
  return new Set(text.split('\n').filter((line) => line !== '' && !line.startsWith('#')));
}
