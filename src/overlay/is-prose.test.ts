import { expect, test } from 'vitest';
import { isProse } from './is-prose.ts';

test.each([
  ['verse', 'The tide is out, the boats lie still,\n   And gulls stand in a row;'],
  ['a story with speech', '“Bram,” she said, “is it you?” It was past ten – and dark.'],
  [
    'a letter with a date',
    'Dear Otto,\nwe met on the 4 of May; the nets were dry, and so were we. Yours, Wilma',
  ],
  ['well-kept and har\u00ADbour', 'a well-kept har\u00ADbour by the gulls’ nest of Ines'],
])('%s is prose', (_what, text) => expect(isProse(text)).toBe(true));

test.each([
  ['nothing', ''],
  ['a word', 'tides'],
  ['commands', 'npm run build\nnpm run tide\nnpm run boat'],
  ['code with a remark', '// the tide is out\nfor (const boat of fleet) boat.sail(now);'],
  ['code of few marks', 'for boat in fleet:\n    if boat.out:\n        count = count + 1'],
  ['a log', '07:10 INFO boat=marigold state=out\n07:25 WARN boat=marigold fuel=low'],
  ['a table', '| boat | crew |\n| the Marigold | 3 |\n| the Wilma | 2 |'],
  ['a list of names', 'Ines Otto Bram Wilma Falk Marigold Heron Plover'],
])('%s is not prose', (_what, text) => expect(isProse(text)).toBe(false));
