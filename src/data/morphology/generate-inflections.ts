import compromise from 'compromise';
import { type Facts, isLemma, rankOf } from './lexical-facts.ts';

export interface Inflected {
  readonly form: string;
  readonly base: string;
  readonly affix: string;
}

/** Forms that count as regular when they end in one of these. */
const ENDINGS = ['ing', 'est', 'ed', 'er', 'es', 's'];

/**
 * Inflected forms by the outside library npm `compromise` (verb conjugation, plurals, comparison), for
 * every WordNet base form among the commonest 20,000 words; regular ones only (walked, not went), and only
 * those in `words` and themselves among the 20,000.
 */
export function generateInflections(words: ReadonlyMap<string, unknown>, facts: Facts): Inflected[] {
  const TOP = 20_000;
  const forms: Inflected[] = [];
  const seen = new Set<string>();
  for (const [base, parts] of facts.lemmas) {
    if (!/^[a-z]{2,}$/.test(base) || rankOf(base, facts) > TOP || !isLemma(base, facts) || !words.has(base))
      continue;
    for (const form of [
      ...(parts.has('n') ? [nounForm(base)] : []),
      ...(parts.has('v') ? verbForms(base) : []),
      ...(parts.has('a') ? adjectiveForms(base) : []),
    ]) {
      if (!form || form === base || !/^[a-z]+$/.test(form) || !words.has(form) || rankOf(form, facts) > TOP)
        continue;
      const affix = ENDINGS.find((ending) => form.endsWith(ending));
      if (!affix || seen.has(`${form} ${base}`) || form.slice(0, 2) !== base.slice(0, 2)) continue;
      seen.add(`${form} ${base}`);
      forms.push({ form, base, affix });
    }
  }
  return forms;
}

function nounForm(base: string): string {
  return compromise(`the ${base}`).tag('#Noun').nouns().toPlural().text('normal').replace(/^the /, '');
}

interface Conjugation {
  readonly PastTense: string;
  readonly PresentTense: string;
  readonly Gerund: string;
}

function verbForms(base: string): string[] {
  const model = compromise.model() as unknown as { two?: unknown };
  const { verbConjugate } = (
    compromise as unknown as {
      methods(): { two: { transform: { verb: { conjugate(v: string, m: unknown): Conjugation } } } };
    }
  ).methods().two.transform.verb as unknown as { verbConjugate: (v: string, m: unknown) => Conjugation };
  return verbConjugate
    ? Object.values(verbConjugate(base, model)).filter((form) => typeof form === 'string')
    : [];
}

function adjectiveForms(base: string): string[] {
  return [base];
}
