import type { BuiltWord } from '../build/built-word.ts';
import { finerRows } from '../catalogue/catalogue.ts';
import { findRoots } from '../morphology/roots.ts';
import { shareEqual } from '../share-equal.ts';
import type { FineNeeds, FinerNeed, PatternId, Unit } from '../types.ts';

const KINDS: ReadonlyMap<PatternId, PatternId | undefined> = new Map(
  finerRows.filter(({ finer }) => finer === 'kind').map(({ id, kindOf }) => [id, kindOf]),
);
const CONTRACTIONS: Readonly<Record<string, PatternId>> = {
  not: 'contraction-not',
  will: 'contraction-will',
  is: 'contraction-is',
  have: 'contraction-have',
  would: 'contraction-would',
  are: 'contraction-are',
  am: 'contraction-are',
};
/** Endings with several sounds or spellings, by letters and sound. */
const ENDINGS: Readonly<Record<string, PatternId>> = {
  's:S': 'suffix-s-s',
  's:Z': 'suffix-s-z',
  'es:IH.Z': 'suffix-es-iz',
  's:IH.Z': 'suffix-es-iz',
  'es:Z': 'suffix-es-z',
  'ent:AX.N.T': 'suffix-ent',
};

/**
 * Lists the finer rows for the last step in the making of a word: boats has -s as /s/, can't is a contraction with not,
 * gulls' has several owners, beginning doubles a consonant in a longer base, shelves changes f to v. There is no finer
 * row for let's, because let's is not a kind of its own.
 * @param baseSyllables Number of syllables in the word's base.
 */
export function listKinds(
  { affixes }: BuiltWord,
  units: readonly Unit[],
  baseSyllables: number,
): FinerNeed[] {
  const outer = affixes.at(-1);
  if (!outer) return [];
  const ids: (PatternId | undefined)[] = [];
  if (outer.kind === 'contraction') ids.push(CONTRACTIONS[outer.text]);
  if (outer.kind === 'possessive') ids.push(outer.text === "'" ? 'possessive-several' : 'possessive-one');
  if (outer.change === 'f-to-v') ids.push('change-f-to-v');
  if (outer.change === 'double' && baseSyllables > 1) ids.push('change-double-longer');
  const unit = units.at(-1);
  if (outer.kind === 'suffix' && unit?.affix) ids.push(ENDINGS[`${unit.letters}:${unit.sound}`]);
  return ids
    .filter((id) => id !== undefined)
    .map((row) => {
      const kindOf = KINDS.get(row);
      return { row, of: kindOf === undefined ? [] : [kindOf] };
    });
}

/** Lists the roots of a whole word as needs, and the parts into which the roots divide it. */
export function listRoots(word: string): { readonly finer: FinerNeed[]; readonly parts?: readonly string[] } {
  const rooted = findRoots(word);
  if (!rooted) return { finer: [] };
  const finer = rooted.rows.map((row) => ({ row, of: [] }));
  return rooted.parts.length > 1 ? { finer, parts: rooted.parts } : { finer };
}

/**
 * Returns the needs by finer rows. Returns undefined if there are no finer rows, because then every group has the same
 * needs. `requires` are the needs without finer rows. Where the rest is the same, both share one list, since a judge
 * keeps the lists of all words of a text. Equal lists of finer needs are one list for the same reason.
 */
export function fineNeeds(
  rest: Iterable<PatternId>,
  finer: readonly FinerNeed[],
  requires: readonly PatternId[] = [],
): FineNeeds | undefined {
  if (finer.length === 0) return undefined;
  const own = new Set(rest);
  const isSame = own.size === requires.length && requires.every((id) => own.has(id));
  return { rest: isSame ? requires : [...own].sort(), finer: finerOnce([...new Set(finer.map(needOnce))]) };
}

const nameOfNeed = ({ row, of }: FinerNeed): string => (of.length === 0 ? row : `${row} ${of.join(' ')}`);
/** Returns a name for a list of needs, for `shareEqual`. */
export const nameOfNeeds = (finer: readonly FinerNeed[]): string => finer.map(nameOfNeed).join(', ');
const needOnce = shareEqual(nameOfNeed);
const finerOnce = shareEqual(nameOfNeeds);
