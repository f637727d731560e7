import nlp from 'compromise';
import { byRule } from '../../swap/inflect.ts';
import type { Form, PartOfSpeech } from '../../swap/types.ts';
import { readSourceRows } from '../read-source-rows.ts';

/** The evidence that a form is in use: how often it occurs, and whether CMUdict lists it. */
export interface Attested {
  count(form: string): number;
  said(form: string): boolean;
}

interface Transforms {
  verb: { conjugate(verb: string, model: unknown): Record<string, string> };
  noun: { toPlural(noun: string, model: unknown): string };
  adjective: {
    toComparative(word: string, model: unknown): string;
    toSuperlative(word: string, model: unknown): string;
  };
}

/** Forms that compromise and the counts get wrong (from memory of the language): `lemma/part/form` to text. */
const SETTLED: ReadonlyMap<string, string> = new Map(
  readSourceRows('irregular-forms.tsv').map(([lemma, part, form, text]) => [
    `${lemma}/${part}/${form}`,
    text!,
  ]),
);

const FORMS: Readonly<Record<PartOfSpeech, readonly Form[]>> = {
  n: ['s'],
  v: ['s', 'past', 'participle', 'ing'],
  a: ['er', 'est'],
  r: ['er', 'est'],
};
/**
 * The least share of the singular's count that a plural must have. Below that share the plural counts as not in use: no
 * wealths.
 */
const MASS = 0.035;

/**
 * Returns the forms that spelling rules do not give, as `lemma/part/form` to text. An empty text marks a plural that is
 * not in use. The forms come from compromise. If compromise and the rule differ, the form that film subtitles use more
 * often is taken (visited, not visitted). Among equally frequent forms, a form that CMUdict lists is taken.
 */
export function listIrregulars(
  lemmas: readonly (readonly [string, PartOfSpeech])[],
  attested: Attested,
): Map<string, string> {
  const { two } = nlp.methods() as unknown as { two: { transform: Transforms } };
  const model = nlp.model();
  const irregular = new Map<string, string>();
  for (const [lemma, part] of lemmas) {
    const made = formsOf(lemma, part, two.transform, model);
    for (const form of FORMS[part]) {
      const key = `${lemma}/${part}/${form}`;
      const rule = byRule(lemma, part, form);
      const best =
        SETTLED.get(key) ??
        choose(lemma, part, [rule, made[form] ?? ''], variants(lemma, part, form), attested);
      if (part === 'n' && !SETTLED.has(key) && isMass(lemma, best, attested)) irregular.set(key, '');
      else if (part === 'a' && isUnheard(best, attested))
        irregular.set(key, `${form === 'er' ? 'more' : 'most'} ${lemma}`);
      else if (best !== rule) irregular.set(key, best);
    }
  }
  return irregular;
}

function formsOf(
  lemma: string,
  part: PartOfSpeech,
  { verb, noun, adjective }: Transforms,
  model: unknown,
): Partial<Record<Form, string>> {
  if (part === 'v') {
    const { PastTense, PresentTense, Gerund, Participle } = verb.conjugate(lemma, model);
    return {
      ...(PresentTense && { s: PresentTense }),
      ...(PastTense && { past: PastTense, participle: Participle || PastTense }),
      ...(Gerund && { ing: Gerund }),
    };
  }
  if (part === 'n') return { s: noun.toPlural(lemma, model) };
  if (part === 'r') return {};
  return { er: adjective.toComparative(lemma, model), est: adjective.toSuperlative(lemma, model) };
}

/**
 * Returns forms with and without a doubled last consonant. Doubling depends on the pronunciation, so the counts of the
 * forms decide. Words in -man also get the plural in -men: firemen, but humans.
 */
function variants(lemma: string, part: PartOfSpeech, form: Form): string[] {
  if (part === 'n' && lemma.endsWith('man')) return [lemma.replace(/man$/, 'men')];
  const ending = { past: 'ed', participle: 'ed', ing: 'ing', er: 'er', est: 'est', base: '', s: '' }[form];
  // The rule is right for words of one syllable. Also, stared belongs to stare and is not the past of star.
  if (ending === '' || !/[aeiou].*[aeiou][bcdfgklmnprtvz]$/.test(lemma)) return [];
  return [lemma + ending, lemma + (lemma.at(-1) === 'c' ? 'k' : lemma.at(-1)!) + ending];
}

function choose(
  lemma: string,
  part: PartOfSpeech,
  [rule, made]: readonly [string, string],
  others: readonly string[],
  { count, said }: Attested,
): string {
  if (rule.startsWith('mo')) return rule;
  const worth = (form: string): number => count(form) * 4 + (said(form) ? 1 : 0);
  const known = made !== '' && made !== lemma && /^[a-z]+$/.test(made) && worth(made) > 0;
  // compromise is trusted for irregular past forms, so any such form that occurs is taken.
  if (
    known &&
    part === 'v' &&
    rule.endsWith('ed') &&
    !made.endsWith('ed') &&
    2 * count(made) >= count(rule)
  ) {
    return made;
  }
  // stared and staring belong to stare, not to star.
  const isOther =
    /^[^aeiou]*[aeiou][^aeiou]$/.test(lemma) && /^(ed|ing|er|est)$/.test(made.replace(lemma, ''));
  const forms = [rule, ...(known && !isOther ? [made] : []), ...others];
  return [...new Set(forms)].sort((one, other) => worth(other) - worth(one))[0]!;
}

/** Whether a comparison in one word occurs nowhere: schooler, lefter. */
function isUnheard(compared: string, { count, said }: Attested): boolean {
  return !compared.includes(' ') && count(compared) === 0 && !said(compared);
}

function isMass(lemma: string, plural: string, { count }: Attested): boolean {
  if (/(ness|ing|ship|hood)$/.test(lemma) && count(plural) === 0) return true;
  return count(lemma) > 100 && count(plural) < MASS * count(lemma);
}
