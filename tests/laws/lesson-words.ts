import { readFileSync } from 'node:fs';
import { speechOf } from '../../src/analyze/index.ts';
import type { Accent, WordAnalysis } from '../../src/analyze/types.ts';
import { loadAnalyzer } from '../load-analyzer.ts';

/** The accent for which the laws are checked, set by the environment. Each accent has a process of its own. */
export const accent: Accent = process.env.LAWS_ACCENT === 'british' ? 'british' : 'american';

export const analyzer = loadAnalyzer().speaking(speechOf({ accent, options: {} }));

/** Every word that lessons may use, with its analysis. */
export const lessonWords: readonly WordAnalysis[] = readFileSync(
  new URL('../../public/data/lesson-words.tsv', import.meta.url),
  'utf8',
)
  .trimEnd()
  .split('\n')
  .map((line) => analyzer.analyze(line.split('\t')[0]!));

/**
 * Words with an apostrophe, which the lesson list does not contain: every -n't and -'ve, and possessives of words with
 * all endings.
 */
export const shortenedWords: readonly WordAnalysis[] =
  `can't couldn't didn't doesn't don't hadn't hasn't haven't isn't mightn't mustn't needn't shouldn't wasn't weren't
won't wouldn't aren't it'll that'll he'll we'll you'd it'd they'd could've should've we've I'm you're they're let's what's boss's
fox's fish's coach's judge's horse's class's mouse's prince's gull's boat's teacher's`
    .split(/\s+/)
    .map((word) => analyzer.analyze(word));
