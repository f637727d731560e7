import { type Irregulars, inflect } from './inflect.ts';
import type { Form, PartOfSpeech, WordForm } from './types.ts';

/** The known lemmas. */
export interface Lemmas {
  isLemma(word: string, part: PartOfSpeech): boolean;
  /** Returns the irregular forms with a given spelling. For went it returns go, verb, past. */
  irregularOf(form: string): readonly WordForm[];
}

const ENDINGS: readonly {
  readonly ending: RegExp;
  readonly parts: string;
  readonly forms: readonly Form[];
}[] = [
  { ending: /s$/, parts: 'nv', forms: ['s'] },
  { ending: /ed$/, parts: 'v', forms: ['past', 'participle'] },
  { ending: /ing$/, parts: 'v', forms: ['ing'] },
  { ending: /er$/, parts: 'ar', forms: ['er'] },
  { ending: /est$/, parts: 'ar', forms: ['est'] },
];

/**
 * Returns every way a lower-case word can be an inflected form of a lemma. Left is a verb's past and participle, an
 * adjective and a noun. A guessed lemma counts only if its own form gives the word again, so string is not a form of
 * strung.
 */
export function findForms(word: string, lemmas: Lemmas & Irregulars): WordForm[] {
  const found: WordForm[] = [...lemmas.irregularOf(word)];
  for (const part of ['n', 'v', 'a', 'r'] as const) {
    if (lemmas.isLemma(word, part)) found.push({ lemma: word, part, form: 'base' });
  }
  for (const { ending, parts, forms } of ENDINGS) {
    if (!ending.test(word)) continue;
    for (const lemma of basesOf(word.replace(ending, ''))) {
      for (const part of parts as Iterable<PartOfSpeech>) {
        if (lemma === word || !lemmas.isLemma(lemma, part)) continue;
        for (const form of forms) {
          if (inflect(lemma, part, form, lemmas) === word) found.push({ lemma, part, form });
        }
      }
    }
  }
  return found;
}

function basesOf(rest: string): string[] {
  const bases = [rest, `${rest}e`];
  if (/(.)\1$/.test(rest)) bases.push(rest.slice(0, -1));
  if (rest.endsWith('i')) bases.push(`${rest.slice(0, -1)}y`);
  if (rest.endsWith('ie')) bases.push(`${rest.slice(0, -2)}y`);
  if (rest.endsWith('e')) bases.push(rest.slice(0, -1));
  if (rest.endsWith('y')) bases.push(`${rest.slice(0, -1)}ie`);
  return [...new Set(bases)];
}
