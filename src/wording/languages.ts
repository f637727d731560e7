import { english } from './en.ts';
import { spanish } from './es.ts';
import type { Translation } from './translation.ts';

/** The languages of the interface, by the names that browsers use (`pt_BR`). A new language is added only to this list. */
export const languages = { en: english, es: spanish } as const satisfies Readonly<
  Record<string, Translation>
>;
