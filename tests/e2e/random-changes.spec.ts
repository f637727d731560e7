import fc from 'fast-check';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startPlainBrowser } from './browser.ts';
import { bundleReader } from './bundle-reader.ts';
import { openOverlayPage } from './overlay-page.ts';
import { randomTrees, type Tree, writeTree } from './random-tree.ts';

let page: Page;
beforeAll(async () => {
  const browser = await startPlainBrowser();
  page = await browser.newPage();
  await openOverlayPage(page, '<!doctype html><body><main></main>');
  await page.evaluate(await bundleReader());
});
afterAll(() => page?.context().browser()?.close());

const CHANGES = [
  'remove',
  'hide',
  'show',
  'write',
  'split',
  'add text',
  'add block',
  'move',
  'block',
  'line',
] as const;
/** A change and its node. The node is given as a position from 0 to 1 in the list of all nodes. */
interface Change {
  readonly what: (typeof CHANGES)[number];
  readonly where: number;
}
const change = fc.record({
  what: fc.constantFrom(...CHANGES),
  where: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
});

test('after any changes, the words are the same as if the page were read again', async () => {
  await fc.assert(
    fc.asyncProperty(
      randomTrees('any'),
      fc.array(fc.array(change, { minLength: 1, maxLength: 3 }), { minLength: 1, maxLength: 3 }),
      async (trees, turns) => {
        const { followed, anew } = await page.evaluate(changeInPage, { trees, turns });
        expect(followed, `${trees.map(writeTree).join('')} then ${JSON.stringify(turns)}`).toEqual(anew);
      },
    ),
    { seed: 20_261_125, numRuns: 300 },
  );
}, 120_000);

async function changeInPage({ trees, turns }: { trees: readonly Tree[]; turns: readonly Change[][] }) {
  const main = document.querySelector('main')!;
  const { overlay } = wordreachTest;
  /** Without this key press, the overlay might treat the page as restless. */
  const act = () => dispatchEvent(new Event('keydown'));
  const settled = async () => {
    await null; // the browser reports the change first
    await overlay.rejudge();
  };
  function nodesIn(root: Node): Node[] {
    return [...root.childNodes].flatMap((node) => {
      const shadow = (node as Partial<Element>).shadowRoot;
      return [node, ...(shadow ? nodesIn(shadow) : []), ...nodesIn(node)];
    });
  }
  function apply({ what, where }: Change): void {
    const nodes = nodesIn(main);
    const node = nodes[Math.floor(where * nodes.length)] as (ChildNode & Partial<HTMLElement>) | undefined;
    if (!node) return;
    const isElement = node instanceof HTMLElement;
    if (what === 'remove') node.remove();
    else if (what === 'hide' && isElement) node.hidden = true;
    else if (what === 'show' && isElement) node.style.cssText = '';
    else if (what === 'write' && node instanceof Text) node.data = 'new swell';
    else if (what === 'split' && node instanceof Text) node.splitText(Math.floor(node.length / 2));
    else if (what === 'add text') node.after('swell');
    else if (what === 'add block')
      node.after(Object.assign(document.createElement('p'), { textContent: 'swell' }));
    else if (what === 'move') main.append(node);
    else if (what === 'block' && isElement) node.style.display = 'block';
    else if (what === 'line' && isElement) node.style.display = 'inline';
  }
  act();
  main.replaceChildren();
  wordreachReader.growTrees(main, trees);
  await settled();
  for (const changes of turns) {
    act();
    changes.forEach(apply);
    await settled();
  }
  const anew = new Map<string, number>();
  for (const key of wordreachReader.readWords(document.body).keys) anew.set(key, (anew.get(key) ?? 0) + 1);
  const sorted = (words: Iterable<readonly [string, number]>) => [...words].map(String).sort();
  return { followed: sorted((await overlay.words()).words), anew: sorted(anew) };
}
