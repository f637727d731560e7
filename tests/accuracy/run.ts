import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { syllable } from 'syllable';
import { gatherSources } from '../../src/data/lexicon/gather-sources.ts';
import { readCmudict } from '../../src/data/read-cmudict.ts';
import { readFrequency } from '../../src/data/read-frequency.ts';
import { loadAnalyzer, loadLexicon } from '../load-analyzer.ts';
import { generalisations } from './clymer.ts';
import { measureGuess } from './measure-guess.ts';
import { measureHomographs } from './measure-homographs.ts';
import { measureMorphology } from './measure-morphology.ts';
import { readGold, scoreGold } from './score-gold.ts';
import { readNettalk, scoreNettalk } from './score-nettalk.ts';
import { unitLists } from './spelling-shares.ts';

/**
 * Prints how accurate the word analysis is. Each figure has its source. Data that may not be shipped is read from
 * ../shared.
 */
const analyzer = loadAnalyzer();
const lexicon = loadLexicon();
const shared = new URL('../../../shared/data/', import.meta.url);

heading(
  'Hand-made annotations (tests/words, and words-2.tsv of ../shared/gold, annotated without the engine)',
);
const annotated = new URL('../words/', import.meta.url);
const goldFiles = readdirSync(annotated)
  .filter((name) => name.startsWith('gold-'))
  .map((name) => new URL(name, annotated));
const more = new URL('../gold/words-2.tsv', shared);
for (const file of existsSync(more) ? [...goldFiles, more] : goldFiles) {
  const name = file.pathname.split('/').at(-1)!;
  const rows = readGold(readFileSync(file, 'utf8'));
  const { wrong } = scoreGold(rows, analyzer);
  for (const [what, errors] of Object.entries(wrong)) {
    figure(`${name}: ${what}`, 1 - errors.length / rows.length, `${rows.length} words`);
    for (const error of errors) console.log(`      ${error}`);
  }
}

heading(
  'Alignment with nothing left over (CMUdict through npm cmu-pronouncing-dictionary, ranks of SUBTLEX-US)',
);
const pronounced = readCmudict();
const notWords = new Set(
  readFileSync(new URL('../words/not-words.txt', import.meta.url), 'utf8')
    .replace(/^#.*$/gm, '')
    .split(/\s+/),
);
const ranked = [...readFrequency()].filter(([word]) => /^[a-z]+$/.test(word) && pronounced.has(word));
for (const top of [5000, 20_000]) {
  const words = ranked.filter(([word, rank]) => rank <= top && !notWords.has(word));
  const found = words.filter(([word]) => lexicon.find(word) !== null);
  figure(
    `commonest ${top.toLocaleString('en')}, letter names set aside`,
    found.length / words.length,
    `${words.length} words`,
  );
}
const entries = [...pronounced.keys()].filter((word) => /^[a-z]+$/.test(word));
figure(
  'all headwords made of letters',
  entries.filter((word) => lexicon.find(word)).length / entries.length,
  `${entries.length} words`,
);

const nettalk = new URL('nettalk_dev.tsv', shared);
if (existsSync(nettalk)) {
  heading(
    'Same pronunciation, same letters (NETtalk corpus, Sejnowski and Rosenberg 1987; two notations normalised)',
  );
  const words = readNettalk(
    readFileSync(nettalk, 'utf8'),
    readFileSync(new URL('nettalk_phoneme_key.tsv', shared), 'utf8'),
  );
  const score = scoreNettalk(words, gatherSources().aligner);
  figure('letters', score.lettersRight / score.letters, `${score.letters} letters`);
  figure('words', score.wordsRight / score.aligned, `${score.aligned} words`);
}

heading(
  'Morphology (inflections: forms npm compromise makes from WordNet; derivations: 500 words checked by hand)',
);
for (const [what, { right, of }] of Object.entries(measureMorphology())) figure(what, right / of, `${of}`);

const homographs = measureHomographs();
if (homographs) {
  heading(
    'Homographs in context (Wikipedia homograph data, Gorman and others 2018, training part; 5-fold cross-validation)',
  );
  figure('macro accuracy', homographs.macro, `${homographs.words} words`);
  figure('micro accuracy', homographs.micro, `${homographs.places} places`);
  figure('always the commoner reading', homographs.majority, '');
  figure('places called sure', homographs.sure, '');
  figure('right of what is called sure', homographs.sureRight, '');
}

heading(
  'Words kept from table and model (a tenth of CMUdict by a fixed hash; espeak-ng: about 39.5 % wrong, from memory)',
);
const guesses = measureGuess();
figure('word error rate', guesses.errors, `${guesses.words} words`);
figure('required patterns right, common words', guesses.patternsRight, `${guesses.common} words`);

heading('Number of syllables (npm syllable)');
const counted = ranked.slice(0, 10_000).flatMap(([word]) => {
  const { source, syllables } = analyzer.analyze(word).readings[0]!;
  return source === 'dictionary' ? [syllables.length === syllable(word)] : [];
});
figure(
  'same count, commonest 10,000',
  counted.filter(Boolean).length / counted.length,
  `${counted.length} words`,
);

heading('Generalisations (Clymer 1963, from memory; ours: types among the commonest 3,000)');
const lists = unitLists(
  ranked.slice(0, 3000).map(([word]) => word),
  analyzer,
);
for (const { says, clymer, measure } of generalisations)
  console.log(`  ${says.padEnd(58)} ${measure(lists)} %   his ${clymer} %`);

function heading(text: string): void {
  console.log(`\n${text}`);
}

function figure(what: string, share: number, of: string): void {
  console.log(`  ${what.padEnd(58)} ${(share * 100).toFixed(2).padStart(6)} %   ${of}`);
}
