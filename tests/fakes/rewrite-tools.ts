import type { RewriteTools } from '../../src/rewrite/rewrite-task.ts';

const HARD = new Set('purchase purchased enormous lanterns lantern observed ferry squall'.split(' '));
const NAMES = new Set('Bram Wilma Otto Marigold'.split(' '));
const SAME: Readonly<Record<string, string>> = {
  purchase: 'get',
  purchased: 'got',
  enormous: 'big',
  lanterns: 'lamps',
  observed: 'saw',
  ferry: 'ship',
};

/** Tools for a group that reads all words but eight, with an easier word for most of the eight. */
export const fakeTools: RewriteTools = {
  read: (text) =>
    [...text.matchAll(/[\p{L}’'-]+/gu)].map(({ 0: word, index }) => ({
      start: index,
      end: index + word.length,
      standing: NAMES.has(word.replace(/['’]s$/, ''))
        ? 'name'
        : HARD.has(word.toLowerCase())
          ? 'beyond'
          : 'reads',
    })),
  baseOf: (word) => word.replace(/s$/, ''),
  denies: (word) => /^(?:unhappy|helpless|unwilling)$/.test(word),
  wordsFor: (sentence, start, end) => {
    const same = SAME[sentence.slice(start, end).toLowerCase()];
    return same ? [{ text: same, reads: true }] : [];
  },
};
