import { countVowels } from '../alignment/sounds.ts';
import type { BuiltWord, WordSpelling } from '../build/built-word.ts';
import { finerRows } from '../catalogue/catalogue.ts';
import { shareEqual } from '../share-equal.ts';
import type {
  FineNeeds,
  FinerNeed,
  MadeOf,
  PatternId,
  Reading,
  Syllable,
  SyllableType,
  Unit,
} from '../types.ts';
import { findBlends } from './find-blends.ts';
import { findEndings } from './find-endings.ts';
import { IRREGULAR } from './irregular.ts';
import { fineNeeds, listKinds, listRoots, nameOfNeeds } from './list-finer.ts';

const TYPE_ROWS: Partial<Record<SyllableType, PatternId>> = {
  closed: 'type-closed',
  open: 'type-open',
  vce: 'type-vce',
  team: 'type-team',
  'r-controlled': 'type-r',
};
const CHANGE_ROWS: Readonly<Record<string, PatternId>> = {
  double: 'change-double',
  'drop-e': 'change-drop-e',
  'y-to-i': 'change-y-to-i',
};
/** Vowels that have a row of their own in every open syllable: the weak a of about, the final y of happy and July. */
const NEEDS_NO_TYPE = /^y:|:(AX|IX)$/;

/** A word that another word is made of, with its own reading. */
export interface ReadPart {
  readonly word: string;
  readonly reading: Reading;
}

/** A word with named units and divided syllables. */
export interface WordToRequire {
  readonly word: string;
  readonly units: readonly Unit[];
  readonly syllables: readonly Syllable[];
  /** The vowel of each syllable. */
  readonly vowels: readonly (WordSpelling | undefined)[];
  /** The division patterns of the word's bases. */
  readonly divisions: readonly PatternId[];
}

/**
 * Lists all patterns that a reader needs for one reading, sorted, without repeats.
 *
 * - A whole word needs the patterns of its units, the blends of its base and its length in syllables. A longer word
 * also needs its syllable types.
 * - A word built from others needs the patterns of its parts and the patterns of the joining: its ending or beginning, the
 * spelling change, its kind (compound, contraction, possessive), and letters with another sound than in the parts. So
 * funnier needs funny, -er and y to i, and nothing more.
 * - A word that only derives from another (confusion) needs the patterns of its own letters.
 */
export function listRequirements(
  built: BuiltWord,
  given: WordToRequire,
  parts: readonly ReadPart[],
): Pick<Reading, 'requires' | 'fine' | 'madeOf' | 'roots'> {
  return parts.length === 0 ? requireWhole(built, given) : requireMade(built, given, parts);
}

/** Returns the needs of a word that is not made of other words. */
function requireWhole(
  built: BuiltWord,
  { word, units, syllables, vowels, divisions }: WordToRequire,
): Pick<Reading, 'requires' | 'fine' | 'roots'> {
  const { endings, outside, divided } = findFiner(built, units, divisions);
  const own = ownNeeds(built, units, syllables, vowels);
  const { finer, parts: roots } = listRoots(word);
  const rest = new Set(endings.length > 0 ? ownNeeds(built, outside, syllables, vowels) : own);
  for (const { of } of endings) if (of.includes('end-nt')) rest.delete('end-nt');
  const kinds = listKinds(built, units, 0);
  for (const { of } of kinds) for (const id of of) rest.delete(id);
  const requires = sorted(own);
  const fine = fineNeeds(rest, [...endings, ...divided, ...finer, ...kinds], requires);
  return { requires, ...(fine && { fine }), ...(roots && { roots }) };
}

/**
 * Returns the parts of a word that the finer rows of the catalogue need: its endings, the units outside of its endings,
 * and its divisions.
 */
function findFiner(built: BuiltWord, units: readonly Unit[], divisions: readonly PatternId[]) {
  const endings = findEndings(built.parts, units);
  const covered = new Set(endings.flatMap((ending) => ending.units));
  return {
    endings,
    outside: units.filter((_, i) => !covered.has(i)),
    divided: divisions.map((row): FinerNeed => ({ row, of: [] })),
  };
}

/** Returns the needs of a word that is put together from other words. */
function requireMade(
  built: BuiltWord,
  { word, units, syllables, vowels, divisions }: WordToRequire,
  parts: readonly ReadPart[],
): Pick<Reading, 'requires' | 'fine' | 'madeOf' | 'roots'> {
  const { endings, outside, divided } = findFiner(built, units, divisions);
  const ofParts = new Set(parts.flatMap(({ reading }) => reading.requires));
  const joining = joiningNeeds(built, units);
  const own = built.ownSpellings
    ? ownNeeds(built, units, syllables, vowels)
    : new Set(units.map(({ pattern }) => pattern));
  const joint = new Set([...joining, ...[...own].filter((id) => !ofParts.has(id))]);
  // A reader who knows “you” as a whole word can read “you're”, regardless of the pronunciation of its ou.
  if (built.affixes.at(-1)?.kind === 'contraction') joint.delete(IRREGULAR);
  else if (built.ownSpellings && hasOtherIrregular(units, parts)) joint.add(IRREGULAR);
  const kinds = listKinds(built, units, parts[0]!.reading.syllables.length);
  const fineJoint = fineNeeds(
    [...joint].filter((id) => !kinds.some(({ of }) => of.includes(id))),
    kinds,
  );
  const madeOf: MadeOf = {
    parts: parts.map(({ word, reading: { requires, fine, madeOf } }) => ({
      word,
      requires,
      ...(fine ? { fine } : {}),
      ...(madeOf ? { madeOf } : {}),
    })),
    joint: jointOnce(sorted(joint)),
    ...(fineJoint && { fineJoint: fineJointOnce(fineJoint) }),
  };
  const requires = sorted(built.ownSpellings ? [...own, ...joining] : [...ofParts, ...own, ...joint]);
  const ofKinds = new Set(kinds.flatMap(({ of }) => of));
  const ownRest = (
    built.ownSpellings
      ? [...ownNeeds(built, outside, syllables, vowels), ...joining]
      : [...outside.map(({ pattern }) => pattern), ...joint]
  ).filter((id) => !ofKinds.has(id));
  const partsRest = built.ownSpellings
    ? []
    : parts.flatMap(({ reading: { requires, fine } }) => fine?.rest ?? requires);
  const rooted = built.affixes.at(-1)?.kind === 'prefix' ? listRoots(word) : { finer: [] };
  const partsFiner = parts.flatMap(({ reading: { fine } }) =>
    (fine?.finer ?? []).filter(({ row }) => !built.ownSpellings || ROOTED.has(row)),
  );
  const fine = fineNeeds(
    [...ownRest, ...partsRest],
    [...endings, ...(built.ownSpellings ? divided : []), ...kinds, ...rooted.finer, ...partsFiner],
    requires,
  );
  const roots = rooted.parts ?? parts.find(({ reading }) => reading.roots)?.reading.roots;
  return { requires, ...(fine && { fine }), ...(roots && { roots }), madeOf };
}

const ROOTED: ReadonlySet<PatternId> = new Set(
  finerRows.filter(({ finer }) => finer === 'root').map(({ id }) => id),
);

/** A judge keeps the joint of every word of a text, and most joints are equal to others. */
const jointOnce = shareEqual((ids: readonly PatternId[]) => ids.join(' '));
const fineJointOnce = shareEqual(({ rest, finer }: FineNeeds) => `${rest.join(' ')}: ${nameOfNeeds(finer)}`);

/** Returns the needs of the last step in the making of a word. */
function joiningNeeds({ affixes }: BuiltWord, units: readonly Unit[]): PatternId[] {
  const outer = affixes.at(-1);
  if (!outer) return [];
  const unit = outer.kind === 'prefix' ? units[0] : units.at(-1);
  const ids = unit?.affix ? [unit.pattern] : [];
  const change = CHANGE_ROWS[outer.change];
  if (change) ids.push(change);
  if (/compound|contraction|possessive/.test(outer.kind)) ids.push(outer.kind);
  return ids;
}

function ownNeeds(
  built: BuiltWord,
  units: readonly Unit[],
  syllables: readonly Syllable[],
  vowels: readonly (WordSpelling | undefined)[],
): Set<PatternId> {
  const ids = new Set<PatternId>(units.map((unit) => unit.pattern));
  let longest = 0;
  for (const part of built.parts) {
    if (part.role !== 'base') continue;
    for (const id of findBlends(part.spellings)) ids.add(id);
    longest = Math.max(longest, countSyllables(part.spellings));
  }
  if (longest === 2) ids.add('syllables-2');
  if (longest > 2) ids.add('syllables-3');
  if (longest > 1) {
    for (const [i, { type }] of syllables.entries()) {
      const vowel = vowels[i];
      if (type === 'open' && vowel && NEEDS_NO_TYPE.test(`${vowel.letters}:${vowel.sound}`)) continue;
      addIf(ids, TYPE_ROWS[type]);
    }
  }
  for (const { kind, change } of built.affixes) {
    addIf(ids, CHANGE_ROWS[change]);
    if (kind === 'compound' || kind === 'contraction' || kind === 'possessive') ids.add(kind);
  }
  return ids;
}

/**
 * True if a word has an irregular unit that its parts do not have: the ay of says is not in say. The ea of ahead is
 * already in head.
 */
function hasOtherIrregular(units: readonly Unit[], parts: readonly ReadPart[]): boolean {
  const known = new Set(parts.flatMap(({ reading }) => reading.units.filter(isIrregular).map(nameOf)));
  return units.some((unit) => isIrregular(unit) && !known.has(nameOf(unit)));
}

function isIrregular({ pattern }: Unit): boolean {
  return pattern === IRREGULAR;
}

function nameOf({ letters, sound }: Unit): string {
  return `${letters}:${sound}`;
}

function sorted(ids: Iterable<PatternId>): PatternId[] {
  return [...new Set(ids)].sort();
}

function addIf(ids: Set<PatternId>, id: PatternId | undefined): void {
  if (id) ids.add(id);
}

/** Counts syllables as the letters show them: fire has one, prism has one. */
function countSyllables(spellings: readonly WordSpelling[]): number {
  return spellings.reduce((sum, { letters, sound }) => {
    const vowels = /[aeiouy]/.test(letters) ? countVowels(sound) : 0;
    return sum + (/^(ire|our|yre|owe)$/.test(letters) ? Math.min(vowels, 1) : vowels);
  }, 0);
}
