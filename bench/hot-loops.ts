import { readFileSync } from 'node:fs';
import {
  climbText,
  compileGroup,
  createAnalyzer,
  createClimber,
  createJudge,
  openGuesser,
  openLexicon,
  parseGroup,
  parseSequence,
  tallyText,
  tokenize,
  vet,
  type WordCounts,
} from '../src/analyze/index.ts';
import { writePage } from './write-page.ts';

/** The loop to run and how often to run the loop, as `count-instructions.ts` says. */
const [, , name, times] = process.argv;
const read = (path: string): Buffer => readFileSync(new URL(path, import.meta.url));

const text = writePage(500).replace(/<[^>]*>/g, ' ');
const keys = tokenize(text)
  .filter(({ kind }) => kind === 'word')
  .map(({ key }) => key);
const distinct = [...new Set(keys)];
const counts: WordCounts = { words: distinct.map((key) => [key, 2]), skipped: 0 };
const madeUp = distinct.map((key) => `${key.toLowerCase()}ock`);
const lexicon = openLexicon(read('../public/data/lexicon.bin'));
const sequence = parseSequence(JSON.parse(read('../profiles/sequences/steady-steps.json').toString()));
const group = parseGroup({ name: 'Herons', sequence: sequence.id, step: 12 });
const compiled = compileGroup(group, sequence);
const met = createAnalyzer(lexicon);
const judge = createJudge(met, compiled);
tallyText(counts, judge);

/**
 * The number of repetitions for words met before. Such a word takes so little work that the start of the interpreter
 * would show in the count without repetition.
 */
const OFTEN = 50;

/** Each loop, with the number of words that one run goes through. */
const loops: Record<string, { readonly words: number; readonly run: () => unknown }> = {
  'cut a text into words': { words: keys.length, run: () => tokenize(text) },
  'judge words met before': {
    words: keys.length * OFTEN,
    run: () => {
      for (let n = 0; n < OFTEN; n++) for (const key of keys) judge(key);
    },
  },
  'judge them for another group': {
    words: distinct.length,
    run: () => tallyText(counts, createJudge(met, compileGroup({ ...group, step: 13 }, sequence))),
  },
  'report on words met before': { words: distinct.length, run: () => vet(counts, judge) },
  'take words apart for the first time': {
    words: distinct.length,
    run: () => {
      const analyzer = createAnalyzer(lexicon);
      for (const key of distinct) analyzer.analyze(key);
    },
  },
  'climb, words met before': {
    words: distinct.length,
    run: () => climbText(counts, createClimber(met, group, sequence)),
  },
};
// The guesser is opened only if its loop is counted, since decoding its model takes longer than running everything
// else.
if (name === 'guess words nobody listed') {
  const guesser = openGuesser(read('../public/data/guess.bin'));
  loops[name] = { words: madeUp.length, run: () => madeUp.map((word) => guesser.guess(word)) };
}

if (name === undefined) console.log(JSON.stringify([...Object.keys(loops), 'guess words nobody listed']));
else {
  const { words, run } = loops[name]!;
  for (let n = 0; n < Number(times); n++) run();
  console.log(words);
}
