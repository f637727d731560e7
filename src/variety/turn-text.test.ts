import { expect, test } from 'vitest';
import { findForeign, inVariety, isForeign } from './turn-text.ts';
import { listSpellings, listWordPairs } from './variety-table.ts';

const turned = (text: string, accent: 'american' | 'british'): string =>
  findForeign(text, accent).reduceRight(
    (said, { start, end, to }) => said.slice(0, start) + to + said.slice(end),
    text,
  );

test.each([
  ['Mum’s grey jumper lay in the harbour.', 'Mom’s gray sweater lay in the harbor.'],
  ['COLOURFUL boats travelled past. Favourites!', 'COLORFUL boats traveled past. Favorites!'],
  ['He practised, organised and apologised.', 'He practiced, organized and apologized.'],
  ['She learnt to put the rubbish out.', 'She learned to put the trash out.'],
  ['Then Mum ran to the Harbour.', 'Then Mom ran to the Harbor.'],
])('%s is turned into American English', (text, american) => expect(turned(text, 'american')).toBe(american));

test.each([
  ['Mom’s gray socks lay by the theater.', 'Mum’s grey socks lay by the theatre.'],
  ['We realized that the trash was on the sidewalk.', 'We realised that the rubbish was on the pavement.'],
  ['She has gotten an airplane.', 'She has got an aeroplane.'],
])('%s is turned into British English', (text, british) => expect(turned(text, 'british')).toBe(british));

test.each([
  // Each of these words also has another sense in the given variety.
  ['I tire of the story. Check the meter and the practice.', 'british'],
  ['The mummy lay in a torch-lit tomb. A biscuit and a holiday.', 'american'],
  ['Surprise! Exercise is wise; advise, capsize, prize and otherwise.', 'british'],
  ['Surprise! Exercise is wise; advise, capsize, prize and otherwise.', 'american'],
  ['Glamour and dialogue.', 'american'],
  // Names.
  ['Sydney Harbour and the Theatre Royal', 'american'],
  ['the World Trade Center', 'british'],
  // Property names that every object inherits (constructor).
  ['constructor toString valueOf', 'british'],
] as const)('%s stays unchanged in %s', (text, accent) => expect(turned(text, accent)).toBe(text));

test('our own text gets the words of a variety: cross|mad becomes cross in British English', () => {
  expect(inVariety('hot and cross|mad. A torch, after tea|supper', 'american')).toBe(
    'hot and mad. A flashlight, after supper',
  );
  expect(inVariety('hot and cross|mad. A torch, after tea|supper', 'british')).toBe(
    'hot and cross. A torch, after tea',
  );
  expect(inVariety('has got| a hat', 'american')).toBe('has a hat');
  expect(inVariety('fish and chips|chips', 'american')).toBe('fish and chips');
});

test('a word that means something else in the group’s English is not shown without a sentence', () => {
  expect(isForeign('pants', 'british')).toBe(true);
  expect(isForeign('torch', 'american')).toBe(true);
  expect(isForeign('holiday', 'american')).toBe(false);
  expect(isForeign("mum's", 'american')).toBe(true);
  expect(isForeign('sweater', 'british')).toBe(false);
});

test('every row has two different words, and converting a text twice gives the same as converting it once', () => {
  for (const { british, american } of [...listSpellings(), ...listWordPairs()]) {
    expect(british).toMatch(/^[a-z]+$/);
    expect(american).toMatch(/^[a-zV]+$/i);
    expect(british).not.toBe(american);
    for (const accent of ['american', 'british'] as const) {
      const once = turned(`${british} ${american}`, accent);
      expect(turned(once, accent)).toBe(once);
      expect(inVariety(inVariety(british, accent), accent)).toBe(inVariety(british, accent));
    }
  }
});
