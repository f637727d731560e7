import { describe, expect, test } from 'vitest';
import type { StoryBlock } from './story-blocks.ts';
import { TRIM_RULES } from './trim-story.ts';

/** Tests each rule at its limits. Tests with whole stories in a browser are in tests/e2e/story.spec.ts. */

const block = (says: string, given: Partial<StoryBlock> = {}): StoryBlock => ({
  texts: [],
  line: { tagName: 'P' } as Element,
  says,
  words: says.split(' ').length,
  linked: 0,
  isHeading: false,
  isHeadline: false,
  place: 'within',
  names: new Set(),
  marks: new Set(),
  tags: new Set(),
  ...given,
});

/** Returns a line that begins with `says` and has the given number of words. */
const long = (says: string, words: number): string =>
  [...says.split(' '), ...Array.from({ length: words }, () => 'fog')].slice(0, words).join(' ');

function applies(rule: string, one: StoryBlock, after: readonly StoryBlock[] = [], byline = null): boolean {
  const found = TRIM_RULES.find(({ name }) => name === rule)!;
  return found.applies(one, { blocks: [one, ...after], at: 0, byline });
}

const named = (...names: string[]) => ({ names: new Set(names) });
const tagged = (...tags: string[]) => ({ tags: new Set(tags) });
const signUp = 'Sign up for our newsletter';

describe.each<[rule: string, out: StoryBlock, stays: StoryBlock]>([
  [
    'over the headline',
    block(long('Harbour', 29), { place: 'above' }),
    block(long('Harbour', 30), { place: 'above' }),
  ],
  ['part for finding the way', block('Home', tagged('NAV')), block('Home', tagged('LI'))],
  [
    'part for finding the way',
    block('Home', tagged('BUTTON')),
    block('Home', { ...tagged('BUTTON'), isHeading: true }),
  ],
  ['label', block('12 shares'), block('12 boats')],
  ['line of links', block('Nets', { linked: 0.75 }), block('Nets', { linked: 0.74 })],
  ['line of links', block('Nets dry.', { linked: 0.9 }), block('Nets dry.', { linked: 0.89 })],
  [
    'line of links',
    block('Nets', { linked: 1, isHeading: true, place: 'below' }),
    block('Nets', { linked: 1, isHeading: true }),
  ],
  ['lead elsewhere', block(long('Related: Nets', 30)), block(long('Related: Nets', 31))],
  [
    'lead elsewhere',
    block('Related nets dry.', { linked: 0.4 }),
    block('Related nets dry.', { linked: 0.3 }),
  ],
  [
    'time of the story',
    block('Updated 20 November 2026'),
    block('Updated 20 November 2026', { isHeading: true }),
  ],
  ['byline', block('By Wilma Falk'), block('By noon the ferry had gone.')],
  ['byline', block('By Wilma Falk'), block('By Wilma Falk', { isHeading: true })],
  [
    'writer or time under the headline',
    block('The Quay Post, a paper', { place: 'under' }),
    block('The Quay Post, a paper'),
  ],
  [
    'writer or time under the headline',
    block(long('The Quay Post, 20 November 2026', 14), { place: 'under' }),
    block(long('The Quay Post, 20 November 2026', 15), { place: 'under' }),
  ],
  [
    'writer or time under the headline',
    block('Wilma Falk', { place: 'under' }),
    block('Wilma Falk', { place: 'under', ...tagged('FIGCAPTION') }),
  ],
  ['credit', block(long('Photo: Bram', 14)), block(long('Photo: Bram', 15))],
  ['part named as no story', block('Nets', named('promo')), block('Nets', named('story'))],
  ['part named as no story', block(long('Nets', 15), named('ads')), block(long('Nets', 16), named('ads'))],
  [
    'part named after the writer',
    block('Wilma', { ...named('author'), place: 'below' }),
    block('Wilma', { place: 'below' }),
  ],
  [
    'line named as a mark',
    block(long('Sea', 10), { marks: new Set(['kicker']) }),
    block(long('Sea', 11), { marks: new Set(['kicker']) }),
  ],
  ['invitation', block(long(signUp, 70)), block(long(signUp, 71))],
  ['invitation', block(long(signUp, 12), { isHeading: true }), block(long(signUp, 13), { isHeading: true })],
  ['invitation', block('Follow the ferry', { linked: 0.4 }), block('Follow the ferry', { linked: 0.3 })],
  [
    'word about the text itself',
    block(long('Originally published', 30)),
    block(long('Originally published', 31)),
  ],
  [
    'word about the text itself',
    block(long('Originally published', 70), { place: 'below' }),
    block(long('Originally published', 71), { place: 'below' }),
  ],
])('the rule “%s”', (rule, out, stays) => {
  test(`leaves out “${out.says.slice(0, 30)}” of ${out.words} words, but keeps a similar block beyond its limit`, () => {
    expect([applies(rule, out), applies(rule, stays)]).toEqual([true, false]);
  });
});

describe('a part named after the writer', () => {
  const author = named('author');
  const paragraph = block(long('The ferry', 15));

  test('stays if it is a long paragraph and the story goes on after it', () => {
    const rule = 'part named after the writer';
    expect(applies(rule, block(long('The ferry', 17), author), [paragraph])).toBe(false);
    expect(applies(rule, block(long('The ferry', 16), author), [paragraph])).toBe(true);
    expect(applies(rule, block(long('The ferry', 17), author))).toBe(true);
    expect(applies(rule, block(long('The ferry', 17), author), [block(long('The ferry', 14))])).toBe(true);
  });
});
