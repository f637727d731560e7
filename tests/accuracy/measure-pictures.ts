import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { compileGroup, createJudge, parseGroup, parseSequence, tallyText } from '../../src/analyze/index.ts';
import { countWords } from '../../src/passage/count-words.ts';
import { cutLine } from '../../src/passage/cut-line.ts';
import { loadAnalyzer } from '../load-analyzer.ts';
import { listPictureCases } from './picture-cases.ts';
import { openPictureBench } from './read-pictures.ts';
import { scorePicture } from './score-picture.ts';

/**
 * Measures how well pictures of text are read: `npx tsx tests/accuracy/measure-pictures.ts [KIND…] [--every N]
 * [--misses] [--keep FOLDER]`.
 * - Kinds: screen (14 to 20 px), fine (the same at two dots a pixel), scan (200 dpi, turned, noise), columns, web
 * (../shared/pages).
 * - Our own text is the text of the first shelf.
 * - A word is right if it occurs with the same letters, in order. Punctuation around it does not count.
 */
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    every: { type: 'string', default: '1' },
    misses: { type: 'boolean', default: false },
    keep: { type: 'string' },
  },
});

interface Sum {
  words: number;
  right: number;
  added: number;
  took: number;
  cases: number;
  slowest: number;
}

const sums = new Map<string, Sum>();
/** The sureness of right and wrong words, in hundredths, for words that the engine knows and for other words. */
const sureness = {
  known: { right: [] as number[], wrong: [] as number[] },
  other: { right: [] as number[], wrong: [] as number[] },
};
const engine = loadAnalyzer();
const isKnown = (word: string): boolean =>
  /^\p{N}+$/u.test(word) || /^(dictionary|derived)$/.test(engine.analyze(word).readings[0]?.source ?? '');
const judge = makeJudge();
/** For each picture, the difference in points between the readable share of the text as read and the true share. */
const off: number[] = [];
const bench = await openPictureBench();
for (const one of listPictureCases(positionals, Number(values.every))) {
  const picture = await bench.render(one);
  const { reading, took } = await bench.read(picture, one.scan ? 'image/jpeg' : 'image/png');
  const { right, added, read, misses } = scorePicture(reading, one.words);
  for (const { word, sureness: sure, isRight } of read)
    sureness[isKnown(word) ? 'known' : 'other'][isRight ? 'right' : 'wrong'].push(Math.round(sure * 100));
  const sum = sums.get(one.kind) ?? { words: 0, right: 0, added: 0, took: 0, cases: 0, slowest: 0 };
  sums.set(one.kind, {
    words: sum.words + one.words.length,
    right: sum.right + right,
    added: sum.added + added,
    took: sum.took + took,
    cases: sum.cases + 1,
    slowest: Math.max(sum.slowest, took),
  });
  const text = reading.lines.map(({ words }) => words.map((word) => word.text).join(' ')).join('\n');
  off.push(Math.abs(shareOf(text) - shareOf(one.text)));
  if (values.misses && misses.length > 0)
    console.log(
      `${one.name}: ${right} of ${one.words.length}, ${Math.round(took)} ms\n   ${misses.join(' | ')}`,
    );
  if (values.keep) {
    mkdirSync(values.keep, { recursive: true });
    writeFileSync(`${values.keep}/${one.name.replace(/\W+/g, '-')}.png`, picture);
  }
}
await bench.close();

for (const [kind, { words, right, added, took, cases, slowest }] of sums)
  console.log(
    `${kind.padEnd(8)} ${((right / words) * 100).toFixed(2)}% of ${words} words, ${added} that are not there; ${Math.round(took / cases)} ms a picture, ${Math.round(slowest)} at most`,
  );
for (const [who, { right, wrong }] of Object.entries(sureness))
  for (const limit of [30, 50, 60, 70, 80, 85, 90, 93, 96]) {
    const below = (list: readonly number[]): string =>
      `${list.filter((one) => one < limit).length} of ${list.length}`;
    console.log(`${who} words below ${limit}: right ${below(right)}, wrong ${below(wrong)}`);
  }
const within = off.filter((points) => points <= 1).length;
console.log(
  `readable share within 1 point: ${within} of ${off.length}, ${Math.max(...off).toFixed(1)} points off at most`,
);

function makeJudge() {
  const read = (file: string): unknown =>
    JSON.parse(readFileSync(new URL(`../../profiles/sequences/${file}`, import.meta.url), 'utf8'));
  const sequence = parseSequence(read('second-tide.json'));
  const step = Math.round(sequence.steps.length / 2);
  return createJudge(
    engine,
    compileGroup(parseGroup({ name: 'Herons', sequence: sequence.id, step }), sequence),
  );
}

function shareOf(text: string): number {
  return tallyText(countWords(text, cutLine), judge).reach;
}
