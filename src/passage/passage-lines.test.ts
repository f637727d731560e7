import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readLine, readLines, writeLines } from './passage-lines.ts';

test.each([
  ['# The storm', 'heading', 'The storm'],
  ['### Nets', 'heading', 'Nets'],
  ['- a rope', 'item', 'a rope'],
  ['• a rope', 'item', 'a rope'],
  ['#1 on the quay', 'paragraph', '#1 on the quay'],
  ['- ', 'paragraph', '- '],
  ['The tide - it turned', 'paragraph', 'The tide - it turned'],
] as const)('the line %j has the kind %s', (line, kind, text) => {
  expect(readLine(line)).toMatchObject({ kind, text });
});

test.each(['# 1 on the quay', '- 5 degrees', '## Nets'])(
  'the paragraph %j is still a paragraph after it is written and read back',
  (text) => {
    const [line] = readLines(writeLines([{ kind: 'paragraph', level: 0, text }]));
    expect(line?.kind).toBe('paragraph');
  },
);

test('any lines keep their kind and text when they are written and read back', () => {
  const word = fc.stringMatching(/^[A-Za-z][A-Za-z .,-]{0,20}$/);
  const line = fc.record({
    kind: fc.constantFrom('heading', 'item', 'paragraph'),
    level: fc.integer({ min: 1, max: 3 }),
    text: word,
  });
  fc.assert(
    fc.property(fc.array(line, { maxLength: 8 }), (lines) => {
      const back = readLines(writeLines(lines));
      expect(back.map(({ kind, text }) => [kind, text])).toEqual(lines.map(({ kind, text }) => [kind, text]));
    }),
    { seed: 20261125 },
  );
});
