import { readFileSync } from 'node:fs';
import { createClimber } from '../../src/analyze/climb/create-climber.ts';
import { parseGroup } from '../../src/analyze/standing/parse-group.ts';
import { parseSequence } from '../../src/analyze/standing/parse-sequence.ts';
import { loadStoredShapes } from '../stored/stored-shapes.ts';
import type { Breach, Law } from './law.ts';
import { analyzer } from './lesson-words.ts';

const STRICT = { schwa: 'strict', syllableTypes: 'counted', blends: 'free', wh: 'free' };
const stored = loadStoredShapes(1).local.groups as { groups: Record<string, unknown> };
const starter = (sequence: string, options = {}): [group: unknown, sequence: string] => [
  { name: 'Terns', sequence, step: 0, options },
  sequence,
];
/** The groups by their column heads in `reads-1.tsv`: one for each starter, a strict group, and the stored group Herons. */
const GROUPS: Readonly<Record<string, readonly [group: unknown, sequence: string]>> = {
  'steady-steps': starter('steady-steps'),
  'second-tide': starter('second-tide'),
  'england-2013': starter('england-2013'),
  'steady-steps strict': starter('steady-steps', STRICT),
  herons: [stored.groups.herons, 'steady-steps'],
};

/**
 * Stored groups still read every word that version 1 read, at the same step or an earlier step.
 * `tests/stored/reads-1.tsv` lists every third lesson word and each word with an apostrophe. Beside each word is the
 * step at which version 1 could read it, before the catalogue had finer rows.
 */
export function storedGroupsReadAsBefore(): Law {
  const [head = '', ...rows] = readFileSync(new URL('../stored/reads-1.tsv', import.meta.url), 'utf8')
    .trimEnd()
    .split('\n');
  const climbers = head
    .split('\t')
    .slice(1)
    .map((name) => {
      const [group, id] = GROUPS[name]!;
      const file = new URL(`../../profiles/sequences/${id}.json`, import.meta.url);
      const sequence = parseSequence(JSON.parse(readFileSync(file, 'utf8')));
      return { name, climb: createClimber(analyzer, parseGroup(group), sequence) };
    });
  const breaches: Breach[] = [];
  for (const row of rows) {
    const [word = '', ...steps] = row.split('\t');
    for (const [i, { name, climb }] of climbers.entries()) {
      const before = stepOf(steps[i]!);
      const now = climb(word).reads ?? Infinity;
      if (now > before) breaches.push({ key: word, found: `${name}: step ${now}, before ${before}` });
    }
  }
  return {
    id: 'stored',
    says: 'stored groups and starters read what they read before',
    looked: rows.length * climbers.length,
    breaches,
  };
}

function stepOf(text: string): number {
  return text === '-' ? Infinity : Number(text);
}
