import type { Affix, PatternId } from '../../analyze/types.ts';
import type { KnownWord, KnownWords } from '../known-words.ts';

/** A word of two parts, both of which the group can read: hope + ing. */
export interface TwoPartWord {
  readonly word: KnownWord;
  readonly base: string;
  readonly affix: Affix;
  /** What the ending or beginning is called, the change it makes, `compound`; by their ids. */
  readonly patterns: readonly PatternId[];
  /** How the affix is said (`T` for the ed of jumped); null for a compound. */
  readonly sound: string | null;
}

const found = new WeakMap<KnownWords, readonly TwoPartWord[]>();

/**
 * The words a group can read that are a base it can read with one thing added, commonest first: hoping, unpack, raincoat; not
 * hopefully (two endings), nor a word whose base is not known yet.
 */
export function builtWords(known: KnownWords): readonly TwoPartWord[] {
  let built = found.get(known);
  if (!built) {
    built = known.words.flatMap((word) => build(word, known));
    found.set(known, built);
  }
  return built;
}

function build(word: KnownWord, known: KnownWords): TwoPartWord[] {
  const { base, affixes, units, requires, madeOf, source } = word.reading;
  const [affix] = affixes;
  if (base === null || affix === undefined || affixes.length > 1 || word.homograph) return [];
  if (!/suffix|prefix|compound/.test(affix.kind) || source === 'guess' || !known.reads(base)) return [];
  if (affix.kind === 'compound' && !known.reads(affix.text)) return [];
  // A k is added to panic before -ed: no rule of these lessons.
  if (affix.kind === 'suffix' && affix.change === 'none' && base + affix.text !== word.word) return [];
  const added = units.filter((unit) => unit.affix === affix.kind);
  const [unit] = added;
  if (affix.kind !== 'compound' && (added.length !== 1 || unit === undefined)) return [];
  // The dropped e of filmmaker is that of maker.
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
