import { expect, test } from 'vitest';
import { listSentences } from './list-sentences.ts';

const text = '# The ferry\nBram ran. Wilma sat.\n- one rope\n\nThe ferry left.';

test('sentences have their places in the whole text and their neighbours, and headings are skipped', () => {
  const sentences = listSentences(text);
  expect(sentences.map((each) => text.slice(each.from, each.to))).toEqual([
    'Bram ran.',
    'Wilma sat.',
    'one rope',
    'The ferry left.',
  ]);
  expect(sentences[1]).toMatchObject({ text: 'Wilma sat.', before: 'Bram ran.', after: 'one rope' });
  expect(sentences[3]!.after).toBe('');
});
