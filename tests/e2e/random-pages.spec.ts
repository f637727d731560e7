import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { chromium, type Page } from 'playwright-core';
import { build, type Rollup } from 'vite';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { tokenize } from '../../src/analyze/index.ts';
import { findChromium } from '../../src/cli/find-chromium.ts';
import { randomTrees, type Tree, writeTree } from './random-tree.ts';

/**
 * Outside source: innerText (HTML Standard, 3.2.7), the browser's own account of what it draws. It knows nothing of
 * shadow roots, so there the same parts are drawn without; and text that is drawn but not read is left out for it.
 */
let page: Page;
beforeAll(async () => {
  const args = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const browser = await chromium.launch({ executablePath: findChromium(), args });
  page = await browser.newPage();
  await page.setContent('<!doctype html><body><main></main>');
  await page.evaluate(await bundleReader());
});
afterAll(() => page?.context().browser()?.close());

const seeded = {
  seed: 20_261_125,
  numRuns: 400,
  endOnFailure: false,
};
/** The browser takes a line break in the source away beside a <wbr>; the overlay reads it as the blank it is elsewhere. */
const BREAK_AT_WBR = /\n\s*(?:<[^>]*>)*<wbr>|<wbr>(?:<[^>]*>)*\s*\n/;
const written = (trees: readonly Tree[]) => trees.map(writeTree).join('');

test('on any page the letters read are those that are drawn, in their order', async () => {
  await fc.assert(
    fc.asyncProperty(randomTrees('any'), async (trees) => {
      const { letters, drawn } = await page.evaluate(readInPage, trees);
      expect(letters, written(trees)).toBe(lettersOf(drawn));
    }),
    seeded,
  );
}, 120_000);

test('where the browser parts words at the same edges, the words are those of the text it draws', async () => {
  let words = 0;
  await fc.assert(
    fc.asyncProperty(randomTrees('plain'), async (trees) => {
      fc.pre(!BREAK_AT_WBR.test(written(trees)));
      const { keys, drawn } = await page.evaluate(readInPage, trees);
      const expected = tokenize(drawn).flatMap(({ kind, key }) => (kind === 'word' ? [key] : []));
      expect(keys, written(trees)).toEqual(expected);
      words += keys.length;
    }),
    seeded,
  );
  expect(words).toBeGreaterThan(1000);
}, 120_000);

function lettersOf(text: string): string {
  return text.replace(/[^\p{L}]/gu, '').toLowerCase();
}

async function bundleReader(): Promise<string> {
  const entry = fileURLToPath(new URL('read-words.ts', import.meta.url));
  const built = (await build({
    configFile: false,
    logLevel: 'silent',
    publicDir: false,
    build: { write: false, minify: false, lib: { entry, formats: ['iife'], name: 'wordreachReader' } },
  })) as Rollup.RollupOutput[];
  return built[0]!.output[0].code.replace('var wordreachReader', 'globalThis.wordreachReader');
}

/** Reads the trees as the overlay does, then draws them anew for the browser to say what it shows. */
function readInPage(trees: readonly Tree[]): { letters: string; keys: string[]; drawn: string } {
  const { readWords } = (globalThis as unknown as { wordreachReader: typeof import('./read-words.ts') })
    .wordreachReader;
  const main = document.querySelector('main')!;

  function grow(into: Node, kids: readonly Tree[], forBrowser: boolean): void {
    for (const tree of kids) {
      if (typeof tree === 'string') into.appendChild(new Text(tree));
      else if (tree.tag === '#comment') into.appendChild(new Comment('words'));
      else if (!(forBrowser && tree.unread)) into.appendChild(make(tree, forBrowser));
    }
  }
  function make(tree: Exclude<Tree, string>, forBrowser: boolean): Element {
    const element = document.createElement(tree.tag);
    element.setAttribute('style', tree.style);
    if (tree.attribute) element.setAttribute(tree.attribute, '');
    if (!tree.shadow) {
      grow(element, tree.kids, forBrowser);
      return element;
    }
    const root = forBrowser ? element : element.attachShadow({ mode: 'open' });
    const bold = root.appendChild(document.createElement('b'));
    if (forBrowser) grow(bold, tree.kids, true);
    else {
      bold.append(document.createElement('slot'));
      grow(element, tree.kids, false);
    }
    grow(root, tree.shadow, forBrowser);
    return element;
  }

  main.replaceChildren();
  grow(main, trees, false);
  const blocks = readWords(main);
  main.replaceChildren();
  grow(main, trees, true);
  // biome-ignore lint/performance/useDomNodeTextContent: what is drawn is the question
  return { ...blocks, drawn: main.innerText };
}
