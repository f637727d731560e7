import type { Analyzer } from '../../src/analyze/index.ts';
import type { Reading } from '../../src/analyze/types.ts';

/**
 * Britfone's symbols and our sounds, vowels first. Britfone's ʌ is ɐ. `R`, `Y` and similar names are the ARPAbet of the
 * table. We have one sound (`AYA`, `AWA`) where Britfone writes two (aɪ ə, aʊ ə).
 */
const SOUNDS: Readonly<Record<string, string>> = {
  ...{
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
  },
  ...{
    eɪ: 'EY',
    aɪ: 'AY',
    ɔɪ: 'OY',
    aʊ: 'AW',
    əʊ: 'OW',
    ʊ: 'UH',
    u: 'UW',
    uː: 'UW',
    ɪə: 'IA',
    ɛə: 'EA',
    ʊə: 'UA',
  },
  ...{
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
    ɡ: 'G',
    g: 'G',
  },
  ...{
    p: 'P',
    b: 'B',
    t: 'T',
    d: 'D',
    k: 'K',
    f: 'F',
    v: 'V',
    s: 'S',
    z: 'Z',
    m: 'M',
    n: 'N',
    l: 'L',
    w: 'W',
  },
};

/** A sound of Britfone. `weak`: whether it is a vowel that may be weak: ə, ɪ, i, ʊ and ɐ without stress. */
interface Heard {
  readonly sound: string;
  readonly weak: boolean;
}

/**
 * Reads words with their pronunciations from a Britfone file. The file has a header, then a line for each
 * pronunciation: word, tab, sounds separated by spaces. Several lines of a word are several pronunciations.
 */
export function readBritfone(file: string): Map<string, Heard[][]> {
  const words = new Map<string, Heard[][]>();
  for (const line of file.trim().split('\n').slice(1)) {
    const [word = '', ipa = ''] = line.split('\t');
    const ways = words.get(word) ?? [];
    words.set(word, ways);
    ways.push(
      ipa.split(' ').map((symbol) => {
        const bare = symbol.replace(/[ˈˌ]/g, '');
        return { sound: SOUNDS[bare] ?? bare, weak: symbol === bare && /^[əɪiʊɐ]$/.test(bare) };
      }),
    );
  }
  return words;
}

export interface BritishScore {
  readonly words: number;
  readonly right: number;
  /** How many of the words are among the commonest. */
  readonly common: number;
  readonly rightCommon: number;
  readonly wrong: readonly string[];
}

/** How many of the commonest words are counted separately. */
const COMMON = 5000;

/**
 * Counts the Britfone words in the table that are read like one of Britfone's pronunciations, ignoring stress and weak
 * vowels. A vowel that is weak on one side may be any short vowel on the other, and may be left out before l, m, n and
 * r. If we have two readings (either, a homograph), one match is enough.
 */
export function scoreBritish(
  theirs: ReadonlyMap<string, readonly (readonly Heard[])[]>,
  british: Analyzer,
  isListed: (word: string) => boolean,
  rank: ReadonlyMap<string, number>,
): BritishScore {
  const words = [...theirs.keys()].filter(isListed);
  const byRank = words.toSorted((a, b) => (rank.get(a) ?? Infinity) - (rank.get(b) ?? Infinity));
  const common = new Set(byRank.slice(0, COMMON));
  const wrong: string[] = [];
  let right = 0;
  let rightCommon = 0;
  for (const word of words) {
    const { readings } = british.analyze(word);
    const ways = theirs.get(word)!;
    if (readings.some((reading) => ways.some((way) => agree(soundsOf(reading), way)))) {
      right++;
      if (common.has(word)) rightCommon++;
    } else {
      const ours = readings.map(({ pronunciation }) => pronunciation).join(' / ');
      const told = ways.map((way) => way.map(({ sound }) => sound).join(' ')).join(' / ');
      wrong.push(`${common.has(word) ? '* ' : '  '}${word}: ${ours} | ${told}`);
    }
  }
  return { words: words.length, right, common: common.size, rightCommon, wrong };
}

const TWO: Readonly<Record<string, readonly string[]>> = { AYA: ['AY', 'AX'], AWA: ['AW', 'AX'] };

function soundsOf({ pronunciation }: Reading): string[] {
  return pronunciation.split(' ').flatMap((sound) => TWO[sound] ?? [sound]);
}

const SHORT = /^(AX|IX|IH|IY|AH|UH|EH|AE|AA|OW)$/;
const WEAK = /^(AX|IX)$/;

function agree(ours: readonly string[], theirs: readonly Heard[], i = 0, j = 0): boolean {
  if (i === ours.length && j === theirs.length) return true;
  const our = ours[i] ?? '';
  const their = theirs[j];
  const goOn = (a: number, b: number): boolean => agree(ours, theirs, i + a, j + b);
  if (their) {
    if (our === their.sound && goOn(1, 1)) return true;
    if (their.weak && SHORT.test(our) && goOn(1, 1)) return true;
    // The u of regular and individual: j ʊ, or ʊ where our vowel is long.
    if (their.weak && their.sound === 'UH' && our === 'UW' && goOn(1, 1)) return true;
    // Two vowels that Britfone merges into one: idea, usual, material.
    const next = ours[i + 1] ?? '';
    if (their.sound === 'IA' && /^(I[YHX]|Y)$/.test(our) && WEAK.test(next) && goOn(2, 1)) return true;
    if (their.sound === 'UA' && our === 'UW' && WEAK.test(next) && goOn(2, 1)) return true;
    if (their.weak && isBeforeSonorant(theirs[j + 1]?.sound) && goOn(0, 1)) return true;
  }
  return WEAK.test(our) && isBeforeSonorant(ours[i + 1]) && goOn(1, 0);
}

function isBeforeSonorant(sound: string | undefined): boolean {
  return /^[LMNR]$/.test(sound ?? '');
}
