import { type Analyzer, compileGroup, createJudge, neededOf } from '../../analyze/index.ts';
import type { Group, PatternId, Sequence, Standing } from '../../analyze/types.ts';
import { withinSequence } from '../../host/store/move-group.ts';
import { stepTitle } from '../../ui/step-title.ts';
import { say } from '../../wording/say.ts';
import { teachable } from './search-patterns.ts';

/** The words of a list that a group can read, with examples for each pattern it knows. */
export interface ReadNow {
  readonly of: number;
  /** The number of decodable words, not counting by-sight words. */
  readonly decodes: number;
  readonly bySight: number;
  /** For each pattern, the words that practise it and that the group reads, in list order. */
  readonly wordsOf: ReadonlyMap<PatternId, readonly string[]>;
  /** The words that the group cannot read yet, in list order. */
  readonly beyond: readonly string[];
}

const decodable: ReadonlySet<Standing> = new Set<Standing>(['reads', 'fresh']);

/**
 * Judges the words of a list, and after them the example words of the catalogue, for a group at its step. A step beyond
 * the sequence counts as the last step. Only the words of the list are counted.
 */
export function readNow(
  words: readonly string[],
  engine: Analyzer,
  group: Group,
  sequence: Sequence | null,
): ReadNow {
  const judge = createJudge(engine, compileGroup(withinSequence(group, sequence), sequence));
  const spoken = engine.speaking(judge.group.speech);
  const standings = words.map((word) => judge(word).standing);
  const examples = teachable.flatMap(({ examples }) => examples).filter((word) => !words.includes(word));
  const wordsOf = new Map<PatternId, string[]>();
  for (const word of [...words, ...new Set(examples)]) {
    if (!decodable.has(judge(word).standing)) continue;
    const [reading] = spoken.analyze(word).readings;
    for (const id of reading ? neededOf(reading, judge.group) : []) {
      const known = wordsOf.get(id);
      if (known) known.push(word);
      else wordsOf.set(id, [word]);
    }
  }
  return {
    of: words.length,
    decodes: standings.filter((standing) => decodable.has(standing)).length,
    bySight: standings.filter((standing) => standing === 'by-sight').length,
    wordsOf,
    beyond: words.filter((_, i) => !decodable.has(standings[i]!) && standings[i] !== 'by-sight'),
  };
}

/**
 * Returns the patterns that the group learnt outside its steps, then the steps it has been taught, the latest first.
 * Each step comes with its patterns that the group knows.
 */
export function taughtBySteps(
  group: Group,
  sequence: Sequence | null,
): readonly { readonly title: string; readonly patterns: readonly PatternId[] }[] {
  const notYet = new Set(group.notYet);
  const known = (ids: readonly PatternId[]): PatternId[] => ids.filter((id) => !notYet.has(id));
  const steps = (sequence?.steps ?? []).slice(0, group.step).map((step, i) => ({
    title: step.title
      ? say('sequences.titledStep', { step: i + 1, title: stepTitle(sequence!, i + 1) })
      : say('sequences.numberedStep', { step: i + 1 }),
    patterns: known(step.teaches),
  }));
  return [
    { title: say('groups.outOfTurn'), patterns: known(group.alsoTaught) },
    ...steps.toReversed(),
  ].filter(({ patterns }) => patterns.length > 0);
}
