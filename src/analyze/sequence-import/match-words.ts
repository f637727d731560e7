import type { PatternId } from '../types.ts';
import type { Lexeme } from './split-lexemes.ts';

/** The result of reading lexemes: the number of lexemes taken and the lexemes that replace them. */
export interface Notation {
  readonly taken: number;
  readonly given: readonly Lexeme[];
}

/** Reads the lexemes from `i` on. Returns null if they are not in the notation that is read. */
export type NotationReader = (lexemes: readonly Lexeme[], i: number) => Notation | null;

/** The patterns for a vowel at the end of a syllable. */
export const longOf: Readonly<Record<string, readonly PatternId[]>> = {
  a: ['long-a'],
  e: ['long-e'],
  i: ['long-i'],
  o: ['long-o'],
  u: ['long-u-yoo', 'long-u-oo'],
  y: ['y-long-i'],
};

/** The longest run of lexemes that a rule reads. */
const LONGEST = 12;

export function wordAt(lexemes: readonly Lexeme[], i: number): string {
  return lexemes[i]?.kind === 'word' ? lexemes[i].text : '';
}

interface Run {
  readonly run: readonly { readonly lexeme: Lexeme; readonly next: number }[];
  readonly text: string;
}

/**
 * The runs from one place, by the kinds of lexemes they pass over. They are kept because every rule asks for them
 * before the next place is read.
 */
const runs = new WeakMap<readonly Lexeme[], { at: number; found: Map<string, Run> }>();

function runFrom(lexemes: readonly Lexeme[], i: number, over: readonly Lexeme['kind'][]): Run {
  const before = runs.get(lexemes);
  const here = before?.at === i ? before : { at: i, found: new Map<string, Run>() };
  if (here !== before) runs.set(lexemes, here);
  const key = over.join(' ');
  const known = here.found.get(key);
  if (known !== undefined) return known;
  const run: { lexeme: Lexeme; next: number }[] = [];
  for (let next = i; next < lexemes.length && run.length < LONGEST; next++) {
    const lexeme = lexemes[next]!;
    if (run.length > 0 && over.includes(lexeme.kind)) continue;
    if (lexeme.kind !== 'word' || lexeme.mark !== 'none') break;
    run.push({ lexeme, next: next + 1 });
  }
  const read = { run, text: run.map(({ lexeme }) => lexeme.text).join(' ') };
  here.found.set(key, read);
  return read;
}

/**
 * Creates a rule for consecutive words. Only lexemes of the kinds in `over` may be between the words. An affix is not
 * taken for a word.
 */
export function matchWords(
  source: string,
  over: readonly Lexeme['kind'][],
  give: (found: RegExpExecArray, whole: Lexeme) => Lexeme,
): NotationReader {
  const pattern = new RegExp(`^(?:${source})(?= |$)`);
  return (lexemes, i) => {
    const { run, text: said } = runFrom(lexemes, i, over);
    const found = pattern.exec(said);
    if (found === null || found[0] === '') return null;
    const text = found[0].trim();
    const last = run[text.split(' ').length - 1]!;
    return { taken: last.next - i, given: [give(found, { ...run[0]!.lexeme, text, end: last.lexeme.end })] };
  };
}

export function phrase(
  source: string,
  ids: (found: RegExpExecArray) => readonly PatternId[],
): NotationReader {
  return matchWords(source, ['open', 'is'], (found, whole) => ({ ...whole, kind: 'meant', ids: ids(found) }));
}

/** Creates a rule for words that mean the technical phrase `name`. With `over`, a plus sign may be between the words. */
export function stands(name: string, source: string, over = false): NotationReader {
  const read = matchWords(source, over ? ['break'] : [], (_, whole) => whole);
  return (lexemes, i) => {
    const found = read(lexemes, i);
    if (found === null) return null;
    // A plus sign may divide the words, a comma may not.
    const between = lexemes.slice(i, i + found.taken).filter(({ kind }) => kind === 'break');
    if (between.some(({ text }) => text !== '+' && text !== '&')) return null;
    const whole = found.given[0]!;
    return { taken: found.taken, given: name.split(' ').map((text) => inPlace(whole, text)) };
  };
}

export function note(source: string): NotationReader {
  return becomes('note', source);
}

export function becomes(kind: Lexeme['kind'], source: string): NotationReader {
  return matchWords(source, [], (_, whole) => ({ ...whole, kind }));
}

/** Returns a word that replaces another lexeme. */
export function inPlace(lexeme: Lexeme, text: string): Lexeme {
  return { ...lexeme, kind: 'word', text, mark: 'none' };
}

/** A rule for words of a clause that are read together before the rest, and for the lexemes that replace them. */
export interface NotationRule {
  readonly name: string;
  /** A clause the rule applies to. `counterExample` is a similar clause that the rule must leave alone. */
  readonly example: string;
  readonly counterExample: string;
  /** Returns the lexemes that replace the `taken` lexemes from `i` on. Returns null if the rule does not apply. */
  readonly applies: NotationReader;
}

/** Whether a lexeme separates the items of a list: a comma, and, or. */
export const divides = (lexeme: Lexeme | undefined) =>
  lexeme?.kind === 'break' || (lexeme?.kind === 'word' && /^(?:and|or)$/.test(lexeme.text));
