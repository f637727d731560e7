import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { parseGroup, parseSequence } from '../../analyze/index.ts';
import { LARGEST_OWN_FILE, readShareFile, ShareError } from './share-file.ts';

const sequence = parseSequence({
  id: 'harbour-order',
  name: 'Harbour order',
  source: 'our own',
  licence: 'MIT',
  steps: [{ title: 'One', teaches: ['m', 'short-a'], bySight: ['the'] }],
});
const herons = parseGroup({
  name: 'Herons',
  sequence: 'harbour-order',
  step: 1,
  bySight: ['boat'],
  names: ['Bram', 'Wilma'],
  history: [{ date: '2026-11-25', sequence: 'harbour-order', step: 1 }],
});
const shared = { groups: [herons], sequences: [sequence] };
const whole = { wordreach: 1, groups: [herons], sequences: [sequence] };

test('groups and sequences shared by earlier versions are read unchanged', () => {
  expect(readShareFile(JSON.stringify(whole))).toEqual(shared);
});

test('a share file fits the published schema, and a faulty one does not', () => {
  const schemaOf = (name: string): object =>
    JSON.parse(readFileSync(new URL(`../../../profiles/${name}.schema.json`, import.meta.url), 'utf8'));
  const ajv = new Ajv2020();
  for (const name of ['sequence', 'group']) ajv.addSchema(schemaOf(name), `${name}.schema.json`);
  const check = ajv.compile(schemaOf('share'));
  expect(check(JSON.parse(JSON.stringify(whole))), ajv.errorsText(check.errors)).toBe(true);
  expect(check({ ...whole, wordreach: 2 })).toBe(false);
  expect(check({ ...whole, groups: [{ name: '' }] })).toBe(false);
});

test('a file with a single sequence or group, as in profiles/, is read too', () => {
  expect(readShareFile(`\ufeff${JSON.stringify(sequence)}`)).toEqual({ sequences: [sequence], groups: [] });
  expect(readShareFile(JSON.stringify(herons))).toEqual({ sequences: [], groups: [herons] });
});

test('markup in the name of a group is read as plain text', () => {
  const name = '<img src=x onerror=alert(1)>';
  expect(readShareFile(JSON.stringify({ ...whole, groups: [{ name }] })).groups[0]?.name).toBe(name);
});

const json = JSON.stringify(whole);
test.each<[string, string, RegExp]>([
  ['an empty file', '', /damaged or incomplete/],
  ['a file cut off', json.slice(0, -20), /incomplete/],
  ['a table', 'step,patterns\n1,m', /damaged or incomplete/],
  ['10 MB', `"${'x'.repeat(10_000_000)}"`, /larger than 1 MB/],
  ['10 MB of brackets', '['.repeat(10_000_000), /larger than 1 MB/],
  ['deep brackets', '['.repeat(LARGEST_OWN_FILE), /damaged or incomplete|not a Wordreach file/],
  ['a list', '[]', /not a Wordreach file/],
  ['null', 'null', /not a Wordreach file/],
  ['another program’s file', '{"version": 3, "items": []}', /not a Wordreach file/],
  ['a newer version', JSON.stringify({ ...whole, wordreach: 2, desks: [] }), /newer version of Wordreach/],
  ['nothing in it', '{"wordreach": 1}', /no group and no sequence/],
  ['a stray part', JSON.stringify({ ...whole, desks: [] }), /“desks”/],
  ['a prototype key', json.replace('{', '{"__proto__": {"groups": []},'), /“__proto__”/],
  [
    'a prototype key in a group',
    json.replace('"name":"Herons"', '"name":"Herons","__proto__":{}'),
    /groups\[0\], __proto__/,
  ],
  ['groups by id', JSON.stringify({ ...whole, groups: { herons } }), /groups in this file are damaged/],
  [
    'a pattern that does not exist',
    json.replace('short-a', 'short-q'),
    /sequences\[0\], steps\[0\]\.teaches\[1\].*short-a/,
  ],
  ['a step of -1', json.replace('"step":1', '"step":-1'), /groups\[0\], step/],
  [
    'one id twice',
    JSON.stringify({ ...whole, sequences: [sequence, sequence] }),
    /Two sequences.*“harbour-order”/,
  ],
])('%s is refused as a share file with an error sentence', (_, text, says) => {
  expect(() => readShareFile(text)).toThrow(says);
  expect(() => readShareFile(text)).toThrow(ShareError);
  expect(Object.hasOwn(Object.prototype, 'groups')).toBe(false);
});
