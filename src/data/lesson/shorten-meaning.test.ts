import { expect, test } from 'vitest';
import { shortenMeaning } from './shorten-meaning.ts';

test.each([
  [
    'up to the semicolon',
    'a large natural stream of water; "the river was navigable"',
    'a large natural stream of water',
  ],
  ['without brackets', 'sheet (of wood) that forms a part', 'sheet that forms a part'],
  ['without examples', 'call in an official matter, such as to attend court', 'call in an official matter'],
  [
    'nothing left hanging',
    'the act of determining the properties of something, usually (by research) of',
    'the act of determining the properties of something',
  ],
  [
    'ended at a that',
    'a long narrow furrow cut either by a natural process or by a tool that somebody holds',
    'a long narrow furrow cut either by a natural process or by a tool',
  ],
  [
    'nothing where too little is left',
    'reproducer in which two microphones feed two or more loudspeakers to give a depth',
    '',
  ],
  ['plainer words', 'of or relating to the heart', 'to do with the heart'],
  ['one word may be all', 'harmed', 'harmed'],
  ['none', '', ''],
])('%s', (_, definition, meaning) => expect(shortenMeaning(definition)).toBe(meaning));
