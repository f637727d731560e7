import type { AffixForm, MadeBy, ReadingRecord, WordRecord } from '../lexicon/word-record.ts';
import { restoreStem, type Stem } from '../morphology/restore-stem.ts';
import type { SpellingChange } from '../types.ts';
import { type BuiltWord, spellingsOf, type WordPart, type WordSpelling } from './built-word.ts';
import { changeEnding } from './change-ending.ts';
import { placeSpellings } from './place-spellings.ts';

/** Returns the built readings of a word in the table. The list is empty if the table does not have the word. */
export type FindBuilt = (word: string) => readonly BuiltWord[];

/** Builds every reading of a record from the readings of its parts. A reading with a missing part is left out. */
export function buildRecord(word: string, record: WordRecord, find: FindBuilt): BuiltWord[] {
  return record.readings
    .map((reading) => buildReading(word, reading, find))
    .filter((built) => built !== null);
}

function buildReading(word: string, record: ReadingRecord, find: FindBuilt): BuiltWord | null {
  switch (record.kind) {
    case 'whole':
      return record.madeBy
        ? recordOrigin(word, record.units, record.madeBy, find)
        : { parts: [{ role: 'base', spellings: record.units }], base: null, affixes: [] };
    case 'affixed': {
      const { affix, reading } = record.madeBy;
      return affix.kind === 'prefix'
        ? addPrefix(word, affix, find(word.slice(affix.letters.length))[reading])
        : addSuffixTo(word, record.madeBy, find);
    }
    case 'compound': {
      const left = find(word.slice(0, record.cut))[record.left];
      const right = find(word.slice(record.cut))[record.right];
      return left && right ? joinWords(word, record.cut, left, right) : null;
    }
  }
}

/** Joins base and suffix. Returns null if the resulting letters differ from `word`. */
export function addSuffixTo(word: string, madeBy: MadeBy, find: FindBuilt): BuiltWord | null {
  const { affix, stem, reading, lessened } = madeBy;
  const made = restoreStem(word, affix.letters)[stem];
  const base = made && find(made.stem)[reading];
  if (!base) return null;
  const inner = asBase(made.stem, base);
  const last = inner.parts.at(-1)!;
  const before = inner.parts.slice(0, -1);
  // The s of horses is a syllable, and its vowel is the e of horse.
  const ways =
    affix.letters === 's' && affix.sound === 'IH.Z'
      ? changeEnding(last.spellings, 'drop-e', 'es')
      : changeEnding(last.spellings, made.change, affix.letters);
  for (const changed of ways) {
    const spellings = lessened ? lessenLast(changed.base) : changed.base;
    const ending = {
      letters: changed.suffix,
      sound: affix.sound,
      spells: changed.suffix === 'es' ? 'es' : affix.letters,
    };
    const built: BuiltWord = {
      parts: [...before, { ...last, spellings }, { role: 'suffix', spellings: [ending] }],
      base: inner.base,
      affixes: [...inner.affixes, { text: affix.letters, kind: 'suffix', change: made.change }],
      from: [{ word: made.stem, built: base }],
    };
    if (placeSpellings(word, spellingsOf(built))) return built;
  }
  return null;
}

/**
 * Weakens the sound of the last spelling and keeps its pattern: the y of happy in happily, the l of final in finally,
 * the cial of special in specially.
 */
function lessenLast(spellings: readonly WordSpelling[]): WordSpelling[] {
  const last = spellings.at(-1)!;
  const spells = last.spells ?? last.letters;
  const said = last.said ?? last.sound;
  const dot = last.sound.lastIndexOf('.');
  const sound = last.sound === 'IY' ? 'AX' : dot === -1 ? '-' : last.sound.slice(0, dot);
  return [...spellings.slice(0, -1), { ...last, sound, spells, said }];
}

/** prefix + base. */
export function addPrefix(word: string, affix: AffixForm, base: BuiltWord | undefined): BuiltWord | null {
  if (!base) return null;
  const rest = word.slice(affix.letters.length);
  const inner = asBase(rest, base);
  return {
    parts: [{ role: 'prefix', spellings: [{ letters: affix.letters, sound: affix.sound }] }, ...inner.parts],
    base: inner.base,
    affixes: [...inner.affixes, { text: affix.letters, kind: 'prefix', change: 'none' }],
    from: [{ word: rest, built: base }],
  };
}

/** Joins two whole words: pan + cake. */
export function joinWords(word: string, cut: number, left: BuiltWord, right: BuiltWord): BuiltWord {
  const [first, second] = [word.slice(0, cut), word.slice(cut)];
  const inner = asBase(first, left);
  return {
    parts: [...inner.parts, ...right.parts],
    base: inner.base,
    affixes: [...inner.affixes, { text: second, kind: 'compound', change: 'none' }],
    from: [
      { word: first, built: left },
      { word: second, built: right },
    ],
  };
}

/**
 * Builds a word that has its own units in the table and still comes from another word: confusion from confuse, postman
 * from post.
 */
function recordOrigin(
  word: string,
  units: readonly WordSpelling[],
  madeBy: MadeBy,
  find: FindBuilt,
): BuiltWord {
  const { affix, stem, reading } = madeBy;
  const made = originOf(word, affix, stem);
  if (!made) return { parts: [{ role: 'base', spellings: units }], base: null, affixes: [] };
  const built = find(made.stem)[reading] ?? find(made.stem)[0];
  const isInflection = made.change === 'drop-e' && /^(ed|ing)$/.test(affix.letters);
  const spelt = isInflection && built ? keepSilentE(units, spellingsOf(built)) : units;
  const own: WordPart = { role: 'base', spellings: spelt };
  const inner = built ? asBase(made.stem, built) : { base: made.stem, affixes: [] };
  const second = affix.kind === 'compound' ? find(affix.letters)[0] : undefined;
  const from = [
    ...(built ? [{ word: made.stem, built }] : []),
    ...(second ? [{ word: affix.letters, built: second }] : []),
  ];
  return {
    parts: splitOffAffix(word, spelt, affix, made.change) ?? [own],
    base: inner.base,
    affixes: [...inner.affixes, { text: affix.letters, kind: affix.kind, change: made.change }],
    ...(from.length > 0 ? { from } : {}),
    ownSpellings: true,
  };
}

/** Keeps `o_e` as the spelling of the o in supposed to, although its s is pronounced differently than in suppose. */
function keepSilentE(units: readonly WordSpelling[], base: readonly WordSpelling[]): readonly WordSpelling[] {
  return units.map((unit, i) => {
    const { letters, sound } = base[i] ?? unit;
    return letters === `${unit.letters}_e` && sound === unit.sound ? { ...unit, spells: letters } : unit;
  });
}

function originOf(word: string, { kind, letters }: AffixForm, stem: number): Stem | undefined {
  if (kind === 'suffix') return restoreStem(word, letters)[stem];
  return {
    stem: kind === 'prefix' ? word.slice(letters.length) : word.slice(0, -letters.length),
    change: 'none',
  };
}

function splitOffAffix(
  word: string,
  units: readonly WordSpelling[],
  affix: AffixForm,
  change: SpellingChange,
): WordPart[] | null {
  if (affix.kind === 'compound') {
    const cut = placeSpellings(word, units)?.indexOf(word.length - affix.letters.length) ?? -1;
    if (cut <= 0) return null;
    return [units.slice(0, cut), units.slice(cut)].map((spellings) => ({ role: 'base', spellings }));
  }
  const at = affix.kind === 'prefix' ? 0 : units.length - 1;
  const unit = units[at]!;
  if (units.length < 2 || unit.letters !== affix.letters || unit.sound !== affix.sound) return null;
  const rest: WordPart = { role: 'base', spellings: markChange(units.toSpliced(at, 1), change) };
  const own: WordPart = { role: affix.kind, spellings: [unit] };
  return affix.kind === 'prefix' ? [own, rest] : [rest, own];
}

/** Marks the last spelling before a suffix with its letters in the base: after doubling, pp spells p. */
function markChange(units: readonly WordSpelling[], change: SpellingChange): WordSpelling[] {
  const last = units.at(-1)!;
  const { letters } = last;
  if (change === 'double' && /(.)\1$/.test(letters))
    return [...units.slice(0, -1), { ...last, spells: letters.slice(0, -1) }];
  return [...units];
}

/**
 * Returns a word as the base of another word. Its own parts stay visible (careless in carelessness). An adjective in -y
 * counts as one piece: luckiest is lucky + est, not luck + y + est (common practice, no source).
 */
function asBase(word: string, built: BuiltWord): BuiltWord & { readonly base: string } {
  const outer = built.affixes.at(-1);
  if (built.base === null) return { ...built, base: word };
  if (outer?.kind === 'suffix' && outer.text === 'y') {
    const spellings = built.parts.flatMap(({ role, spellings }) =>
      role === 'suffix' ? spellings.map((one) => ({ ...one, wasSuffix: true as const })) : spellings,
    );
    return { parts: [{ role: 'base', spellings }], base: word, affixes: [] };
  }
  return { ...built, base: built.base };
}
