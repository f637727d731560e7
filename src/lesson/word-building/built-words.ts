import { rememberFor } from '../../analyze/index.ts';
import type { Affix, PatternId } from '../../analyze/types.ts';
import type { KnownWord, KnownWords } from '../known-words.ts';

/** A word of two parts, both of which the group can read: hope + ing. */
export interface TwoPartWord {
  readonly word: KnownWord;
  readonly base: string;
  readonly affix: Affix;
  /** The ids of the ending or beginning and of the change it makes, or `compound`. */
  readonly patterns: readonly PatternId[];
  /** The sound of the affix (`T` for the ed of jumped); null for a compound. */
  readonly sound: string | null;
}

/**
 * Returns the words a group can read that are a readable base with one addition, commonest first: hoping, unpack,
 * raincoat. Words such as hopefully (two endings) and words whose base is not known yet are left out.
 */
export const builtWords = rememberFor((known: KnownWords): readonly TwoPartWord[] =>
  known.words.flatMap((word) => build(word, known)),
);

function build(word: KnownWord, known: KnownWords): TwoPartWord[] {
  const { base, affixes, units, requires, madeOf, source } = word.reading;
  const [affix] = affixes;
  if (base === null || affix === undefined || affixes.length > 1) return [];
  if (word.homograph || source === 'guess' || !isOfTwoParts(word.word, base, affix, known)) return [];
  const added = units.filter((unit) => unit.affix === affix.kind);
  const [unit] = added;
  if (affix.kind !== 'compound' && (added.length !== 1 || unit === undefined)) return [];
  // The dropped e of filmmaker belongs to maker.
  const changes = (madeOf?.joint ?? requires).filter((id) => id.startsWith('change-') || id === 'compound');
  return [
    {
      word,
      base,
      affix,
      patterns: unit ? [unit.pattern, ...changes] : changes,
      sound: unit?.sound ?? null,
    },
  ];
}

/**
 * Whether the group can read both parts of a word, and the parts make the word. False for panicked, because no rule of
 * these lessons adds the k.
 */
function isOfTwoParts(word: string, base: string, { kind, text, change }: Affix, known: KnownWords): boolean {
  if (!/suffix|prefix|compound/.test(kind) || !known.reads(base)) return false;
  if (kind === 'compound') return known.reads(text);
  return kind !== 'suffix' || change !== 'none' || base + text === word;
}
