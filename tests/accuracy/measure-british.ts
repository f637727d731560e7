import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { createAnalyzer, openGuesser, openLexicon } from '../../src/analyze/index.ts';
import type { Reading } from '../../src/analyze/types.ts';
import { readFrequency } from '../../src/data/read-frequency.ts';

const [folder = '', flag] = process.argv.slice(2);
void createRequire;
const root = new URL('../../', import.meta.url);
const data = (name: string): Uint8Array => readFileSync(new URL(`public/data/${name}`, root));
const lexicon = openLexicon(data('lexicon.bin'));
const analyzer = createAnalyzer(lexicon, openGuesser(data('guess.bin'))).speaking({
  accent: 'british',
  bath: 'father',
});
const rank = readFrequency();

const IPA: Readonly<Record<string, string>> = {
  æ: 'AE',
  ɐ: 'AH',
  ɒ: 'AA',
  ɑː: 'AR',
  ɔː: 'OR',
  ɜː: 'ER',
  ə: 'AX',
  ɪ: 'IH',
  i: 'IY',
  iː: 'IY',
  ɛ: 'EH',
  eɪ: 'EY',
  aɪ: 'AY',
  ɔɪ: 'OY',
  aʊ: 'AW',
  əʊ: 'OW',
  ʊ: 'UH',
  uː: 'UW',
  u: 'UW',
  ɪə: 'IA',
  ɛə: 'EA',
  ʊə: 'UA',
  ɹ: 'R',
  j: 'Y',
  ŋ: 'NG',
  ʃ: 'SH',
  ʒ: 'ZH',
  tʃ: 'CH',
  dʒ: 'JH',
  θ: 'TH',
  ð: 'DH',
  h: 'HH',
  p: 'P',
  b: 'B',
  t: 'T',
  d: 'D',
  k: 'K',
  g: 'G',
  ɡ: 'G',
  f: 'F',
  v: 'V',
  s: 'S',
  z: 'Z',
  m: 'M',
  n: 'N',
  l: 'L',
  w: 'W',
};
const theirs = new Map<string, string[][]>();
for (const line of readFileSync(join(folder, 'britfone_dev.tsv'), 'utf8').trim().split('\n').slice(1)) {
  const [word, ipa] = line.split('\t') as [string, string];
  const sounds = ipa.split(' ').map((one) => {
    const bare = one.replace(/[ˈˌ]/g, '');
    const sound = IPA[bare] ?? `?${bare}`;
    return /[ˈˌ]/.test(one) ? sound : WEAK(sound);
  });
  theirs.set(word, [...(theirs.get(word) ?? []), sounds]);
}
/** An unstressed vowel of those that are weak vowels. */
function WEAK(sound: string): string {
  return /^(AX|IH|IY|UH)$/.test(sound) ? `(${sound})` : sound;
}

function ours(reading: Reading): string[] {
  return reading.pronunciation
    .split(' ')
    .flatMap((one) => (one === 'AYA' ? ['AY', 'AX'] : one === 'AWA' ? ['AW', 'AX'] : [one]));
}

const isWeakOurs = (sound: string | undefined): boolean => /^(AX|IX|IH|IY|AH|UH|EH)$/.test(sound ?? '');
/** Whether two pronunciations agree, weak vowels aside: any for any, and one before l, m, n and r that one side leaves out. */
function agree(a: readonly string[], b: readonly string[], i = 0, j = 0): boolean {
  if (i === a.length && j === b.length) return true;
  const x = a[i];
  const y = b[j];
  const weakY = y?.startsWith('(');
  if (x !== undefined && y !== undefined) {
    if (x === y && agree(a, b, i + 1, j + 1)) return true;
    if (weakY && isWeakOurs(x) && agree(a, b, i + 1, j + 1)) return true;
    // ɪə and ʊə: one sound or two.
    if (y === 'IA' && /^I[YHX]$/.test(x) && /^(AX|IH)$/.test(a[i + 1] ?? '') && agree(a, b, i + 2, j + 1))
      return true;
    if (y === 'UA' && x === 'UW' && a[i + 1] === 'AX' && agree(a, b, i + 2, j + 1)) return true;
    if (y === '(UH)' && x === 'UW' && agree(a, b, i + 1, j + 1)) return true;
    if (x === 'Y' && y === 'IA' && a[i + 1] === 'AX' && agree(a, b, i + 2, j + 1)) return true;
  }
  if (weakY && agree(a, b, i, j + 1)) return true;
  if (x === 'AX' && agree(a, b, i + 1, j)) return true;
  return false;
}

const words = [...theirs.keys()].filter((word) => lexicon.find(word) !== null);
const common = new Set([...words].sort((x, y) => (rank.get(x) ?? 1e9) - (rank.get(y) ?? 1e9)).slice(0, 5000));
const wrong: string[] = [];
let right = 0;
let rightCommon = 0;
for (const word of words) {
  const { readings } = analyzer.analyze(word);
  const first = readings.slice(0, readings.length > 1 ? 3 : 1);
  const isRight = first.some((one) => theirs.get(word)!.some((their) => agree(ours(one), their)));
  if (isRight) right++;
  if (isRight && common.has(word)) rightCommon++;
  if (!isRight)
    wrong.push(
      `${common.has(word) ? '*' : ' '} ${word}: ${first.map((one) => one.units.map(({ letters, sound }) => `${letters}:${sound}`).join(' ')).join(' | ')} || ${theirs
        .get(word)!
        .map((one) => one.join(' '))
        .join(' | ')}`,
    );
}
console.log(
  `British readings, of ${words.length} words in both: ${((100 * right) / words.length).toFixed(1)}%; of the ${common.size} commonest: ${((100 * rightCommon) / common.size).toFixed(1)}%`,
);
if (flag === '--misses') console.log(wrong.join('\n'));
