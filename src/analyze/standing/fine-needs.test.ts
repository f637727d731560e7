import { expect, test } from 'vitest';
import { groupOf } from '../../../tests/fakes/group.ts';
import { loadAnalyzer } from '../../../tests/load-analyzer.ts';
import { catalogue, coarseRows } from '../catalogue/catalogue.ts';
import type { Group, GroupOptions, PatternId } from '../types.ts';
import { compileGroup } from './compile-group.ts';
import { createJudge } from './judge.ts';

const analyzer = loadAnalyzer();
const coarse = coarseRows.map(({ id }) => id).filter((id) => id !== 'irregular');
/** Lists all patterns except these rows. */
const but = (...ids: PatternId[]): PatternId[] => coarse.filter((id) => !ids.includes(id));

function judge(word: string, group: Partial<Group>, named: readonly PatternId[] = []): string {
  const sequence = {
    id: 'made-up',
    name: 'Made up',
    source: 'test',
    licence: 'MIT',
    steps: [
      { teaches: group.alsoTaught ?? [], bySight: [] },
      { teaches: named, bySight: [] },
    ],
  };
  const held = groupOf({ ...group, alsoTaught: [], sequence: 'made-up', step: 1 });
  const { standing, missing } = createJudge(analyzer, compileGroup(held, sequence))(word);
  return [standing, ...missing].join(' ');
}

const UNITS: GroupOptions = { endings: 'units' };
const DIVIDED: GroupOptions = { divisions: 'counted' };

// Each row has a word, the taught patterns, the finer rows named by a later step, the options, and the standing. There
// is an example and a counter-example for each case.
test.each<[string, PatternId[], PatternId[], GroupOptions, string]>([
  ["isn't", but(), [], {}, 'fresh'],
  ["isn't", but('contraction'), [], {}, 'beyond contraction'],
  ["isn't", but(), ['contraction-not'], {}, 'beyond contraction-not'],
  ["she'll", but(), ['contraction-not'], {}, 'fresh'],
  ["gulls'", but(), ['possessive-several'], {}, 'beyond possessive-several'],
  ["gull's", but(), ['possessive-several'], {}, 'fresh'],
  ['gulls', but(), ['suffix-s-z'], {}, 'beyond suffix-s-z'],
  ['boats', but(), ['suffix-s-z'], {}, 'fresh'],
  ['horses', but(), ['suffix-es-iz'], {}, 'beyond suffix-es-iz'],
  ['goes', but(), ['suffix-es-iz'], {}, 'fresh'],
  ['shelves', but(), ['change-f-to-v'], {}, 'beyond change-f-to-v'],
  ['cliffs', but(), ['change-f-to-v'], {}, 'fresh'],
  ['beginning', but(), ['change-double-longer'], {}, 'beyond change-double-longer'],
  ['running', but(), ['change-double-longer'], {}, 'fresh'],
  ['opening', but(), ['change-double-longer'], {}, 'fresh'],
  ['different', but(), ['suffix-ent'], {}, 'beyond suffix-ent'],
  ['assistant', but(), ['suffix-ent'], {}, 'fresh'],
  ['wing', but(), ['rime-ing'], {}, 'fresh'],
  ['wing', but('ng'), ['rime-ing'], {}, 'beyond ng'],
  ['wing', but(), ['rime-ing'], UNITS, 'beyond rime-ing'],
  ['wing', but(), [], UNITS, 'fresh'],
  ['rowing', but(), ['rime-ing'], UNITS, 'fresh'],
  ['clam', but(), ['rime-am'], UNITS, 'beyond rime-am'],
  ['camp', but(), ['rime-am'], UNITS, 'fresh'],
  ['planned', but(), ['rime-an'], UNITS, 'beyond rime-an'],
  ['walls', but(), ['rime-all'], UNITS, 'beyond rime-all'],
  ['shall', but(), ['rime-all'], UNITS, 'fresh'],
  ['vessels', but(), ['final-el'], UNITS, 'beyond final-el'],
  ['hotel', but(), ['final-el'], UNITS, 'fresh'],
  ['current', but(), ['final-ent'], UNITS, 'beyond final-ent'],
  ['event', but(), ['final-ent'], UNITS, 'fresh'],
  ['lantern', but(), ['divide-vc-cv'], {}, 'fresh'],
  ['lantern', but(), [], DIVIDED, 'beyond divide-vc-cv'],
  ['pilot', but(), [], DIVIDED, 'beyond divide-v-cv'],
  ['cabin', but(), [], DIVIDED, 'beyond divide-vc-v'],
  ['poem', but(), [], DIVIDED, 'beyond divide-v-v'],
  ['rowing', but(), [], DIVIDED, 'fresh'],
  ['table', but(), [], DIVIDED, 'fresh'],
  ['inspect', but(), ['root-spect'], {}, 'beyond root-spect'],
  ['inspector', but(), ['root-spect'], {}, 'beyond root-spect'],
  ['transport', but(), ['root-port'], {}, 'beyond root-port'],
  ['port', but(), ['root-port'], {}, 'fresh'],
  ['connect', but(), ['prefix-con'], {}, 'beyond prefix-con'],
  ['comet', but(), ['prefix-com'], {}, 'fresh'],
])('%s (row %#) needs the finer patterns that its row names', (word, alsoTaught, named, options, says) => {
  expect(judge(word, { alsoTaught, options: { schwa: 'taught', ...options } }, named)).toBe(says);
});

test('a finer row that was taught counts for the rows that it replaces', () => {
  const taught = [...but('ng', 'short-i'), 'rime-ing'];
  expect(judge('wing', { alsoTaught: taught })).toBe('fresh');
  expect(judge('wing', { alsoTaught: taught, options: UNITS })).toBe('fresh');
  expect(judge('king', { alsoTaught: but('ng', 'short-i') })).toBe('beyond ng short-i');
});

test('a group taught contractions early knows every kind of contraction, even the kinds of later steps', () => {
  const steps = [
    { teaches: but('contraction'), bySight: [] },
    { teaches: ['contraction-not'], bySight: [] },
  ];
  const sequence = { id: 'made-up', name: 'Made up', source: 'test', licence: 'MIT', steps };
  const standing = (more: Partial<Group>) => {
    const group = groupOf({ sequence: 'made-up', step: 1, ...more });
    return createJudge(analyzer, compileGroup(group, sequence))("isn't").standing;
  };
  expect(standing({})).toBe('beyond');
  expect(standing({ alsoTaught: ['contraction'] })).toBe('fresh');
  expect(standing({ alsoTaught: ['contraction'], notYet: ['contraction-not'] })).toBe('beyond');
});

test('every kind belongs to a row that all groups count', () => {
  const ids = new Set(coarse);
  const lost = catalogue.filter(({ kindOf }) => kindOf !== undefined && !ids.has(kindOf));
  expect(lost.map(({ id }) => id)).toEqual([]);
});
