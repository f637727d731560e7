import { expect, test } from 'vitest';
import { nameFile } from './name-file.ts';

test.each([
  ['The ferry is late', 'Herons', 'The ferry is late - Herons.docx'],
  ['Who? Me: "a/b"', null, 'Who Me a b.docx'],
  ['con', null, '_con.docx'],
  ['con.txt', null, '_con.txt.docx'],
  ['contents', null, 'contents.docx'],
  ['..', null, 'Passage.docx'],
  ['', '', 'Passage.docx'],
  ['exe\u202Egpj', null, 'exegpj.docx'],
  ['Ends. ', null, 'Ends.docx'],
  ['x'.repeat(300), null, `${'x'.repeat(80)}.docx`],
  ['a\nb\0c', null, 'a bc.docx'],
])('the passage %j for the group %j is saved under a safe file name', (title, group, name) => {
  expect(nameFile(title, group, 'docx')).toBe(name);
});
