import { hasVowel, SIBILANT, VOICELESS } from '../alignment/sounds.ts';
import { addPrefix, addSuffixTo, type FindBuilt, joinWords } from '../build/build-word.ts';
import type { BuiltWord } from '../build/built-word.ts';
import { spellingsOf } from '../build/built-word.ts';
import { restoreStem, type Stem } from '../morphology/restore-stem.ts';

/** Endings that any word may take. The sound of -s and -ed follows from the base. */
const ENDINGS: readonly (readonly [letters: string, sound: string])[] = [
  ['s', ''],
  ['es', ''],
  ['ed', ''],
  ['ing', 'IH.NG'],
  ['er', 'ER'],
  ['est', 'AX.S.T'],
  ['ly', 'L.IY'],
  ['ness', 'N.AX.S'],
  ['less', 'L.AX.S'],
  ['ful', 'F.AX.L'],
  ['ment', 'M.AX.N.T'],
  ['able', 'AX.B.AX.L'],
  ['ish', 'IH.SH'],
];
/** Both parts of an unlisted compound have at least this many letters. */
const SHORTEST_PART = 3;

/**
 * Builds a word that the table lacks from words in the table:
 * - a possessive (gulls', Wick's)
 * - an inflected form, or a form in -ly, -ness and the like (kayaked)
 * - a word with a prefix (resalt)
 * - two words in one that are no names (tidepool; not jew + ellery)
 * Returns an empty list for any other word.
 */
export function buildUnlisted(word: string, find: FindBuilt, isWord: (word: string) => boolean): BuiltWord[] {
  const possessive = /^(.*[a-z])('s|')$/.exec(word);
  if (possessive) return possessives(possessive[1]!, possessive[2]!, find, isWord);
  if (!/^[a-z]{4,}$/.test(word)) return [];
  for (const [letters, sound] of ENDINGS) {
    const found = withEnding(word, letters, sound, find);
    if (found) return [found];
  }
  const prefixed = withPrefix(word, find);
  return prefixed ? [prefixed] : compound(word, find, isWord);
}

/** Beginnings that any word may take: unmoored, resalt. Beginnings that change with the base (im-, il-) are left out. */
const BEGINNINGS: readonly (readonly [letters: string, sound: string])[] = [
  ['un', 'AH.N'],
  ['re', 'R.IY'],
  ['dis', 'D.IH.S'],
  ['mis', 'M.IH.S'],
  ['non', 'N.AA.N'],
  ['over', 'OW.V.ER'],
  ['under', 'AH.N.D.ER'],
  ['sub', 'S.AH.B'],
  ['super', 'S.UW.P.ER'],
  ['inter', 'IH.N.T.ER'],
  ['anti', 'AE.N.T.IY'],
];

function withPrefix(word: string, find: FindBuilt): BuiltWord | null {
  for (const [letters, sound] of BEGINNINGS) {
    const rest = word.slice(letters.length);
    if (!word.startsWith(letters) || rest.length <= SHORTEST_PART) continue;
    const base = find(rest)[0];
    if (base) return addPrefix(word, { letters, sound, kind: 'prefix' }, base);
  }
  return null;
}

function possessives(
  owner: string,
  ending: string,
  find: FindBuilt,
  isWord: (word: string) => boolean,
): BuiltWord[] {
  if (ending === "'" && !owner.endsWith('s')) return [];
  const direct = find(owner);
  const bases = direct.length > 0 ? direct : buildUnlisted(owner, find, isWord);
  return bases.map((built) => ({
    parts: [
      ...built.parts,
      {
        role: 'clitic' as const,
        spellings: [{ letters: ending, sound: ending === "'" ? '-' : soundOfS(built) }],
      },
    ],
    base: built.base ?? owner,
    affixes: [...built.affixes, { text: ending, kind: 'possessive' as const, change: 'none' as const }],
    from: [{ word: owner, built }],
  }));
}

function withEnding(word: string, letters: string, fixed: string, find: FindBuilt): BuiltWord | null {
  const stems = [...restoreStem(word, letters).entries()].sort(
    ([, a], [, b]) => likely(b, letters) - likely(a, letters),
  );
  for (const [stem, made] of stems) {
    const base = find(made.stem)[0];
    if (!base || made.stem.length < 3) continue;
    const sound = fixed || (letters === 'ed' ? soundOfEd(base) : soundOfS(base));
    if (letters === 'es' && sound !== 'IH.Z' && made.change === 'none') continue;
    const built = addSuffixTo(
      word,
      { affix: { letters, sound, kind: 'suffix' }, stem, reading: 0, lessened: false },
      find,
    );
    if (built) return built;
  }
  return null;
}

/**
 * Returns how likely a base is, since the table may hold several. In hummed, hum is likelier than the name Humm. In
 * merriment, merry is likelier than Merrie. But press is likelier in pressed, and hope is likelier than hop in hoping.
 */
function likely({ stem, change }: Stem, ending: string): number {
  if (change === 'double') return /[lsfz]$/.test(stem) ? 0 : 3;
  if (change === 'y-to-i') return 2;
  return change === 'drop-e' && !/^[aeiouy]/.test(ending) ? -1 : 1;
}

function compound(word: string, find: FindBuilt, isWord: (word: string) => boolean): BuiltWord[] {
  for (let cut = word.length - SHORTEST_PART; cut >= SHORTEST_PART; cut--) {
    if (!isWord(word.slice(0, cut)) || !isWord(word.slice(cut))) continue;
    const left = find(word.slice(0, cut))[0];
    const right = left && find(word.slice(cut))[0];
    if (left && right) return [joinWords(word, cut, left, right)];
  }
  return [];
}

function lastSound(built: BuiltWord): string {
  const sounded = spellingsOf(built).findLast(({ sound }) => sound !== '-');
  return sounded?.sound.split('.').at(-1) ?? '';
}

/** Returns the sound of -s: cats S, gulls Z, boxes IH Z. */
function soundOfS(built: BuiltWord): string {
  const last = lastSound(built);
  if (SIBILANT.has(last)) return 'IH.Z';
  return VOICELESS.has(last) ? 'S' : 'Z';
}

/** Returns the sound of -ed: jumped T, sailed D, planted IH D. */
function soundOfEd(built: BuiltWord): string {
  const last = lastSound(built);
  if (last === 'T' || last === 'D') return 'IH.D';
  return VOICELESS.has(last) && !hasVowel(last) ? 'T' : 'D';
}
