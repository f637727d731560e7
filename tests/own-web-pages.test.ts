import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

// The pages, their index and their expected texts are described in tests/pages/web/README.md.
const FOLDER = new URL('pages/web/', import.meta.url);
const read = (path: string): string => readFileSync(new URL(path, FOLDER), 'utf8');
const namesIn = (folder: string, ending: string): string[] =>
  readdirSync(new URL(folder, FOLDER))
    .filter((file) => file.endsWith(ending))
    .map((file) => file.slice(0, -ending.length))
    .sort();

const [head, ...rows] = read('index.tsv')
  .trimEnd()
  .split('\n')
  .map((row) => row.split('\t'));
const index = rows.map((row) => Object.fromEntries(head!.map((column, at) => [column, row[at] ?? ''])));
const pages = namesIn('.', '.html');
const expectedLines = (name: string): string[] => read(`expected/${name}.txt`).trimEnd().split('\n');

test('each page has an expected text and a row in the index, and every text and row has a page', () => {
  expect(pages.length).toBeGreaterThanOrEqual(40);
  expect(namesIn('expected', '.txt')).toEqual(pages);
  expect(index.map(({ name }) => name)).toEqual(pages);
});

test('no two expected texts share a sentence of four words or more', () => {
  const homes = new Map<string, Set<string>>();
  for (const name of pages)
    for (const sentence of expectedLines(name).flatMap((line) => line.split(/(?<=[.!?][”’]?)\s+/))) {
      const key = wordsOf(sentence).join(' ');
      if (key.split(' ').length >= 4) homes.set(key, (homes.get(key) ?? new Set()).add(name));
    }
  expect([...homes].filter(([, names]) => names.size > 1).map(([key]) => key)).toEqual([]);
});

describe('a page in the style of the web matches its row in the index', () => {
  test.each(index)('$name', (row) => {
    const lines = expectedLines(row.name!);
    const running = lines.flatMap(wordsOf);
    expect(running.length).toBeGreaterThanOrEqual(60);
    expect(running.length).toBeLessThanOrEqual(500);
    for (const line of lines) expect(line).toBe(line.normalize('NFKC').replace(/\s+/g, ' ').trim());

    const html = read(`${row.name}.html`);
    const accented = running.filter((word) => /[^a-z]/.test(word));
    expect(new Set(accented).size).toBe(Number(row.accented_words));
    expect(html.match(/<iframe\b/g)?.length ?? 0).toBe(Number(row.iframes));

    const exceptions = row.exceptions!.split(' ');
    const source = ` ${wordsOf(textOf(storySource(html, row.story_in!))).join(' ')} `;
    const isMissing = (line: string) => {
      const words = wordsOf(line);
      if (exceptions.includes(words[0]!)) words.shift();
      return !source.includes(` ${words.join(' ')} `);
    };
    expect(lines.filter(isMissing)).toEqual([]);
  });
});

/** Returns the source that holds the story: the page, a file beside the page, or the srcdoc of its frame. */
function storySource(html: string, storyIn: string): string {
  if (storyIn === '') return html;
  return storyIn === 'srcdoc' ? decoded(/ srcdoc="([^"]*)"/.exec(html)![1]!) : read(storyIn);
}

/**
 * Returns the text of a source without using a browser. Inline elements join the letters around them, and all other
 * elements separate these letters.
 */
function textOf(html: string): string {
  const inline = /<\/?(?:a|b|em|font|i|mark|small|span|strong|sub|sup|wbr)\b[^>]*>/gi;
  return decoded(
    html
      .replace(/<!--.*?-->|<(script|style)\b.*?<\/\1>/gis, ' ')
      .replace(inline, '')
      .replace(/<[^>]*>/g, ' '),
  ).replace(/[\u00ad\u200b]/g, '');
}

function decoded(text: string): string {
  const named: Record<string, string> = { quot: '"', lt: '<', gt: '>', amp: '&', shy: '\u00ad' };
  return text.replace(/&(?:#x([\da-f]+)|#(\d+)|(\w+));/gi, (all, hex, decimal, name) => {
    if (name) return named[name] ?? (name === 'nbsp' ? ' ' : all);
    return String.fromCodePoint(hex ? Number.parseInt(hex, 16) : Number(decimal));
  });
}

/** Returns the runs of letters in a text, in lower case, with ligature characters as plain letters. */
function wordsOf(text: string): string[] {
  return (
    text
      .normalize('NFKC')
      .toLowerCase()
      .match(/\p{L}+/gu) ?? []
  );
}
