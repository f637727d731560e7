import fc from 'fast-check';
import { expect, test } from 'vitest';
import { joinWrappedLines } from './join-wrapped-lines.ts';

const prose =
  'The ferry could not leave the quay, since the wind had got up in the night and the waves ran over the wall. Bram sat in his shed and waited for the rain to end.';

/** Wraps a text as a mail program does. */
function wrap(text: string, width: number): string {
  let line = '';
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line].join('\n');
}

// At some of these widths, a sentence ends where its line is full.
test.each([56, 60, 66, 72, 76, 80, 90, 98, 99])(
  'a letter wrapped at %i columns is joined into the paragraphs between its blank lines',
  (width) => {
    const text = `Dear all,\n\n${wrap(prose, width)}\n\n${wrap(`Come ${prose}`, width)}\n`;
    expect(joinWrappedLines(text)).toEqual(['Dear all,', prose, `Come ${prose}`]);
  },
);

test('verse and addresses are not joined, even beside wrapped prose', () => {
  const verse = [
    'The bell on the wall',
    'rang once for the dead,',
    'and once for us all',
    'who lay in our bed.',
  ];
  expect(joinWrappedLines(`${wrap(prose, 72)}\n\n${verse.join('\n')}`)).toEqual([prose, ...verse]);
  expect(joinWrappedLines(verse.join('\n'))).toEqual(verse);
});

test('each list entry begins a new line, and the wrapped lines of an entry are joined', () => {
  const text = `${wrap(`- ${prose}`, 72)}\n${wrap(`2. ${prose}`, 72)}`;
  expect(joinWrappedLines(text)).toEqual([`- ${prose}`, `2. ${prose}`]);
});

test('paragraphs without blank lines are separated at indents or short last lines', () => {
  expect(joinWrappedLines(`${wrap(prose, 72)}\n${wrap(`___${prose}`, 72).replace('___', '   ')}`)).toEqual([
    prose,
    prose,
  ]);
  expect(joinWrappedLines(`${wrap(prose, 72)}\n${wrap(prose, 72)}`)).toEqual([prose, prose]);
});

test('a text with one line for each paragraph keeps its lines', () => {
  expect(joinWrappedLines(`${prose}\r\n${prose}\r\n\r\nEnd.`)).toEqual([prose, prose, 'End.']);
});

test('no word is lost or added, whatever the text', () => {
  const text = fc.string({
    unit: fc.constantFrom('a', 'bc', ' ', ' ', '\n', '.', '- ', '\t', '# '),
    maxLength: 600,
    size: 'max',
  });
  const words = (all: string) => all.split(/\s+/).filter((word) => word !== '');
  fc.assert(
    fc.property(text, (any) => {
      expect(words(joinWrappedLines(any).join('\n'))).toEqual(words(any));
    }),
    { seed: 72 },
  );
});
