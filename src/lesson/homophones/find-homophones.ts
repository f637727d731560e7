import { type Analyzer, rememberFor, splitKey, tokenize } from '../../analyze/index.ts';
import type { Accent } from '../../analyze/types.ts';
import { inVariety, isForeign } from '../../variety/index.ts';
import type { LessonInput } from '../lesson-input.ts';
import { isPlain } from '../plain-words.ts';
import data from './clues.json' with { type: 'json' };

/** A word that is pronounced like other words. */
export interface Homophone {
  readonly word: string;
  /**
   * The clue for a young child, which ends `the one that means …`. A word without a plain meaning has a sentence with a
   * gap instead.
   */
  readonly clue: string;
  readonly known: boolean;
  /** Whether the word may be asked for: children know it, or the passage has a word of its set. */
  readonly met: boolean;
}

/** Words pronounced alike and spelt differently: sea, see. */
export interface HomophoneSet {
  readonly words: readonly Homophone[];
  /** The words of the set that are in the passage. */
  readonly inPassage: readonly string[];
  /** Whether some accents pronounce the words differently: which and witch, where wh is pronounced with a breath. */
  readonly varies: boolean;
}

const CLUES: Readonly<Record<string, string>> = data.clues;
/**
 * Words that are pronounced alike in Britain, or in the sense that the clue means, although the word table says
 * otherwise: quay like key, lead like led.
 */
const SAID_LIKE: Readonly<Record<string, string>> = data.saidLike;
/** Words that the bank lacks or that are rare in films, but that children meet (flour, leek). */
const MET: ReadonlySet<string> = new Set(data.met.split(' '));
/**
 * The ranks of words that the bank lacks. Contractions such as you're have a rank among common words. The rest, such as
 * quay, have a rank after all other words.
 */
const CONTRACTION = 200;
const RARE = 20_000;

/**
 * Returns the sets of which the group knows at least one word. Sets with words of the passage come first, then the
 * commonest sets. The sets are computed from the usual reading of each word. The words worth teaching and their clues
 * are our own list. The list has no two spellings of one word (colour, color) and no pairs that are alike only in some
 * accents (fairy and ferry, caught and cot).
 */
export function findHomophones({ analyzer, bank, judge, known, passage }: LessonInput): HomophoneSet[] {
  const isKnown = (word: string): boolean => /^(?:reads|fresh|by-sight)$/.test(judge(word).standing);
  const inText = wordsOf(passage?.text ?? '');
  const rank = ({ word }: Homophone): number =>
    bank.find(word)?.rank ?? (word.includes("'") ? CONTRACTION : RARE);
  // The spelling of lead does not show which word is meant.
  const isMet = (word: string): boolean => {
    const { readings, homograph } = analyzer.analyze(word);
    return !homograph && (MET.has(word) || isPlain(word, readings[0]!.base, bank));
  };
  return listAlike({ analyzer, accent: known.accent })
    .map((words) => {
      const isInText = words.some((word) => inText.has(word) && isKnown(word));
      return words.map((word) => ({
        word,
        clue: inVariety(CLUES[word]!, known.accent),
        known: isKnown(word),
        met: isInText || isMet(word),
      }));
    })
    .filter((words) => words.some((word) => word.known))
    .map((words) => ({
      words,
      inPassage: words.filter((each) => each.known && inText.has(each.word)).map(({ word }) => word),
      varies:
        words.some(({ word }) => /^wh(?!o)/.test(word)) && words.some(({ word }) => /^w[^h]/.test(word)),
      last: Math.max(...words.filter((word) => word.known).map(rank)),
    }))
    .sort((a, b) => Math.sign(b.inPassage.length) - Math.sign(a.inPassage.length) || a.last - b.last)
    .map(({ words, inPassage, varies }) => ({ words, inPassage, varies }));
}

/**
 * Returns the sets of words of our list that are pronounced alike in an accent, in the spelling of its variety. The
 * sets are found once for each analyser.
 */
const listAlike = rememberFor(findAlike, ({ analyzer }) => analyzer);

function findAlike({
  analyzer,
  accent,
}: {
  readonly analyzer: Analyzer;
  readonly accent: Accent;
}): readonly (readonly string[])[] {
  const said = new Map<string, string[]>();
  for (const word of Object.keys(CLUES)) {
    if (isForeign(word, accent)) continue;
    const alike = Object.hasOwn(SAID_LIKE, word) ? SAID_LIKE[word]! : word;
    const { pronunciation } = analyzer.analyze(alike).readings[0]!;
    said.set(pronunciation, [...(said.get(pronunciation) ?? []), word]);
  }
  return [...said.values()].filter(({ length }) => length > 1);
}

/** Returns the words of a text in their usual readings: not the read that is pronounced like red. */
function wordsOf(text: string): Set<string> {
  const words = new Set<string>();
  for (const { kind, key } of tokenize(text)) {
    const { word, reading } = splitKey(key);
    if (kind === 'word' && !reading)
      words.add(word === 'I' || word.startsWith("I'") ? word : word.toLowerCase());
  }
  return words;
}
