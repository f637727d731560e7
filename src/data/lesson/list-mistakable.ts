import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Analyzer, createAnalyzer, openGuesser, openLexicon } from '../../analyze/index.ts';
import { asHeard } from '../../lesson/word-lists/as-heard.ts';
import { fingerprint } from '../../lesson/word-lists/fingerprint.ts';
import { isLegal } from '../../lesson/word-lists/is-legal.ts';
import { readCapitalised, readFrequency } from '../read-frequency.ts';
import { readUnfitWords } from '../read-unfit-words.ts';
import { readWordList } from '../read-word-list.ts';
import { readWordnet } from '../read-wordnet.ts';

/** The lists of `mistakable.json`. Each list has fingerprints, separated by spaces and sorted. */
export interface MistakableLists {
  /** Fingerprints of the letters of coarse words and insults of three to six letters. */
  readonly letters: string;
  /** Fingerprints of the words of four letters and more, without the last letter. */
  readonly starts: string;
  /**
   * The sounds of coarse words of one syllable. For longer words, the sounds of the first syllable if it ends in a
   * consonant.
   */
  readonly sounds: string;
  /** Fingerprints of the consonants around the vowel of the coarsest words. */
  readonly frames: string;
  /**
   * Fingerprints of words of one syllable that the word table lacks (from the subtitles' list and WordNet), and of
   * well-known names (pete).
   */
  readonly words: string;
  /**
   * Fingerprints of the sounds of the words in `words` and of the table's words of one syllable. Rare names and rare
   * forms with endings are left out, but lesson words (quays) are included.
   */
  readonly homophones: string;
}

/** The rank in film subtitles from which forms with endings (frays) are too rare for a child to think of. */
const RARE = 40_000;

/** The rank up to which a child may know a name (nate). */
const KNOWN_NAME = 12_000;

/** Consonant frames in which another vowel would be taken for a slip of a coarse word. */
const FRAMES = ['SH * T', 'F * K', 'K * N T', 'B * CH', 'F * K S', 'SH * T S'];

/** Letters that may be one syllable: one run of vowel letters, and a last e, es or ed. */
const SHORT = /^[b-df-hj-np-tv-z]*y?[aeiouy]+[b-df-hj-np-tv-z]*(e|es|ed)?$/;

/** Makes the lists that prevent made-up words from being real words and from looking or sounding coarse. */
export function listMistakable(analyzer: Analyzer): MistakableLists {
  const unfit = [...readUnfitWords(), ...readWordList('slang.txt')].filter((word) =>
    /^[a-z]{3,8}$/.test(word),
  );
  const short = unfit.filter(({ length }) => length < 7);
  const sounds = unfit.flatMap((word) =>
    analyzer.analyze(word).readings.flatMap(({ pronunciation }) => {
      const first = /^(?:[B-DF-HJ-NP-TV-Z][A-Z]* )*[AEIOU][A-Z](?: [B-DF-HJ-NP-TV-Z][A-Z]*)+/.exec(
        pronunciation,
      )?.[0];
      return first === undefined || first.split(' ').length < 3 ? [] : [first];
    }),
  );
  const { words, homophones } = listWords(analyzer);
  return {
    letters: join(short),
    starts: join(short.filter(({ length }) => length > 3).map((word) => word.slice(0, -1))),
    sounds: join(sounds),
    frames: join(FRAMES),
    words: join(words),
    homophones: join(homophones),
  };
}

/** Returns the words of one syllable for `words`, and the sounds of the words for `homophones`. */
function listWords(analyzer: Analyzer): { words: string[]; homophones: string[] } {
  const words: string[] = [];
  const homophones: string[] = [];
  const ranks = readFrequency();
  const capitals = readCapitalised();
  const names = readWordList('first-names.txt');
  const ofLessons = readWordList('more-lesson-words.txt');
  const rankOf = (word: string, otherwise: number): number => ranks.get(word) ?? otherwise;
  const isName = (word: string): boolean =>
    names.has(word) || (capitals.has(word) && rankOf(word, KNOWN_NAME) < KNOWN_NAME);
  const isListed = (word: string, usage: string, hasAffix: boolean): boolean =>
    ofLessons.has(word) || (/common|rare/.test(usage) && (!hasAffix || rankOf(word, RARE) < RARE));
  for (const word of new Set([...ranks.keys(), ...readWordnet().lemmas.keys(), ...ofLessons, ...names])) {
    if (word.length < 3 || word.length > 8 || !SHORT.test(word)) continue;
    const { readings, usage } = analyzer.analyze(word);
    const { source, pronunciation, syllables, affixes } = readings[0]!;
    const isShort = syllables.length === 1;
    const isMissing = (source === 'rule' && isLegal(word)) || (isShort && isName(word));
    if (isMissing) words.push(word);
    if (isMissing || (isShort && isListed(word, usage ?? '', affixes.length > 0)))
      homophones.push(asHeard(pronunciation));
  }
  return { words, homophones };
}

function join(texts: readonly string[]): string {
  return [...new Set(texts.map(fingerprint))].sort().join(' ');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const file = (path: string): URL => new URL(`../../../${path}`, import.meta.url);
  const analyzer = createAnalyzer(
    openLexicon(readFileSync(file('public/data/lexicon.bin'))),
    openGuesser(readFileSync(file('public/data/guess.bin'))),
  );
  const lists = `${JSON.stringify(listMistakable(analyzer), null, 2)}\n`;
  writeFileSync(file('src/lesson/word-lists/mistakable.json'), lists);
}
