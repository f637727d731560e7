import { createHash } from 'node:crypto';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createAnalyzer, openLexicon } from '../analyze/index.ts';
import phraseSwaps from '../swap/phrase-swaps.json' with { type: 'json' };
import { buildGuesser } from './guess/build-guesser.ts';
import { writeWordBank } from './lesson/write-word-bank.ts';
import { buildLexicon } from './lexicon/build-lexicon.ts';
import { listCommonWords } from './list-common-words.ts';
import { buildSwaps } from './swap/build-swaps.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const output = join(root, 'public/data');
const table = join(output, 'lexicon.bin');
const model = join(output, 'guess.bin');
const manifest = join(output, 'manifest.json');

/** The inputs of the table; the packages are pinned in the lockfile. */
const INPUTS = [
  'package-lock.json',
  'src/data',
  'src/analyze/accent',
  'src/analyze/alignment',
  'src/analyze/build',
  'src/analyze/catalogue',
  'src/analyze/guess',
  'src/analyze/lexicon',
  'src/analyze/morphology',
  'src/swap',
  'src/variety',
];

const inputs = hashOf(INPUTS.flatMap(filesIn).sort());
if (
  existsSync(table) &&
  existsSync(model) &&
  existsSync(manifest) &&
  JSON.parse(readFileSync(manifest, 'utf8')).inputs === inputs
) {
  process.exit(0);
}
const started = performance.now();
const { bytes, records, pronunciations, words, left } = buildLexicon((step) =>
  process.stderr.write(`word table: ${step}\n`),
);
process.stderr.write('word table: learning to guess\n');
const guesses = buildGuesser(records, pronunciations);
mkdirSync(output, { recursive: true });
writeFileSync(table, bytes);
writeFileSync(model, guesses);
process.stderr.write('word table: gathering swaps\n');
writeFileSync(join(output, 'swaps.bin'), buildSwaps().bytes);
writeFileSync(join(output, 'phrase-swaps.json'), `${JSON.stringify(phraseSwaps)}\n`);
writeFileSync(join(output, 'lesson-words.tsv'), writeWordBank(createAnalyzer(openLexicon(bytes))));
writeFileSync(join(output, 'common-words.json'), `${JSON.stringify(listCommonWords())}\n`);
copyFileSync(join(root, 'NOTICE'), join(output, 'NOTICE.txt'));
writeFileSync(
  manifest,
  `${JSON.stringify({ inputs, words, bytes: bytes.length, guessBytes: guesses.length, notAligned: left }, null, 2)}\n`,
);
process.stderr.write(
  `word table: ${words} words, ${(bytes.length / 1e6).toFixed(2)} MB, guesses ${(guesses.length / 1e6).toFixed(2)} MB, in ${((performance.now() - started) / 1000).toFixed(1)} s\n`,
);

function filesIn(path: string): string[] {
  if (!statSync(join(root, path)).isDirectory()) return [path];
  return readdirSync(join(root, path), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !entry.name.endsWith('.test.ts'))
    .map((entry) => join(entry.parentPath, entry.name).slice(root.length));
}

function hashOf(files: readonly string[]): string {
  const hash = createHash('sha256');
  for (const file of files) hash.update(file).update(readFileSync(join(root, file)));
  return hash.digest('hex').slice(0, 16);
}
