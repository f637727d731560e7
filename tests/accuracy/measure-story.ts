import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium, type Page } from 'playwright-core';
import { build, type Rollup } from 'vite';
import { cutText, splitKey } from '../../src/analyze/index.ts';
import { findChromium } from '../../src/tools/find-browser.ts';
import type { ReadStory } from './read-story.ts';

/**
 * Measures how well the main story of a page is found: `npx tsx tests/accuracy/measure-story.ts [FOLDER] [--half 0|1]
 * [--large] [--only TEXT] [--list FOLDER]`.
 * - FOLDER contains NAME.html and expected/NAME.txt. The default is ../shared/pages.
 * - `--half`: every second page is one half, for choosing rules. The other pages show how much the rules are worth.
 * - `--large`: asks for the main element, as on pages too large for the library.
 * - `--list`: writes the text that was read of each page.
 */
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    half: { type: 'string' },
    only: { type: 'string', default: '' },
    list: { type: 'string' },
    large: { type: 'boolean', default: false },
  },
});
const folder = positionals[0] ?? fileURLToPath(new URL('../../../shared/pages/', import.meta.url));

interface Score {
  readonly name: string;
  readonly scope: string;
  readonly recall: number;
  readonly precision: number;
  readonly took: number;
}

const names = readdirSync(folder)
  .flatMap((file) => /^(.*)\.html$/.exec(file)?.[1] ?? [])
  .sort()
  .filter(
    (name, i) => (values.half === undefined || i % 2 === Number(values.half)) && name.includes(values.only),
  );
const args = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
const browser = await chromium.launch({ executablePath: findChromium(), args });
const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
await context.route('**/*', async (route) => {
  const name = /^http:\/\/saved\.example\/(.*)\.html$/.exec(route.request().url())?.[1];
  if (!names.includes(name ?? '') || !route.request().isNavigationRequest()) return route.abort();
  await route.fulfill({
    body: readFileSync(join(folder, `${name}.html`)),
    contentType: 'text/html; charset=utf-8',
  });
});
const code = await bundle();
const scores: Score[] = [];
for (const name of names) scores.push(await measure(await context.newPage(), name));
await browser.close();

for (const { name, scope, recall, precision, took } of scores)
  if (recall < 0.97 || precision < 0.95)
    console.log(
      name.padEnd(30),
      scope.padEnd(6),
      recall.toFixed(3),
      precision.toFixed(3),
      `${Math.round(took)} ms`,
    );
for (const [kind, half] of [
  ['all', null],
  ['half 0', 0],
  ['half 1', 1],
] as const) {
  const some = scores.filter((_, i) => half === null || i % 2 === half);
  if (half !== null && values.half !== undefined) continue;
  console.log(
    kind,
    some.length,
    'pages; recall',
    spread(some.map(({ recall }) => recall)),
    '; precision',
    spread(some.map(({ precision }) => precision)),
  );
}
console.log('longest', Math.round(Math.max(...scores.map(({ took }) => took))), 'ms');

async function measure(page: Page, name: string): Promise<Score> {
  await page.goto(`http://saved.example/${name}.html`, { waitUntil: 'domcontentloaded' });
  await page.evaluate(code);
  const story = await page.evaluate(
    (isLarge) =>
      (globalThis as unknown as { storyReader: typeof import('./read-story.ts') }).storyReader.readStory(
        isLarge,
      ),
    values.large,
  );
  await page.close();
  const expected = readFileSync(join(folder, 'expected', `${name}.txt`), 'utf8');
  const read = countWords(story.blocks.map((block) => block.read).join('\n'));
  const wanted = countWords(expected);
  const shared = sum([...wanted].map(([word, count]) => Math.min(count, read.get(word) ?? 0)));
  const score = {
    name,
    scope: story.scope,
    recall: shared / Math.max(sum(wanted.values()), 1),
    precision: shared / Math.max(sum(read.values()), 1),
    took: story.took,
  };
  if (values.list) list(values.list, score, story, expected);
  return score;
}

/**
 * Lists the text of a page by blocks. `+` marks text that is read and not expected. `-` marks text that is expected and
 * not read.
 */
function list(into: string, score: Score, { blocks }: ReadStory, expected: string): void {
  const plain = (text: string): string => ` ${wordsOf(text).join(' ')} `;
  const wanted = plain(expected);
  const lines = blocks
    .filter(({ whole }) => wordsOf(whole).length > 0)
    .flatMap(({ whole, read, place }) => {
      const says = read.trim() ? read : whole;
      const isWanted = wanted.includes(plain(whole));
      const sign = read.trim()
        ? isWanted || wanted.includes(plain(read))
          ? ' '
          : '+'
        : isWanted
          ? '-'
          : '·';
      return sign === '·'
        ? []
        : [
            `${sign} ${says.replace(/\s+/g, ' ').trim().slice(0, 160)}\n        ${sign === ' ' ? '' : place}`.trimEnd(),
          ];
    });
  mkdirSync(into, { recursive: true });
  writeFileSync(join(into, `${score.name}.txt`), `${JSON.stringify(score)}\n${lines.join('\n')}\n`);
}

function wordsOf(text: string): string[] {
  return text
    .split('\n')
    .flatMap((line) => cutText(line))
    .filter(({ kind }) => kind === 'word')
    .map(({ key }) => splitKey(key).word.toLowerCase());
}

function countWords(text: string): Map<string, number> {
  const counts = new Map<string, number>();
  for (const word of wordsOf(text)) counts.set(word, (counts.get(word) ?? 0) + 1);
  return counts;
}

function spread(shares: readonly number[]): string {
  const sorted = shares.toSorted((a, b) => a - b);
  const at = (part: number): string =>
    (sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))] ?? 0).toFixed(3);
  return `median ${at(0.5)}, mean ${(sum(sorted) / sorted.length).toFixed(3)}, 5th percentile ${at(0.05)}, least ${at(0)}`;
}

function sum(numbers: Iterable<number>): number {
  let total = 0;
  for (const number of numbers) total += number;
  return total;
}

async function bundle(): Promise<string> {
  const entry = fileURLToPath(new URL('read-story.ts', import.meta.url));
  const built = (await build({
    configFile: false,
    logLevel: 'silent',
    publicDir: false,
    build: { write: false, minify: false, lib: { entry, formats: ['iife'], name: 'storyReader' } },
  })) as Rollup.RollupOutput[];
  return built[0]!.output[0].code.replace('var storyReader', 'globalThis.storyReader');
}
