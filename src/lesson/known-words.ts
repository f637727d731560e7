import type { Analyzer, Judge, SoundStyle } from '../analyze/index.ts';
import { hasBit, neededOf, soundStyleOf, tokenize } from '../analyze/index.ts';
import type { Accent, PatternId, Reading, WordAnalysis } from '../analyze/types.ts';
import { isForeign } from '../variety/index.ts';
import type { BankWord, WordBank } from './word-bank.ts';

/** A word of the bank that the group can read. */
export interface KnownWord extends BankWord {
  readonly standing: 'reads' | 'fresh' | 'by-sight';
  /** The usual reading, with the requirements that count for the group. Any other reading of a homograph may be meant. */
  readonly reading: Reading;
  readonly homograph: boolean;
}

/** The words that a group can read, in its own variety of English: harbour or harbor. */
export interface KnownWords {
  /** The accent of English in which the group's words are pronounced. */
  readonly accent: Accent;
  /** The notation in which sounds are written. */
  readonly style: SoundStyle;
  /** The words of the bank the group can read, commonest first. */
  readonly words: readonly KnownWord[];
  find(word: string): KnownWord | undefined;
  /** The analyses of all words of the bank, known or not, in its order. They show how English as a whole behaves. */
  readonly analyses: readonly WordAnalysis[];
  /** Whether a pattern counts as known. */
  knows(id: PatternId): boolean;
  /**
   * Whether the group can read every word of a text. The words may be missing from the bank and of either variety. The
   * group's own names count as readable.
   */
  reads(text: string): boolean;
}

const KNOWN: ReadonlySet<string> = new Set(['reads', 'fresh', 'by-sight']);

/** Finds the words a group can read. The analyses are made once for a bank and an accent, for any number of groups. */
export function createKnownWords(bank: WordBank, analyzer: Analyzer): (judge: Judge) => KnownWords {
  const inSpeech = new Map<Analyzer, readonly WordAnalysis[]>();
  return (judge) => {
    const spoken = analyzer.speaking(judge.group.speech);
    const all = inSpeech.get(spoken) ?? bank.words.map(({ word }) => spoken.analyze(word));
    inSpeech.set(spoken, all);
    const { accent } = judge.group;
    const words = bank.words.flatMap((each, i): KnownWord[] => {
      if (isForeign(each.word, accent)) return [];
      const { standing } = judge(each.word);
      const { readings, homograph } = all[i]!;
      if (!KNOWN.has(standing)) return [];
      const usual = readings[0]!;
      const requires = neededOf(usual, judge.group);
      const reading = requires === usual.requires ? usual : { ...usual, requires };
      return [{ ...each, standing: standing as KnownWord['standing'], reading, homograph }];
    });
    const byName = new Map(words.map((each) => [each.word, each]));
    return {
      accent,
      style: soundStyleOf(judge.group),
      words,
      analyses: all,
      find: (word) => byName.get(word) ?? byName.get(word.toLowerCase()),
      knows: (id) => hasBit(judge.group.taught, id),
      reads: (text) =>
        tokenize(text).every(({ kind, key, start, end }) => {
          if (kind === 'skipped') return false;
          const shown = text.slice(start, end).replace(/['’]s?$/, '');
          const small = shown.toLowerCase();
          const { names, smallNames } = judge.group;
          const isOwn = smallNames.has(small) || (shown !== small && names.has(small));
          return isOwn || KNOWN.has(judge(key).standing);
        }),
    };
  };
}
