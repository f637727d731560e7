import type { English } from './en.ts';

/** Names a text of the interface: its part, a full stop, its name (`panel.shadeThisPage`). */
export type TextId = {
  [P in keyof English & string]: `${P}.${keyof English[P] & string}`;
}[keyof English & string];

type TextOf<Id extends TextId> = Id extends `${infer P}.${infer N}`
  ? P extends keyof English
    ? N extends keyof English[P]
      ? English[P][N]
      : never
    : never
  : never;
type Longest<T> = T extends { readonly other: infer S extends string } ? `${S}{count}` : T;
type HolesIn<S> = S extends `${string}{${infer H}}${infer Rest}` ? H | HolesIn<Rest> : never;
type Holes<Id extends TextId> = HolesIn<Longest<TextOf<Id>>>;
/** The values for the holes of a text; none where it has none. Numbers are written as the language writes them. */
export type Filling<Id extends TextId, T = string | number> = [Holes<Id>] extends [never]
  ? []
  : [Readonly<Record<Holes<Id>, T>>];

const HOLE = /\{(\w+)\}/;

let lookUp = (name: string): string => globalThis.chrome?.i18n?.getMessage(name) ?? '';
let rules: Intl.PluralRules | undefined;

/** Takes texts from here on from a list by name (`panel_close`), where no browser has them: in commands and tests. */
export function sayFrom(texts: Readonly<Record<string, { readonly message: string }>>): void {
  lookUp = (name) => texts[name]?.message ?? '';
  rules = undefined;
}

/** The language the interface speaks, of those it has (`en`), whatever language the browser asked for. */
export function spokenLanguage(): string {
  return lookUp('language') || 'en';
}

/** The language that lists and days are written by: English as a British school writes it, without a comma before "and". */
export function writtenLanguage(): string {
  return spokenLanguage() === 'en' ? 'en-GB' : spokenLanguage();
}

/** Which way the language of the interface runs; not that of the browser, which may be one there are no texts in. */
export function spokenDirection(): 'ltr' | 'rtl' {
  return /^(?:ar|fa|he|ur|yi)\b/.test(spokenLanguage()) ? 'rtl' : 'ltr';
}

/**
 * A text of the interface in the reader's language, its holes filled: `say('reach.words', { count: 3 })`. A text with forms takes the
 * one that `count` asks for. Never throws: a text that is missing is its own name, so that it is seen.
 */
export function say<Id extends TextId>(id: Id, ...filling: Filling<Id>): string {
  return sayWith<Id, string | number>(id, ...filling).join('');
}

/** The same with anything in the holes, elements too: the pieces in order, for a view to put side by side. */
export function sayWith<Id extends TextId, T>(id: Id, ...filling: Filling<Id, T>): (string | T)[] {
  const holes = (filling[0] ?? {}) as Readonly<Record<string, T>>;
  return wordingOf(id, holes.count)
    .split(HOLE)
    .map((piece, i) => (i % 2 === 0 ? piece : writeHole(holes[piece]!)));
}

function wordingOf(id: TextId, count: unknown): string {
  if (typeof count === 'number') {
    rules ??= new Intl.PluralRules(spokenLanguage());
    const form = lookUp(`${id.replace('.', '_')}_${rules.select(count)}`);
    if (form !== '') return form;
  }
  return sayPlain(id);
}

/** A text without holes and forms: what else `say` does is more than a script in a page has room for. */
export function sayPlain(id: TextId): string {
  return lookUp(id.replace('.', '_')) || id;
}

function writeHole<T>(hole: T): T | string {
  return typeof hole === 'number' ? hole.toLocaleString(spokenLanguage()) : hole;
}
