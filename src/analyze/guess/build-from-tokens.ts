import type { BuiltWord, WordPart, WordSpelling } from '../build/built-word.ts';
import type { Affix, SpellingChange } from '../types.ts';
import type { GuessToken } from './guess-token.ts';

/**
 * Builds a word from tokens: its parts, base and affixes with their spelling changes. The base is restored from the
 * letters and changes: hoping with an o that spells `o_e` is hope + ing, hopping is hop + ing.
 */
export function buildFromTokens(tokens: readonly GuessToken[]): BuiltWord {
  const parts: WordPart[] = [];
  const texts: string[] = [];
  for (const token of tokens) {
    const role = token.role === 'joined' ? 'base' : token.role;
    const { letters, sound, spells, text } = token;
    const spelling: WordSpelling = { letters, sound, ...(spells === undefined ? {} : { spells }) };
    const last = parts.at(-1);
    if (role === 'base' && token.role === 'base' && last?.role === 'base') {
      parts[parts.length - 1] = { role, spellings: [...last.spellings, spelling] };
      texts[texts.length - 1] += text;
    } else {
      parts.push({ role, spellings: [spelling] });
      texts.push(text);
    }
  }
  const first = parts.findIndex(({ role }) => role === 'base');
  if (first === -1 || parts.length === 1) {
    return {
      parts: [{ role: 'base', spellings: parts.flatMap((part) => part.spellings) }],
      base: null,
      affixes: [],
    };
  }
  const affixes: Affix[] = [];
  for (const [i, part] of parts.entries()) {
    if (i <= first) continue;
    if (part.role === 'base') affixes.push({ text: texts[i]!, kind: 'compound', change: 'none' });
    if (part.role === 'suffix') affixes.push(suffixOf(part.spellings[0]!, parts[i - 1]!.spellings));
  }
  const own = affixes[0]?.kind === 'suffix' ? undo(texts[first]!, affixes[0]) : texts[first]!;
  for (let i = first - 1; i >= 0; i--) affixes.push({ text: texts[i]!, kind: 'prefix', change: 'none' });
  return { parts, base: own, affixes };
}

function suffixOf(suffix: WordSpelling, before: readonly WordSpelling[]): Affix {
  const text = suffix.spells ?? suffix.letters;
  const change = changeOf(suffix, before);
  // The e of villages belongs to village: the suffix is -s, and nothing is dropped.
  if (suffix.letters === 'es' && change === 'drop-e') return { text: 's', kind: 'suffix', change: 'none' };
  return { text, kind: 'suffix', change };
}

/** Returns the change of the base, found from its last spellings: pp spells p, the o of hoping spells `o_e`, i spells y. */
function changeOf(suffix: WordSpelling, before: readonly WordSpelling[]): SpellingChange {
  const { letters, spells = letters } = before.at(-1)!;
  if (letters === spells + spells.at(-1)) return 'double';
  if (letters.endsWith('i') && spells.endsWith('y')) return 'y-to-i';
  if ((suffix.spells ?? suffix.letters).length > suffix.letters.length) return 'drop-e';
  if (spells !== letters && spells.endsWith('e')) return 'drop-e';
  return before.some((one) => one.letters.length === 1 && one.spells?.[1] === '_') ? 'drop-e' : 'none';
}

function undo(text: string, { change }: Affix): string {
  if (change === 'double') return text.slice(0, -1);
  if (change === 'drop-e') return `${text}e`;
  return change === 'y-to-i' ? `${text.slice(0, -1)}y` : text;
}
