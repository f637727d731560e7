import { expect, test } from 'vitest';
import { nameAffix, namePattern } from './name-pattern.ts';

// A spelling, the letters before and after it, and its place: `open` for an open syllable, `first` for the first
// syllable of the word.
test.each([
  ['ball', 'a:AO', 'b:B', 'll:L', '', 'a-before-l'],
  ['swan', 'a:AA', 'w:W', 'n:N', '', 'a-after-w'],
  ['pasta', 'a:AA', 'p:P', 's:S', '', 'a-ah'],
  ['acorn', 'a:EY', '', 'c:K', 'open first', 'long-a'],
  ['angel', 'a:EY', '', 'n:N', 'first', 'a-long-closed'],
  ['spider', 'i:AY', 'p:P', 'd:D', 'open first', 'long-i'],
  ['child', 'i:AY', 'ch:CH', 'l:L', 'first', 'i-long-closed'],
  ['robot', 'o:OW', 'r:R', 'b:B', 'open first', 'long-o'],
  ['cold', 'o:OW', 'c:K', 'l:L', 'first', 'o-long-closed'],
  ['hero', 'e:IH', 'h:HH', 'r:R', 'open first', 'long-e'],
  ['jury', 'u:UH', 'j:JH', 'r:R', 'open first', 'u-oor'],
  ['put', 'u:UH', 'p:P', 't:T', 'first', 'u-put'],
  ['begin', 'e:AX', 'b:B', 'g:G', 'open first', 'weak-e'],
  ['kitten', 'e:AX', 'tt:T', 'n:N', '', 'schwa-e'],
  ['enemy', 'e:AX', 'n:N', 'm:M', 'open', 'schwa-e'],
  ['worm', 'or:ER', 'w:W', 'm:M', 'first', 'or-er'],
  ['doctor', 'or:ER', 't:T', '', '', 'or-weak'],
  ['muffin', 'i:IX', 'ff:F', 'n:N', '', 'short-i'],
  ['helicopter', 'i:IX', 'l:L', 'c:K', 'open', 'schwa-i'],
  ['any', 'a:EH', '', 'n:N', 'first', 'irregular'],
  ['said', 'ai:EH', 's:S', 'd:D', 'first', 'irregular'],
])(
  'in %s, the spelling %s between %s and %s (%s) has the pattern %s',
  (_word, spelling, before, after, place, id) => {
    const [letters, sound] = cut(spelling);
    const around = {
      before: before === '' ? undefined : spelt(before),
      after: after === '' ? undefined : spelt(after),
      open: place.includes('open'),
      firstSyllable: place.includes('first'),
    };
    expect(namePattern(letters, sound, around)).toBe(id);
  },
);

test.each([
  ['suffix', 'ed', 'T', 'suffix-ed-t'],
  ['suffix', 'ed', 'D', 'suffix-ed-d'],
  ['suffix', 'ed', 'IH.D', 'suffix-ed-id'],
  ['prefix', 'un', 'AH.N', 'prefix-un'],
  ['suffix', 'xq', 'K', 'irregular'],
] as const)('the %s %s pronounced %s has the pattern %s', (role, letters, sound, id) => {
  expect(nameAffix(role, letters, sound)).toBe(id);
});

function cut(spelling: string): [string, string] {
  const [letters = '', sound = ''] = spelling.split(':');
  return [letters, sound];
}

function spelt(spelling: string): { letters: string; sound: string } {
  const [letters, sound] = cut(spelling);
  return { letters, sound };
}
