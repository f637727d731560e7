import type { Notation, NotationRule } from './match-words.ts';
import { patternNotations } from './notation-patterns.ts';
import { saidNotations } from './notation-said.ts';
import { shorthandNotations } from './notation-shorthand.ts';
import { signNotations } from './notation-signs.ts';
import { soundNotations } from './notation-sounds.ts';
import type { Lexeme } from './split-lexemes.ts';

/** The rules in order. The first one that applies is used. */
export const notationRules: readonly NotationRule[] = [
  ...saidNotations,
  ...soundNotations,
  ...shorthandNotations,
  ...patternNotations,
  ...signNotations,
];

/** The rule whose words begin with a divider: ", then add". */
const behindBreak = notationRules.filter(({ name }) => name === 'an ending that is added after a change');

/** Reads runs of words with one meaning. `used` is called with the name of each rule that applied. */
export function applyNotations(
  lexemes: readonly Lexeme[],
  used: (rule: string) => void = () => {},
): readonly Lexeme[] {
  const read: Lexeme[] = [];
  for (let i = 0; i < lexemes.length; ) {
    const found = firstOf(lexemes, i);
    if (found === null) {
      read.push(lexemes[i]!);
      i += 1;
      continue;
    }
    used(found.name);
    read.push(...found.given);
    i += found.taken;
  }
  return read;
}

function firstOf(lexemes: readonly Lexeme[], i: number): (Notation & { name: string }) | null {
  const { kind } = lexemes[i]!;
  if (kind !== 'word' && kind !== 'open' && kind !== 'break') return null;
  for (const { name, applies } of kind === 'break' ? behindBreak : notationRules) {
    const found = applies(lexemes, i);
    if (found !== null) return { ...found, name };
  }
  return null;
}
