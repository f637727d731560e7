import type { English } from './en.ts';

/** The id of an interface text: its part, a full stop and its name (`panel.shadeThisPage`). */
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
/**
 * The values for the placeholders of a text. The list is empty if the text has no placeholders. Numbers are written in
 * the style of the interface language.
 */
export type Filling<Id extends TextId, T = string | number> = [Holes<Id>] extends [never]
  ? []
  : [Readonly<Record<Holes<Id>, T>>];

const HOLE = /\{(\w+)\}/;

let lookUp = (name: string): string => globalThis.chrome?.i18n?.getMessage(name) ?? '';
let rules: Intl.PluralRules | undefined;

/**
 * Uses the given texts, listed by name (`panel_close`), from now on. Commands and tests call this function, because
 * they have no browser that provides the texts.
 */
export function sayFrom(texts: Readonly<Record<string, { readonly message: string }>>): void {
  lookUp = (name) => texts[name]?.message ?? '';
  rules = undefined;
}

/**
 * Returns the language of the interface (`en`). This is one of the available languages, whatever language the browser
 * asked for.
 */
export function spokenLanguage(): string {
  return lookUp('language') || 'en';
}

/**
 * Returns the language for writing lists and days. English is written as in a British school, without a comma before
 * "and".
 */
export function writtenLanguage(): string {
  return spokenLanguage() === 'en' ? 'en-GB' : spokenLanguage();
}

/**
 * Returns the text direction of the interface language. The browser's own language may be a different one, because
 * there may be no texts in that language.
 */
export function spokenDirection(): 'ltr' | 'rtl' {
  return /^(?:ar|fa|he|ur|yi)\b/.test(spokenLanguage()) ? 'rtl' : 'ltr';
}

/**
 * Returns a text of the interface in the reader's language, with its placeholders filled: `say('reach.words', { count:
 * 3 })`. If a text has forms, `count` chooses the form. Never throws: a missing text is replaced by its own name, so
 * that the gap is visible.
 */
export function say<Id extends TextId>(id: Id, ...filling: Filling<Id>): string {
  return sayWith<Id, string | number>(id, ...filling).join('');
}

/**
 * Does the same as `say`, but accepts any value for a placeholder, even an element. Returns the pieces in order, for a
 * view to put side by side.
 */
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

/**
 * Returns a text without placeholders or forms. Scripts in pages use this function, because they must stay small and
 * have no room for the rest of `say`.
 */
export function sayPlain(id: TextId): string {
  return lookUp(id.replace('.', '_')) || id;
}

function writeHole<T>(hole: T): T | string {
  return typeof hole === 'number' ? hole.toLocaleString(spokenLanguage()) : hole;
}
