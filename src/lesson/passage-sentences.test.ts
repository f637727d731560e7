import { expect, test } from 'vitest';
import { passageSentences } from './passage-sentences.ts';

const cut = (text: string) => passageSentences({ title: '', text });

test.each([
  ['two on a line', 'The tide came in. Otto ran.', ['The tide came in.', 'Otto ran.']],
  [
    'speech and who said it',
    '“Row!” said Mr. Falk. “Now?” asked Ines.',
    ['“Row!” said Mr. Falk.', '“Now?” asked Ines.'],
  ],
  ['but not what follows the speech', 'Otto said, “Row!” Ines rowed.', ['Otto said, “Row!”', 'Ines rowed.']],
  [
    'speech of several sentences',
    '“Row! It is late,” said Ines. “Now,” she said, “row. Quick!”',
    ['Row!', '“It is late,” said Ines.', '“Now,” she said, “row.”', 'Quick!'],
  ],
  [
    'straight marks too',
    '"Row! It is late," said Ines. "Now," she said, "row. Quick!"',
    ['Row!', '"It is late," said Ines.', '"Now," she said, "row."', 'Quick!'],
  ],
  ['who said it behind the speech', '“Who?” I said. I ran.', ['“Who?” I said.', 'I ran.']],
  ['no greeting of a letter', 'To Gran,\nThank you.\nSticky hugs,\nTeddy', ['Thank you.']],
  ['no heading, no entry of a list', '# The storm\n- a rope\nIt blew.', ['It blew.']],
  ['once', 'Row! Row! Stop.', ['Row!', 'Stop.']],
  ['nothing without a word', '…\n12.\n', []],
])('cuts a passage into sentences: %s', (_, text, sentences) => expect(cut(text)).toEqual(sentences));

test('without a passage there are no sentences', () => expect(passageSentences(null)).toEqual([]));
