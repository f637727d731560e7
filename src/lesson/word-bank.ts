/**
 * The parts of speech of a word: `n` noun, `v` verb, `a` adjective, `r` adverb. A word may have several, the likeliest
 * first: `nv`.
 */
export type Parts = string;

/** A word fit for a lesson. */
export interface BankWord {
  readonly word: string;
  /** Place by frequency among the words of the bank, 1 for the commonest. */
  readonly rank: number;
  /** Empty for words of grammar (the, with). */
  readonly parts: Parts;
  /** A few words that explain the word; empty where no short text does, as for forms of other words (nets). */
  readonly meaning: string;
}

/** The words lessons are made of, commonest first. */
export interface WordBank {
  readonly words: readonly BankWord[];
  find(word: string): BankWord | undefined;
}

/**
 * Opens the text of `lesson-words.tsv` (made by `npm run data`). Each line has a word, its parts of speech and its
 * meaning.
 */
export function openWordBank(text: string): WordBank {
  const words = text
    .split('\n')
    .filter((line) => line !== '')
    .map((line, i): BankWord => {
      const [word = '', parts = '', meaning = ''] = line.split('\t');
      return { word, rank: i + 1, parts, meaning };
    });
  const byName = new Map(words.map((each) => [each.word, each]));
  return { words, find: (word) => byName.get(word) };
}
