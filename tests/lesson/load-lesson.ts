import { readdirSync, readFileSync } from 'node:fs';
import { compileGroup, createJudge, parseSequence, speechOf } from '../../src/analyze/index.ts';
import type { Group, Sequence } from '../../src/analyze/types.ts';
import {
  createKnownWords,
  findFocus,
  type LessonInput,
  openWordBank,
  rememberAnalyses,
} from '../../src/lesson/index.ts';
import { loadAnalyzer } from '../load-analyzer.ts';

const analyzer = rememberAnalyses(loadAnalyzer());
const root = new URL('../../', import.meta.url);
const bank = openWordBank(readFileSync(new URL('public/data/lesson-words.tsv', root), 'utf8'));
const knownTo = createKnownWords(bank, analyzer);

/** The starter sequences. */
export const sequences: readonly Sequence[] = readdirSync(new URL('profiles/sequences/', root)).map((file) =>
  parseSequence(JSON.parse(readFileSync(new URL(`profiles/sequences/${file}`, root), 'utf8'))),
);

/**
 * The number of groups that are kept in memory with the words they know. A test file uses some twenty groups, and the
 * next file uses the same groups.
 */
const MOST_KEPT = 30;
const kept = new Map<string, Pick<LessonInput, 'judge' | 'known'>>();

/**
 * Returns the words of the whole bank that a group knows. Finding these words takes longer than making a lesson, so the
 * result is kept.
 */
function knownOf(group: Group, sequence: Sequence | undefined): Pick<LessonInput, 'judge' | 'known'> {
  const key = JSON.stringify([sequence?.id, { ...group, accent: group.accent ?? 'american' }]);
  let found = kept.get(key);
  if (!found) {
    const judge = createJudge(analyzer, compileGroup(group, sequence ?? null));
    found = { judge, known: knownTo(judge) };
  }
  kept.delete(key);
  kept.set(key, found);
  if (kept.size > MOST_KEPT) kept.delete(kept.keys().next().value!);
  return found;
}

/**
 * Returns every eighth step of a sequence, for tests that use only some steps. All such tests use the same steps, so
 * that they share the words that a group knows at a step.
 */
export const someSteps = ({ steps }: Sequence): number[] =>
  steps.map((_, i) => i + 1).filter((step) => step % 8 === 0);

/**
 * Returns the input of a lesson for a group at a step of a starter sequence, in the sequence's accent. `more` replaces
 * fields of the group.
 */
export function lessonInput(
  sequenceId: string,
  step: number,
  more: Partial<Group> = {},
  passage: LessonInput['passage'] = null,
): LessonInput {
  const sequence = sequences.find(({ id }) => id === sequenceId)!;
  const group: Group = {
    name: 'Herons',
    sequence: sequenceId,
    step,
    alsoTaught: [],
    notYet: [],
    bySight: [],
    names: ['Ines', 'Otto', 'Bram', 'Wilma'],
    options: {},
    ...(sequence?.accent ? { accent: sequence.accent } : {}),
    ...more,
  };
  const { judge, known } = knownOf(group, sequence);
  const focus = findFocus(group, sequence, known.knows);
  return {
    group,
    sequence,
    day: '2026-11-25',
    bank,
    analyzer: analyzer.speaking(speechOf(group)),
    judge,
    known,
    focus,
    passage,
  };
}
