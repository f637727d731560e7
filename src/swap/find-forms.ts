import { type Irregulars, inflect } from './inflect.ts';
import type { Form, PartOfSpeech, WordForm } from './types.ts';

/** Which lemmas there are. */
export interface Lemmas {
  isLemma(word: string, part: PartOfSpeech): boolean;
  /** Irregular forms by their spelling: went to go, verb, past. */
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
 * Every way a lower-case word can be an inflected form of a lemma: left is a verb's past and participle, an
 * adjective and a noun. A guess at the lemma counts only when its own form is the word again, so string is no strung.
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
