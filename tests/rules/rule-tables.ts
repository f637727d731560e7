import { createAnalyzer } from '../../src/analyze/index.ts';
import type { Rule } from '../../src/analyze/rule.ts';
import { CUT_RULES } from '../../src/analyze/syllables/cut-rules.ts';
import { loadGuesser, loadLexicon } from '../load-analyzer.ts';

/** An ordered list of rules, with what tests and the page of rules need to know of it. */
export interface RuleTable {
  readonly title: string;
  /** The file that holds the list, from the top of the tree. */
  readonly file: string;
  /** What the rules decide and how examples are written, for the page of rules. */
  readonly about: string;
  // biome-ignore lint/suspicious/noExplicitAny: each list has places of its own kind.
  readonly rules: readonly Rule<any>[];
  /** Does what the list is for with an example or counter-example, and gives it back as it then is. */
  readonly run: (text: string) => string;
}

export const ruleTables: readonly RuleTable[] = [
  {
    title: 'Where a syllable ends',
    file: 'src/analyze/syllables/cut-rules.ts',
    about: 'For each two vowels of a part of a word. A dot is a cut.',
    rules: CUT_RULES,
    run: divide,
  },
];

/** A word as the analysis divides it; by an analyser of its own, since others remember their words. */
function divide(text: string): string {
  const word = text.replaceAll('.', '');
  const { syllables } = createAnalyzer(loadLexicon(), loadGuesser()).analyze(word).readings[0]!;
  return syllables.map((syllable) => syllable.text).join('.');
}

/** The names of the rules that were first to apply somewhere while `text` went through their list, and what became of the text. */
export function rulesMet({ rules, run }: RuleTable, text: string): { names: Set<string>; result: string } {
  const names = new Set<string>();
  const kept = rules.map(({ applies }) => applies);
  for (const [i, rule] of rules.entries()) {
    const watched = (place: unknown): boolean => {
      const met = kept[i]!(place);
      if (met) names.add(rule.name);
      return met;
    };
    Object.assign(rule, { applies: watched });
  }
  try {
    return { result: run(text), names };
  } finally {
    for (const [i, rule] of rules.entries()) Object.assign(rule, { applies: kept[i] });
  }
}
