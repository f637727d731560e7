import {
  compileGroup,
  createAnalyzer,
  createJudge,
  type Judge,
  openLexicon,
  parseGroup,
  parseSequence,
} from '../../src/analyze/index.ts';

/**
 * Returns a function that gives the judge of a group at a step of the sequence. Each judge is made only once, as in a
 * running background.
 */
export function openJudges(table: Uint8Array, sequence: unknown): (step: number) => Judge {
  const analyzer = createAnalyzer(openLexicon(table));
  const parsed = parseSequence(sequence);
  const judges = new Map<number, Judge>();
  return (step) => {
    const group = parseGroup({ name: 'Herons', sequence: parsed.id, step });
    const judge = judges.get(step) ?? createJudge(analyzer, compileGroup(group, parsed));
    judges.set(step, judge);
    return judge;
  };
}
