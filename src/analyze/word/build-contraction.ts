import { hasVowel } from '../alignment/sounds.ts';
import type { FindBuilt } from '../build/build-word.ts';
import type { BuiltWord, WordPart } from '../build/built-word.ts';
import { spellingsOf } from '../build/built-word.ts';
import { readCorrespondence } from '../lexicon/read-correspondence.ts';

/** The sounds of each ending: after a vowel, then after a consonant. */
const SHORT_FORMS: readonly (readonly [
  ending: string,
  word: string,
  afterVowel: string,
  afterConsonant: string,
])[] = [
  ["n't", 'not', 'N.T', 'AX.N.T'],
  ["'ve", 'have', 'V', 'AX.V'],
  ["'ll", 'will', 'L', 'AX.L'],
  ["'re", 'are', 'R', 'ER'],
  ["'d", 'would', 'D', 'AX.D'],
  ["'m", 'am', 'M', 'AX.M'],
  ["'s", 'is', 'Z', 'Z'],
];

/** Words after which 's is short for is. After any other word 's shows an owner. */
const WITH_IS = new Set(
  'he she it that this what who where when why how there here everything something nothing'.split(' '),
);
const VOICELESS = /(^|\.)(P|T|K|F|TH)$/;

/**
 * Contractions whose sounds differ from their base and ending. Each has the word, its base, the units before the
 * ending, the ending, and the word the ending is short for.
 */
const IRREGULAR: Readonly<
  Record<string, readonly [base: string, units: string, ending: string, word: string]>
> = {
  "ain't": ['is', 'ai:EY n:N', "'t:T", 'not'],
  "can't": ['can', 'c:K a:AE n:N', "'t:T", 'not'],
  "don't": ['do', 'd:D o:OW n:N', "'t:T", 'not'],
  "let's": ['let', 'l:L e:EH t:T', "'s:S", 'us'],
  "mustn't": ['must', 'm:M u:AH st:S', "n't:AX.N.T", 'not'],
  "shan't": ['shall', 'sh:SH a:AE n:N', "'t:T", 'not'],
  "they're": ['they', 'th:DH ey:EH', "'re:R", 'are'],
  "we're": ['we', 'w:W e:IH', "'re:R", 'are'],
  "won't": ['will', 'w:W o:OW n:N', "'t:T", 'not'],
  "you're": ['you', 'y:Y ou:UH', "'re:R", 'are'],
};

/**
 * Contractions whose base is pronounced as it is alone, or nearly so. won't is not one of these, because nothing of
 * will is left in it.
 */
const KEEPS_BASE = new Set(["can't", "let's", "mustn't", "they're", "we're", "you're"]);

/**
 * Builds a word shortened with an apostrophe: he's, isn't, won't. Returns null for other words, such as the possessive
 * gull's.
 */
export function buildContraction(word: string, find: FindBuilt): BuiltWord | null {
  const listed = IRREGULAR[word];
  if (listed) {
    const [base, units, ending, full] = listed;
    return contraction(
      [{ role: 'base', spellings: units.split(' ').map(readCorrespondence) }],
      base,
      readCorrespondence(ending),
      full,
      KEEPS_BASE.has(word) ? find(base)[0] : undefined,
    );
  }
  for (const [ending, full, afterVowel, afterConsonant] of SHORT_FORMS) {
    if (!word.endsWith(ending)) continue;
    const base = word.slice(0, -ending.length);
    if (ending === "'s" && !WITH_IS.has(base)) continue;
    const built = find(base)[0];
    if (!built) continue;
    const last = spellingsOf(built).findLast((one) => one.sound !== '-')?.sound ?? '';
    const usual = hasVowel(last.split('.').at(-1)!) ? afterVowel : afterConsonant;
    const sound = ending === "'s" && VOICELESS.test(last) ? 'S' : usual;
    // doesn't is does + not. The parts of does do not matter here.
    return contraction(
      [{ role: 'base', spellings: spellingsOf(built) }],
      base === 'i' ? 'I' : base,
      { letters: ending, sound },
      full,
      built,
    );
  }
  return null;
}

function contraction(
  parts: readonly WordPart[],
  base: string,
  ending: { letters: string; sound: string },
  full: string,
  from: BuiltWord | undefined,
): BuiltWord {
  return {
    parts: [...parts, { role: 'clitic', spellings: [ending] }],
    base,
    affixes: [{ text: full, kind: 'contraction', change: 'none' }],
    ...(from ? { from: [{ word: base.toLowerCase(), built: from }] } : {}),
  };
}
