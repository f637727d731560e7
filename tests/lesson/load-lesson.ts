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

/** What a lesson is made from, for a group at a step of a starter sequence, in its accent; a group may be given in part. */
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
  const judge = createJudge(analyzer, compileGroup(group, sequence));
  const known = knownTo(judge);
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
