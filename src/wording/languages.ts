import { english } from './en.ts';
import { spanish } from './es.ts';
import type { Translation } from './translation.ts';

/** The languages the interface is in, by the name browsers have for them (`pt_BR`); a new one is added here, and to nothing else. */
export const languages = { en: english, es: spanish } as const satisfies Readonly<
  Record<string, Translation>
>;
