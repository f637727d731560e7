import { expect, test } from 'vitest';
import { compileGroup } from '../standing/compile-group.ts';
import { createJudge } from '../standing/judge.ts';
import { vet } from '../standing/vet.ts';
import { createAnalyzer } from './create-analyzer.ts';

const group = {
  name: 'Herons',
  sequence: null,
  step: 0,
  alsoTaught: [],
  notYet: [],
  bySight: ['the'],
  names: [],
  options: {},
};
/** A table that fails on one word and contains no other word. */
const analyzer = createAnalyzer({
  find: (word) => {
    if (word === 'gull') throw new TypeError('no table can be called');
    return null;
  },
});

test('a word that makes the table fail is unread and has the fault; other words have no fault', () => {
  const { readings, fault } = analyzer.analyze('gull');
  expect(readings).toHaveLength(1);
  expect(readings[0]!.source).toBe('none');
  expect(fault).toContain('no table can be called');
  expect(analyzer.analyze('tern').fault).toBeUndefined();
});

test('a report on a text with a failing word still has figures, with the word unsure and among the faults', () => {
  const judge = createJudge(analyzer, compileGroup(group, null));
  const report = vet(
    {
      words: [
        ['gull', 2],
        ['the', 3],
      ],
      skipped: 0,
    },
    judge,
  );
  expect(report.tally).toMatchObject({ running: 5, bySight: 3, unsure: 2 });
  expect(report.faults).toEqual([{ word: 'gull', fault: expect.stringContaining('no table can be called') }]);
});

test('a fault of the judge itself affects only the word on which it fails', () => {
  const broken = { analyze: (key: string) => (key === 'gull' ? (null as never) : analyzer.analyze(key)) };
  const judge = createJudge(broken, compileGroup(group, null));
  expect(judge('gull')).toMatchObject({ standing: 'unsure', fault: expect.any(String) });
  expect(judge('the')).toEqual({ standing: 'by-sight', missing: [] });
});
