// @vitest-environment happy-dom
import { describe, expect, test } from 'vitest';
import { computeStyles } from '../../tests/fakes/computed-style.ts';
import { createInkFinder } from './find-ink.ts';
import { findTextBlocks } from './text-blocks.ts';

/** The test tests/e2e/legible.spec.ts checks how letters look in a browser. */

computeStyles();

function read(html: string): Text {
  document.body.innerHTML = html;
  const [block] = findTextBlocks(document.body, () => undefined);
  return block!.nodes[0]!;
}

/** A dark background. Black letters on it are already hard to read. */
const DARK = 'background-color: rgb(100, 100, 100)';
const FAINT = { color: 'currentColor', isFaint: true };

describe('the ink of a text', () => {
  test('is none where the letters are black on white', () => {
    expect(createInkFinder()(read('<p>The fog is in.'))).toBe(null);
  });

  test('is faint where a wash would take too much contrast from the letters', () => {
    expect(createInkFinder()(read(`<p style="${DARK}">The fog is in.`))).toEqual(FAINT);
  });

  test('is found again once the page’s scripts may have run', async () => {
    const findInk = createInkFinder();
    const text = read('<p>The fog is in.');
    expect(findInk(text)).toBe(null);
    text.parentElement!.setAttribute('style', DARK);
    expect(findInk(text)).toBe(null);
    await Promise.resolve();
    expect(findInk(text)).toEqual(FAINT);
  });
});
