import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { TRIM_RULES } from '../../src/overlay/trim-story.ts';
import { startPlainBrowser } from './browser.ts';
import { type OverlayPage, openOverlayPage } from './overlay-page.ts';

/** One tab shows all stories one after another, since a new tab takes a second. */
let tab: Page;
beforeAll(async () => {
  const browser = await startPlainBrowser();
  tab = await browser.newPage();
});
afterAll(() => tab?.context().browser()?.close());

/** Opens a page as the extension does when no part of the page has been chosen. */
async function open(html: string): Promise<OverlayPage> {
  await tab.goto('about:blank');
  return openOverlayPage(tab, html, undefined, null);
}

/** Parts added to the story: above its headline, under its headline, between two paragraphs, and at its end. */
interface Parts {
  readonly above?: string;
  readonly under?: string;
  readonly within?: string;
  readonly below?: string;
}

const news = ({ above = '', under = '', within = '', below = '' }: Parts): string => `<!doctype html>
  <title>The Marigold is back - The Quay Post</title><meta name="author" content="Wilma Falk">
  <header><a href="/">The Quay Post</a></header><main><article>${above}<h1>The Marigold is back</h1>${under}
  <p class="text">The ferry came in late that night, and the crew had to tie her up in the dark by the lighthouse.</p>
  <p class="text">Her engine had been in bits on the floor of the old boat shed for nine days, and Otto had oil up to his ears.</p>
  ${within}<p class="text">In the morning forty pupils of the school stood on the quay and sang for her, loudly and not quite together.</p>
  <p class="text">Ines waved her scarf until the boat was as small as a cork, and then she ran home with the news for her gran.</p>
  ${below}</article></main><footer><p>Printed on the quay.</p></footer>`;

/** Returns all words of the story, and checks that a story was found. */
async function read(parts: Parts): Promise<string[]> {
  const at = await open(news(parts));
  expect(await at.page.evaluate(async () => (await wordreachTest.overlay.words()).scope)).toBe('story');
  const words = (await at.keys())
    .toLowerCase()
    .replace(/[×^#][^ ]*/g, '')
    .split(' ');
  // Whatever parts are added, the story’s own paragraphs are read.
  expect(words).toEqual(expect.arrayContaining(['marigold', 'lighthouse', 'ears', 'loudly', 'gran']));
  return words;
}

/**
 * Each rule with a part that the rule leaves out and a part that it must keep. A word in capitals tells whether a part
 * was read.
 */
const cases: readonly [rule: string, out: Parts, kept: Parts][] = [
  [
    'over the headline',
    { above: '<p>Harbour GOSSIP</p>' },
    { above: `<p>It was a PELICAN ${'of the old kind that nobody here had seen before '.repeat(4)}.</p>` },
  ],
  [
    'part for finding the way',
    { below: '<footer><p>More about GOSSIP in the town, and the rest of it.</p></footer>' },
    {
      within:
        '<ul class="text"><li>a PELICAN, which nobody had asked for</li><li>a rope and a lamp</li></ul>',
    },
  ],
  ['label', { within: '<p>Image 1 of 4</p><p>Advertisement</p>' }, { within: '<h2>PELICAN and ropes</h2>' }],
  [
    'line of links',
    { within: '<p><a href="/nets">Nets full of GOSSIP, harbour master says</a></p>' },
    {
      within:
        '<p class="text">The log of <a href="/pelican">the PELICAN that went up the coast</a> says so.</p>',
    },
  ],
  [
    'lead elsewhere',
    { within: '<p>Related: GOSSIP on the <a href="/x">quay</a></p>' },
    { within: '<p class="text">Related to the gull, the PELICAN fishes too.</p>' },
  ],
  [
    'time of the story',
    { under: '<p>Updated Friday, 20 NOVEMBER 2026, 1:35 p.m.</p>' },
    { within: '<p class="text">On 20 November 2026 the PELICAN sailed.</p>' },
  ],
  [
    'byline',
    { within: '<p>By Dana REYES and Bram Falk</p>' },
    { within: '<p class="text">By noon the PELICAN had gone.</p>' },
  ],
  [
    'writer or time under the headline',
    { under: '<div>Dana REYES</div>' },
    { under: '<p class="text">A PELICAN came with her.</p>' },
  ],
  [
    'credit',
    { within: '<figure><img alt=""><figcaption>Photo: Dana REYES</figcaption></figure>' },
    { within: '<p class="text">The picture of the PELICAN hangs at the school.</p>' },
  ],
  [
    'part named as no story',
    {
      within:
        '<div class="quay-newsletterSignup"><p>One letter a week, full of GOSSIP from the harbour.</p></div>',
    },
    {
      within:
        '<div class="promontory"><p class="text">On the rock there sat a PELICAN, as still as a post.</p></div>',
    },
  ],
  [
    'part named after the writer',
    { below: '<div class="author-bio"><p>Dana REYES lives by the sea with two cats and a boat.</p></div>' },
    {
      within:
        '<p class="text by-author">A PELICAN sat on the mast of the ferry all that time and looked at them as if it had paid for the trip.</p>',
    },
  ],
  [
    'line named as a mark',
    { within: '<div class="kicker">Sea and GOSSIP</div>' },
    {
      within:
        '<p class="meta text">The PELICAN, which had sat there since noon, put its head under its wing and slept.</p>',
    },
  ],
  [
    'invitation',
    { below: '<p>Sign up for our newsletter and have all the GOSSIP each Friday.</p>' },
    { within: '<p class="text">“Follow us down to the quay, there is a PELICAN,” she said.</p>' },
  ],
  [
    'word about the text itself',
    { below: '<p>This story was first published in the GOSSIP of the harbour.</p>' },
    { within: '<p class="text">The story of the PELICAN was told on the quay for years.</p>' },
  ],
  [
    'biography',
    { below: '<p>Wilma Falk is a reporter who covers GOSSIP and the sea.</p>' },
    {
      below:
        '<p class="text">Bram is a writer now, and he covers the wall of his room with PELICAN feathers.</p>',
    },
  ],
];

describe('the rules for the main story', () => {
  test('all have a case in this file', () => {
    expect(cases.map(([rule]) => rule)).toEqual(TRIM_RULES.map(({ name }) => name));
  });

  test.each(cases)('leave out a line of the kind “%s”, and keep a similar line', async (_, out, kept) => {
    const without = await read(out);
    for (const sign of signsOf(out)) expect(without).not.toContain(sign);
    expect(await read(kept)).toContain('pelican');
  });
});

/** Returns the words in capitals, or all words of a part without such words, for example a label. */
function signsOf(parts: Parts): string[] {
  const said = Object.values(parts)
    .join(' ')
    .replace(/<[^>]*>/g, ' ');
  const signs = said.match(/\b\p{Lu}{4,}\b/gu) ?? said.match(/\p{L}{3,}/gu)!;
  return signs.map((sign) => sign.toLowerCase());
}

describe('a piece of a line', () => {
  test('that is an edit link or a picture credit is left out', async () => {
    const words = await read({
      within: `<h2>The shed<span> [<a href="/w">edit</a>]</span></h2>
        <figure><img alt=""><figcaption><span>Image</span> The Marigold at rest in the fog. <span>Credit</span> <span>Dana Reyes</span></figcaption></figure>
        <p class="text">“I will not edit my log,” said Otto, “for a photo of a pelican.”</p>`,
    });
    expect(words).toEqual(expect.arrayContaining(['shed', 'fog', 'edit', 'photo', 'pelican']));
    for (const other of ['image', 'credit', 'reyes']) expect(words).not.toContain(other);
  });
});

describe('a line of the story', () => {
  test('that is mostly a link is read between two other lines, and a teaser in the same place is left out', async () => {
    const words = await read({
      within: `<p class="text">It was all <a href="/log">in the log that Bram had kept for a dozen years and more</a>.</p>
        <div class="box"><a href="/x">All the gossip from the harbour in one place</a>.</div>`,
    });
    expect(words).toContain('dozen');
    expect(words).not.toContain('gossip');
  });

  test('is read on a page whose styles and scripts are longer than a book', async () => {
    const long = '.quay-part { color: teal } '.repeat(9000);
    expect(long.length).toBeGreaterThan(200_000);
    const words = await read({ within: `<style>${long}</style><script type="text/plain">${long}</script>` });
    expect(words).not.toContain('printed');
  });

  test('is read on a page with more elements than the library may look at', async () => {
    const menu = `<nav>${'<li><a href="/">Gossip</a></li>'.repeat(3500)}</nav>`;
    const words = await read({ below: menu });
    expect(words).not.toContain('gossip');
    expect(words).not.toContain('printed');
  });

  test('is read in a story of only sixty words', async () => {
    const page = `<!doctype html><title>A crab</title><nav><a href="/">Gossip</a></nav><article><h1>A crab</h1>
      <p>A crab ran over the wet sand and hid under a stone. Ines sat down by the stone and did not move.</p>
      <p>After a long time one claw came out, then the next. The crab looked up at her, and she looked at the crab.</p>
      <p>Then a wave came in, and when it had gone there was no crab and no claw at all.</p></article>
      <footer>Printed on the quay.</footer>`;
    const at = await open(page);
    expect(await at.page.evaluate(async () => (await wordreachTest.overlay.words()).scope)).toBe('story');
    expect(await at.keys()).not.toMatch(/gossip|printed/);
    expect(await at.keys()).toContain('claw');
  });
});
