import { describe, expect, test } from 'vitest';
import { readCorrespondence } from '../lexicon/read-correspondence.ts';
import type { AffixForm, WordRecord } from '../lexicon/word-record.ts';
import { buildRecord, type FindBuilt } from './build-word.ts';
import { type BuiltWord, spellingsOf } from './built-word.ts';

const spell = (units: string) => units.split(' ').map(readCorrespondence);
const whole = (units: string): BuiltWord => ({
  parts: [{ role: 'base', spellings: spell(units) }],
  base: null,
  affixes: [],
});
const listed: Readonly<Record<string, BuiltWord>> = {
  post: whole('p:P o:OW s:S t:T'),
  man: whole('m:M a:AE n:N'),
  hop: whole('h:HH o:AA p:P'),
  happy: whole('h:HH a:AE pp:P y:IY'),
  play: whole('p:P l:L ay:EY'),
  pan: whole('p:P a:AE n:N'),
};
const find: FindBuilt = (word) => (Object.hasOwn(listed, word) ? [listed[word]!] : []);

function build(word: string, reading: WordRecord['readings'][number]) {
  const built = buildRecord(word, { readings: [reading], homograph: false }, find)[0];
  return (
    built && {
      spelt: spellingsOf(built)
        .map(({ letters }) => letters)
        .join(' '),
      from: built.from?.map((source) => source.word),
      base: built.base,
      roles: built.parts.map(({ role }) => role).join(' '),
    }
  );
}
const by = (kind: AffixForm['kind'], correspondence: string, stem = 0, lessened = false) => ({
  ...{ stem, reading: 0, lessened },
  affix: { kind, ...readCorrespondence(correspondence) },
});

describe('buildRecord puts a word together', () => {
  test('from base and suffix, with the last consonant doubled', () => {
    const built = build('hopping', { kind: 'affixed', madeBy: by('suffix', 'ing:IH.NG', 2) });
    expect(built).toEqual({ spelt: 'h o pp ing', from: ['hop'], base: 'hop', roles: 'base suffix' });
  });

  test('from prefix and base', () => {
    const built = build('replay', { kind: 'affixed', madeBy: by('prefix', 're:R.IY') });
    expect(built).toEqual({ spelt: 're p l ay', from: ['play'], base: 'play', roles: 'prefix base' });
  });

  test('from two words', () => {
    const built = build('postman', { kind: 'compound', cut: 4, left: 0, right: 0 });
    expect(built).toEqual({
      spelt: 'p o s t m a n',
      from: ['post', 'man'],
      base: 'post',
      roles: 'base base',
    });
  });

  test('only if all its parts are in the table', () => {
    expect(build('gullman', { kind: 'compound', cut: 4, left: 0, right: 0 })).toBeUndefined();
    expect(build('regull', { kind: 'affixed', madeBy: by('prefix', 're:R.IY') })).toBeUndefined();
  });
});

describe('a word that the table lists with its own units', () => {
  test('comes from its first word and a weak second word: postman', () => {
    const units = spell('p:P o:OW s:S t:T m:M a:AX n:N');
    const built = build('postman', { kind: 'whole', units, madeBy: by('compound', 'man:M.AX.N') });
    expect(built).toEqual({
      spelt: 'p o s t m a n',
      from: ['post', 'man'],
      base: 'post',
      roles: 'base base',
    });
  });

  test('comes from its prefix and base: replay', () => {
    const units = spell('re:R.IY p:P l:L ay:EY');
    const built = build('replay', { kind: 'whole', units, madeBy: by('prefix', 're:R.IY') });
    expect(built).toEqual({ spelt: 're p l ay', from: ['play'], base: 'play', roles: 'prefix base' });
  });

  test('comes from no other word if the table names none', () => {
    const built = build('play', { kind: 'whole', units: spell('p:P l:L ay:EY'), madeBy: null });
    expect(built).toEqual({ spelt: 'p l ay', from: undefined, base: null, roles: 'base' });
  });
});
