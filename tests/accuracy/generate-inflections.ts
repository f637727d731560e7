import compromise from 'compromise';
import { type Facts, isLemma, rankOf } from '../../src/data/morphology/lexical-facts.ts';

/** One inflected form with its base form: `hoped`, of `hope`. */
export interface Inflected {
  readonly form: string;
  readonly base: string;
}

/** The part of the library's `methods()` that is used here. The library's own types say only `object`. */
interface Transforms {
  readonly two: {
    readonly transform: {
      readonly noun: {
        toPlural(word: string, model: object): string;
        toSingular(word: string, model: object): string;
      };
      readonly verb: {
        toInfinitive(word: string, model: object, tense: string): string;
        conjugate(word: string, model: object): Readonly<Record<string, string | undefined>>;
      };
      readonly adjective: {
        toComparative(word: string, model: object): string;
        toSuperlative(word: string, model: object): string;
        fromSuperlative(word: string, model: object): string;
      };
    };
  };
}

/**
 * Returns the regular inflected forms that an outside library makes (npm `compromise`: plural, conjugation, comparison)
 * from every WordNet base form. Both form and base are in `words` and among the `commonest` words.
 *
 * Irregular forms are left out (went, lives of life). Forms that are base forms themselves, without a pointer to the
 * base, are left out too: an outside list cannot tell whether `bother` compares `both` or whether `wicked` is a past
 * form.
 */
export function generateInflections(
  words: ReadonlyMap<string, unknown>,
  facts: Facts,
  commonest: number,
): Inflected[] {
  const met = (word: string) => words.has(word) && rankOf(word, facts) <= commonest;
  const forms: Inflected[] = [];
  for (const [base, parts] of facts.lemmas) {
    if (!/^[a-z]{2,}$/.test(base) || !words.has(base) || !isLemma(base, facts)) continue;
    const stem = base.replace(/(ie|e|y)$/, '');
    const regular = inflect(base, parts).filter(
      (form) => /^[a-z]+(s|ed|ing|er|est)$/.test(form) && form.startsWith(stem) && form !== base,
    );
    for (const form of new Set(regular)) {
      if (met(form)) forms.push({ form, base });
    }
  }
  return forms;
}

function inflect(base: string, parts: ReadonlySet<string>): string[] {
  const { noun, verb, adjective } = (compromise.methods() as Transforms).two.transform;
  const model = compromise.model();
  const forms: (string | undefined)[] = [];
  if (parts.has('n')) forms.push(noun.toPlural(base, model));
  if (parts.has('v')) {
    const { PastTense, PresentTense, Gerund } = verb.conjugate(base, model);
    forms.push(PastTense, PresentTense, Gerund);
  }
  if (parts.has('a')) forms.push(adjective.toComparative(base, model), adjective.toSuperlative(base, model));
  return forms.filter((form) => form !== undefined);
}

/** Returns the bases that `compromise` finds for an inflected form, for each part of speech that its ending allows. */
export function undoInflection(form: string): string[] {
  const { noun, verb, adjective } = (compromise.methods() as Transforms).two.transform;
  const model = compromise.model();
  if (form.endsWith('s'))
    return [noun.toSingular(form, model), verb.toInfinitive(form, model, 'PresentTense')];
  if (form.endsWith('ed')) return [verb.toInfinitive(form, model, 'PastTense')];
  if (form.endsWith('ing')) return [verb.toInfinitive(form, model, 'Gerund')];
  return [adjective.fromSuperlative(form, model)];
}
