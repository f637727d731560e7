import { expect, test } from 'vitest';
import { matchAddresses } from './match-addresses.ts';

const tabs = [
  { id: 1, title: 'Ferry', url: 'https://tarnquay.example/ferry/' },
  { id: 2, title: 'Fish', url: 'https://tarnquay.example/fish?day=2' },
];

test.each([
  ['https://tarnquay.example/ferry', [1], []],
  ['http://tarnquay.example/ferry/#top, tarnquay.example/fish?day=2', [1, 2], []],
  ['https://tarnquay.example/ferry\nhttps://tarnquay.example/ferry/', [1], []],
  ['https://tarnquay.example/fish', [], ['https://tarnquay.example/fish']],
  ['https://tarnquay.example/ferry?day=2 nonsense', [], ['https://tarnquay.example/ferry?day=2', 'nonsense']],
  ['', [], []],
])('pasted addresses %j are matched with open tabs or listed as missing', (pasted, matched, missing) => {
  const found = matchAddresses(pasted, tabs);
  expect(found.matched.map(({ id }) => id)).toEqual(matched);
  expect(found.missing).toEqual(missing);
});
