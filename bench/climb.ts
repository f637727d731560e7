import { readFileSync } from 'node:fs';
import {
  type Analyzer,
  climbText,
  compileGroup,
  createAnalyzer,
  createClimber,
  createJudge,
  openLexicon,
  parseGroup,
  tallyText,
} from '../src/analyze/index.ts';
import type { Sequence, WordKey } from '../src/analyze/types.ts';
import { readFrequency } from '../src/data/read-frequency.ts';

/** Milliseconds for the climb of a text of 100,000 words, 10,000 of them distinct, over 100 steps. */
export interface ClimbTimes {
  /** In one pass. The words are analysed anew, as for the first text of all. */
  readonly cold: number;
  /** In one pass. The words were analysed before, as for the next text or group. */
  readonly warm: number;
  /** The group is compiled and the text is judged at every step. The words were analysed before. */
  readonly naive: number;
}

/**
 * Measures the climb in comparison with judging at every step. The words are the most common ones, each as often as it
 * usually occurs.
 */
export function measureClimb(): ClimbTimes {
  const words = [...readFrequency().keys()].slice(0, 10_000);
  const harmonic = words.reduce((sum, _, i) => sum + 1 / (i + 1), 0);
  const counts = {
    words: words.map((word, i): [WordKey, number] => [word, Math.ceil(90_000 / harmonic / (i + 1))]),
    skipped: 0,
  };
  const sequence = stretch(
    JSON.parse(readFileSync(new URL('../profiles/sequences/steady-steps.json', import.meta.url), 'utf8')),
    100,
  );
  const group = parseGroup({ name: 'Herons', sequence: sequence.id, step: 0 });
  const lexicon = openLexicon(readFileSync(new URL('../public/data/lexicon.bin', import.meta.url)));
  const warmAnalyzer = remember(createAnalyzer(lexicon));
  const climb = (analyzer: Parameters<typeof createClimber>[0]) =>
    climbText(counts, createClimber(analyzer, group, sequence)).reach;
  climb(warmAnalyzer);
  return {
    cold: fastest(() => climb(createAnalyzer(lexicon))),
    warm: fastest(() => climb(warmAnalyzer)),
    naive: fastest(() =>
      Array.from({ length: sequence.steps.length + 1 }, (_, step) => {
        const judge = createJudge(warmAnalyzer, compileGroup({ ...group, step }, sequence));
        return tallyText(counts, judge).reach;
      }),
    ),
  };
}

/** Returns the same sequence in the given number of steps. The steps that teach most are split in two. */
function stretch(sequence: Sequence, length: number): Sequence {
  const steps = [...sequence.steps];
  while (steps.length < length) {
    const most = Math.max(...steps.map(({ teaches }) => teaches.length));
    const i = steps.findIndex(({ teaches }) => teaches.length === most);
    const { teaches, bySight } = steps[i]!;
    const half = Math.ceil(most / 2);
    steps.splice(
      i,
      1,
      { teaches: teaches.slice(0, half), bySight },
      { teaches: teaches.slice(half), bySight: [] },
    );
  }
  return { ...sequence, steps };
}

function remember(analyzer: Analyzer): Analyzer {
  const known = new Map<WordKey, ReturnType<Analyzer['analyze']>>();
  const kept: Analyzer = {
    analyze(key) {
      const analysis = known.get(key) ?? analyzer.analyze(key);
      known.set(key, analysis);
      return analysis;
    },
    speaking: () => kept,
  };
  return kept;
}

function fastest(work: () => unknown): number {
  const times = Array.from({ length: 5 }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
  return Math.min(...times);
}
