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

/** So many groups are kept with what they know: a file goes through twenty or so, and the next through the same ones. */
const MOST_KEPT = 30;
const kept = new Map<string, Pick<LessonInput, 'judge' | 'known'>>();

/** What a group knows of the whole bank, which takes longer to find than a lesson to make. */
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

/** Steps of a sequence that tests of some steps go through, so that they share what a group knows there: every eighth. */
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
