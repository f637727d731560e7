import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { loadAnalyzer } from './load-analyzer.ts';

/**
 * Outside source: England's national curriculum 2013, English Appendix 1: Spelling (Open Government Licence). Its
 * patterns and their example words were written down from memory. Each pattern is named by its first words in that
 * document. Each example must need one of the catalogue rows beside its pattern.
 */
const ROWS: readonly (readonly [pattern: string, ...ids: string[]])[] = [
  ['ff, ll, ss, zz, ck', 'ff', 'll', 'ss', 'zz', 'ck'],
  ['n before k', 'n-ng'],
  ['division of words into syllables', 'syllables-2', 'compound'],
  ['tch', 'tch'],
  ['ve (', 've'],
  ['adding s and es', 'suffix-s', 'suffix-es'],
  [
    'adding -ing, -ed, -er, no change',
    'suffix-ing',
    'suffix-ed-t',
    'suffix-ed-d',
    'suffix-ed-id',
    'suffix-er',
  ],
  ['adding -er, -est, no change', 'suffix-er', 'suffix-est'],
  ['air', 'air'],
  ['are (', 'are'],
  ['ai', 'ai'],
  ['oi', 'oi'],
  ['ay', 'ay'],
  ['oy', 'oy'],
  ['a-e', 'a_e'],
  ['e-e', 'e_e'],
  ['i-e', 'i_e'],
  ['o-e', 'o_e'],
  ['u-e', 'u_e-oo', 'u_e-yoo'],
  ['ar after w', 'ar-or', 'our-or', 'or'],
  ['ar', 'ar'],
  ['ee', 'ee'],
  ['ea (/iː/)', 'ea-long-e'],
  ['ea (/ɛ/)', 'ea-short-e'],
  ['er (', 'er', 'suffix-er'],
  ['ir', 'ir'],
  ['ur', 'ur'],
  ['oo (/uː/)', 'oo-moon'],
  ['oo (/ʊ/)', 'oo-book'],
  ['oa', 'oa'],
  ['oe', 'oe', 'o-long-closed', 'long-o'],
  ['ou (/ʌ/)', 'ou-short-u'],
  ['ou', 'ou-ow'],
  ['ow (/aʊ/)', 'ow-ow'],
  ['ow (/əʊ/)', 'ow-long-o'],
  ['ue', 'ue-oo', 'ue-yoo'],
  ['ew', 'ew-oo', 'ew-yoo'],
  ['ie (/aɪ/)', 'ie-long-i', 'y-long-i'],
  ['ie (/iː/)', 'ie-long-e'],
  ['igh', 'igh'],
  ['or after w', 'or-er'],
  ['ore', 'ore'],
  ['or', 'or'],
  ['aw', 'aw'],
  ['au', 'au', 'our-or', 'irregular'],
  ['ear (/ɪə/)', 'ear-eer'],
  ['ear (/ɛə/)', 'ear-air'],
  ['-y (/iː/', 'y-long-e', 'suffix-y'],
  ['ph', 'ph'],
  ['wh', 'wh'],
  ['k (', 'k'],
  ['prefix un-', 'prefix-un'],
  ['compound words', 'compound'],
  ['dge', 'dge'],
  ['ge (', 'soft-g', 'age', 'suffix-age'],
  ['g (', 'soft-g'],
  ['j (', 'j', 'd-j', 'irregular'],
  ['c (', 'soft-c'],
  ['kn', 'kn'],
  ['gn', 'gn'],
  ['wr', 'wr'],
  ['-le', 'consonant-le'],
  ['-el', 'schwa-e'],
  ['-al', 'schwa-a', 'suffix-al'],
  ['-il', 'schwa-i', 'short-i'],
  ['-y (/aɪ/)', 'y-long-i'],
  ['adding -es to nouns and verbs ending in -y', 'change-y-to-i'],
  ['adding -ed, -ing, -er, -est to a root ending in consonant + y', 'change-y-to-i', 'suffix-ing'],
  ['adding -ing, -ed, -er, -est, -y to a root ending in -e', 'change-drop-e'],
  ['doubling', 'change-double'],
  ['a before l', 'a-before-l', 'al-aw'],
  ['o (/ʌ/)', 'o-short-u'],
  ['-ey', 'ey-long-e'],
  ['a after w', 'a-after-w'],
  ['s (/ʒ/)', 's-zh', 'sure', 'sion-zh'],
  ['suffixes -ment', 'suffix-ment', 'suffix-ness', 'suffix-ful', 'suffix-less', 'suffix-ly'],
  ['contractions', 'contraction'],
  ['possessive', 'possessive'],
  ['-tion', 'tion', 'tion-ch'],
  [
    'suffix beginning with a vowel',
    'change-double',
    'suffix-ing',
    'suffix-er',
    'suffix-ed-id',
    'suffix-ation',
    'suffix-en',
  ],
  ['y (/ɪ/ not at the end)', 'y-short-i'],
  ['prefix dis-', 'prefix-dis'],
  ['prefix mis-', 'prefix-mis'],
  ['prefix in-', 'prefix-in'],
  ['prefix il-', 'prefix-il'],
  ['prefix im-', 'prefix-im'],
  ['prefix ir-', 'prefix-ir'],
  ['prefix re-', 'prefix-re'],
  ['prefix sub-', 'prefix-sub'],
  ['prefix inter-', 'prefix-inter'],
  ['prefix super-', 'prefix-super'],
  ['prefix anti-', 'prefix-anti'],
  ['prefix auto-', 'prefix-auto'],
  ['suffix -ation', 'suffix-ation', 'tion'],
  ['suffix -ly', 'suffix-ly'],
  ['-sure', 'sure'],
  ['-ture', 'ture'],
  ['-sion (/ʒən/)', 'sion-zh'],
  ['suffix -ous', 'suffix-ous', 'ous', 'gious'],
  ['-ssion', 'sion-sh'],
  ['-sion (/ʃən/)', 'sion-sh'],
  ['-cian', 'cian'],
  ['ch (/k/)', 'ch-k'],
  ['ch (/ʃ/)', 'ch-sh'],
  ['-gue', 'gue', 'irregular'],
  ['-que', 'que'],
  ['sc (/s/)', 'sc'],
  ['ei, eigh, ey', 'ei-long-a', 'eigh', 'ey-long-a'],
];

/** Examples that do not need the row they are listed under, each with its reason. */
const EXCEPTIONS: Readonly<Record<string, string>> = {
  antiseptic: 'septic is rare: taught as one word',
  autograph: 'graph is not its meaning: taught as one word',
  intercity: 'not found in the lists that show kinship',
  prefer: 'stands there as the base of preferred',
  superstar: 'found as super and star, a compound',
  disappoint: 'appoint is not heard as its base today: taught as part of the word',
  disobey: 'obey is weak in it in the dictionary',
  forgotten: 'gotten: the past form is irregular, not forgot + en',
  irresponsible: 'the dictionary says one weak i before it',
  nobly: 'able and noble lose their weak vowel before -ly: the dictionary joins b and l',
  redo: 'not found as re + do: do changes little, to be corrected',
  refresh: 'fresh is an adjective; re- joins verbs and nouns',
  resubmit: 'not in the dictionary',
};

const source = new URL('../../shared/data/england_nc_appendix1.tsv', import.meta.url);

describe.skipIf(!existsSync(source))(
  'England’s national curriculum 2013, English Appendix 1 (from memory)',
  () => {
    const analyzer = loadAnalyzer();
    const examples = (existsSync(source) ? readFileSync(source, 'utf8') : '')
      .trimEnd()
      .split('\n')
      .slice(1)
      .map((line) => line.split('\t'))
      .filter(([, , , , role]) => role === 'example');

    test('each example needs the pattern it is listed under', () => {
      const strays: string[] = [];
      let checked = 0;
      for (const [, , pattern = '', word = ''] of examples) {
        const row = ROWS.find(([start]) => pattern.startsWith(start));
        const { readings } = analyzer.analyze(word);
        if (!row || readings[0]!.source === 'none') continue;
        checked++;
        const [, ...ids] = row;
        if (readings.some(({ requires }) => ids.some((id) => requires.includes(id)))) continue;
        if (!(word in EXCEPTIONS))
          strays.push(`${pattern}: ${word} needs ${readings[0]!.requires.join(' ')}`);
      }
      expect(strays).toEqual([]);
      expect(checked).toBeGreaterThan(500);
    });
  },
);
