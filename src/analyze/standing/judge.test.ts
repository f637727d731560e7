import { expect, test } from 'vitest';
import { groupOf } from '../../../tests/fakes/group.ts';
import { type FakeReading, fakeAnalyzer } from '../../../tests/fakes/word-analyzer.ts';
import { createClimber } from '../climb/create-climber.ts';
import type { Group, PartNeeds, Sequence, WordKey } from '../types.ts';
import { compileGroup } from './compile-group.ts';
import { createJudge } from './judge.ts';
import { rememberWeighed } from './remember-weighed.ts';

const want = ['w', 'a-after-w', 'n', 't', 'end-nt'];
const wanted: PartNeeds = {
  word: 'wanted',
  requires: [...want, 'suffix-ed-id'],
  madeOf: { parts: [{ word: 'want', requires: want }], joint: ['suffix-ed-id'] },
};
const words: Record<string, readonly FakeReading[]> = {
  map: [{ requires: ['m', 'short-a', 'p'] }],
  rain: [{ requires: ['ai', 'n', 'r'] }],
  bram: [{ requires: ['b', 'm', 'r', 'short-a', 'start-br'] }],
  quay: [{ requires: ['irregular'] }],
  monday: [{ requires: ['ay', 'm'] }],
  said: [{ requires: ['irregular', 's'] }],
  want: [{ requires: want }],
  wants: [
    {
      requires: [...want, 'suffix-s'],
      madeOf: { parts: [{ word: 'want', requires: want }], joint: ['suffix-s'] },
    },
  ],
  unwanted: [
    {
      requires: [...wanted.requires, 'prefix-un'],
      madeOf: { parts: [wanted], joint: ['prefix-un'] },
    },
  ],
  coming: [
    {
      requires: ['change-drop-e', 'm', 'o_e-short-u', 'suffix-ing'],
      madeOf: {
        parts: [{ word: 'come', requires: ['m', 'o_e-short-u'] }],
        joint: ['change-drop-e', 'suffix-ing'],
      },
    },
  ],
  someone: [
    {
      requires: ['compound', 'irregular', 'm', 'o_e-short-u', 's'],
      madeOf: {
        parts: [
          { word: 'some', requires: ['m', 'o_e-short-u', 's'] },
          { word: 'one', requires: ['irregular'] },
        ],
        joint: ['compound'],
      },
    },
  ],
  lead: [{ requires: ['d', 'ea-long-e', 'l'] }, { requires: ['d', 'ea-short-e', 'l'] }],
  route: [{ requires: ['ou-oo', 'r', 't'] }, { requires: ['ou-ow', 'r', 't'] }],
  vop: [{ requires: ['p', 'short-o', 'v'], source: 'rule' }],
  zorblatic: [{ requires: ['b', 'z'], source: 'guess' }],
  ndyx: [{ requires: [], source: 'none' }],
};
const analyzer = fakeAnalyzer(words, ['lead']);

const standing = (key: WordKey, group: Partial<Group>, sequence: Sequence | null = null) => {
  const verdict = createJudge(analyzer, compileGroup(groupOf(group), sequence))(key);
  return [verdict.standing, ...verdict.missing].join(' ');
};
const teach = (...alsoTaught: string[]) => ({ alsoTaught });

test.each<[WordKey, Partial<Group>, string]>([
  ['map', teach('m', 'short-a', 'p'), 'reads'],
  ['map', teach('m'), 'beyond short-a p'],
  ['said', { bySight: ['said'] }, 'by-sight'],
  ['Said', { bySight: ['said'] }, 'by-sight'],
  ['said', teach('s', 'irregular'), 'beyond irregular'],
  // words made of a by-sight word
  ['wants', { bySight: ['want'], ...teach('suffix-s') }, 'by-sight'],
  ['wants', { bySight: ['want'] }, 'beyond suffix-s'],
  ['unwanted', { bySight: ['want'], ...teach('prefix-un', 'suffix-ed-id') }, 'by-sight'],
  ['unwanted', { bySight: ['want'], ...teach('prefix-un') }, 'beyond suffix-ed-id'],
  ['unwanted', { bySight: ['wanted'], ...teach('prefix-un') }, 'by-sight'],
  ['coming', { bySight: ['come'], ...teach('suffix-ing') }, 'beyond change-drop-e'],
  ['coming', { bySight: ['come'], ...teach('suffix-ing', 'change-drop-e') }, 'by-sight'],
  // compounds with both halves by sight, or one half by sight and one decoded
  ['someone', { bySight: ['some', 'one'], ...teach('compound') }, 'by-sight'],
  ['someone', { bySight: ['some', 'one'] }, 'beyond compound'],
  ['someone', { bySight: ['one'], ...teach('compound', 's', 'm', 'o_e-short-u') }, 'by-sight'],
  ['someone', { bySight: ['some'], ...teach('compound') }, 'beyond irregular'],
  // names
  ['Quay', {}, 'name irregular'],
  ['quay', {}, 'beyond irregular'],
  ['Quay^', {}, 'beyond irregular'],
  ['quay', { names: ['Quay'] }, 'beyond irregular'],
  ['quay', { names: ['quay'] }, 'name irregular'],
  ['Quay^', { names: ['Quay'] }, 'name irregular'],
  ['Quay+', {}, 'name irregular'],
  ["quay's", { names: ['quay'] }, 'name'],
  ["Quay's^", { names: ['Quay'] }, 'name'],
  ['Bram', { ...teach('b', 'm', 'r', 'short-a', 'start-br'), names: ['Bram'] }, 'reads'],
  ['Monday', teach('m'), 'beyond ay'],
  ['Xyzzy', {}, 'name'],
  // words with several readings
  ['route', teach('ou-ow', 'r', 't'), 'reads'],
  ['route', teach('r', 't'), 'beyond ou-oo'],
  ['lead', teach('ea-long-e', 'd', 'l'), 'unsure ea-short-e'],
  ['lead', teach('ea-long-e', 'ea-short-e', 'd', 'l'), 'reads'],
  ['lead', teach('d', 'l'), 'beyond ea-long-e'],
  // words whose readings are not certain
  ['vop', teach('v', 'short-o', 'p'), 'reads'],
  ['vop', teach('v'), 'unsure p short-o'],
  ['zorblatic', teach('b', 'z'), 'unsure'],
  ['Zorblatic', teach('b', 'z'), 'name'],
  ['ndyx', {}, 'unsure'],
  ['nothing-known', {}, 'unsure'],
])('%s has the expected standing for the group %j', (key, group, expected) => {
  expect(standing(key, group)).toBe(expected);
});

test('a word that practises the step being taught is fresh', () => {
  const steps = [
    { teaches: ['m', 'short-a', 'p', 'r', 'n'], bySight: [] },
    { teaches: ['ai'], bySight: [] },
  ];
  const sequence = { id: 'two', name: 'Two', source: 'test', licence: 'MIT', steps };
  const group = { sequence: 'two', step: 2 };
  expect(standing('rain', group, sequence)).toBe('fresh');
  expect(standing('map', group, sequence)).toBe('reads');
});

/** Returns an analyser that notes the keys it is asked for. */
function noteAsked() {
  const asked: WordKey[] = [];
  const counting = {
    analyze(key: WordKey) {
      asked.push(key);
      return analyzer.analyze(key);
    },
  };
  return { asked, counting };
}

test('a word is analysed only once, even for the judges of other groups', () => {
  const { asked, counting } = noteAsked();
  const judge = createJudge(counting, compileGroup(groupOf({}), null));
  expect(judge('map')).toBe(judge('map'));
  judge.ifTaught('m')('map');
  const other = judge.forGroup(compileGroup(groupOf({ alsoTaught: ['m', 'short-a', 'p'] }), null));
  expect([judge('map').standing, other('map').standing]).toEqual(['beyond', 'reads']);
  expect(asked).toEqual(['map']);
  judge.forGroup(compileGroup(groupOf({ accent: 'british' }), null))('map');
  expect(asked).toEqual(['map', 'map']);
});

test('words get the standings that the judge of another group gives, without another analysis', () => {
  const { asked, counting } = noteAsked();
  const judge = createJudge(counting, compileGroup(groupOf({}), null));
  const other = compileGroup(groupOf({ alsoTaught: ['m', 'short-a', 'p'] }), null);
  const standing = judge.standingFor(other);
  const keys = ['map', 'wants', 'lead', 'Bram'];
  expect(keys.map(standing)).toEqual(keys.map((key) => judge.forGroup(other)(key).standing));
  expect(standing('map')).toBe('reads');
  expect(asked).toHaveLength(keys.length);
});

test('judges and climbers that share cached analyses analyse a word only once', () => {
  const { asked, counting } = noteAsked();
  const remembering = rememberWeighed(counting);
  for (const group of [groupOf({}), groupOf({ alsoTaught: ['m', 'short-a', 'p'] })]) {
    const [one, other] = [remembering, analyzer].map((words) =>
      createJudge(words, compileGroup(group, null)),
    );
    for (const key of ['map', 'wants', 'lead', 'Bram']) expect(one!(key)).toEqual(other!(key));
    expect(createClimber(remembering, group, null)('map')).toEqual(
      createClimber(analyzer, group, null)('map'),
    );
  }
  expect(asked).toEqual(['map', 'wants', 'lead', 'Bram']);
});

test('a word is analysed once for all its capitals and signs, and apart from its chosen readings', () => {
  const { asked, counting } = noteAsked();
  const judge = createJudge(counting, compileGroup(groupOf({}), null));
  const keys = ['Map', 'map', 'MAP', 'Map^', 'Map~', 'Map+', 'Map=', 'lead#0', 'lead#1', 'lead'];
  for (const key of keys) expect(judge(key)).toEqual(createJudge(analyzer, judge.group)(key));
  expect(asked).toEqual(['Map', 'lead#0', 'lead#1', 'lead']);
});

test('any key gets a verdict, whatever characters it contains', () => {
  for (const key of ['', '__proto__', 'constructor', '\u{1F6A2}', '\ud800', 'İ']) {
    expect(['unsure', 'name']).toContain(standing(key, {}).split(' ')[0]);
  }
});

test('a capital inside a sentence makes a name only of a word that is not common', () => {
  const words = {
    harbour: [{ requires: ['ar'] }],
    falk: [{ requires: ['al-aw'] }],
    wilma: [{ requires: ['i-long-closed'] }],
  };
  const analyzer = fakeAnalyzer(words, [], { harbour: 'common', falk: 'rare', wilma: 'name' });
  const judge = createJudge(analyzer, compileGroup(groupOf({}), null));
  expect(judge('Harbour').standing).toBe('beyond');
  expect(judge('Falk').standing).toBe('name');
  expect(judge('Harbour+').standing).toBe('name');
  // At the start of a sentence, a capital is no evidence of a name. Wilma occurs only as a name.
  expect(judge('Wilma^').standing).toBe('name');
  expect(judge('Falk^').standing).toBe('beyond');
  expect(judge('wilma').standing).toBe('beyond');
});

test('a skipped word is skipped with or without a capital, even if it is a name or a by-sight word', () => {
  const group = groupOf({ skip: ['Map'], bySight: ['map'] });
  const judge = createJudge(fakeAnalyzer(words), compileGroup(group, null));
  expect(judge('map')).toEqual({ standing: 'skipped', missing: [] });
  expect(judge('Map').standing).toBe('skipped');
  expect(judge('rain').standing).toBe('beyond');
});
