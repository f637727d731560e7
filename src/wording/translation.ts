import type { English } from './en.ts';

/** A text, or its forms by number. The form `many` is for languages that have such a form. */
export type Text = string | { readonly one: string; readonly many?: string; readonly other: string };

/** The texts of one part in another language, one for each English text. */
export type Translated<Part> = { readonly [Name in keyof Part]: Text };

/** All texts of the interface in another language. */
export type Translation = { readonly [P in keyof English]: Translated<English[P]> };
