import nlp from 'compromise';
import { expect, test } from 'vitest';
import { irregularBases, irregularForms } from './irregular-forms.ts';

test('go brings went; want and the name of an object property bring nothing', () => {
  expect(irregularForms('go')).toContain('went');
  expect(irregularForms('want')).toEqual([]);
  expect(irregularForms('constructor')).toEqual([]);
});

/** lives is also a form of live. The other entries are mistakes of the library. */
const TAKEN_OTHERWISE = ['life lives: live', 'little less: les', 'smell smelt: smeel', 'spell spelt: speel'];

// Outside source: npm compromise. It knows most irregular verbs and plurals, and returns all other words unchanged.
test('an outside library finds the same bases, or none', () => {
  const pairs = irregularBases().flatMap((base) => irregularForms(base).map((form) => [base, form] as const));
  const found = pairs.map(([base, form]) => {
    const bases = [baseAs('Verb', form), baseAs('Plural', form)].filter((other) => other !== form);
    return { pair: `${base} ${form}`, base, bases };
  });
  const otherwise = found
    .filter(({ base, bases }) => bases.length > 0 && !bases.includes(base))
    .map(({ pair, bases }) => `${pair}: ${bases[0]}`);
  expect(otherwise).toEqual(TAKEN_OTHERWISE);
  expect(found.filter(({ base, bases }) => bases.includes(base)).length).toBeGreaterThan(160);
});

function baseAs(tag: 'Verb' | 'Plural', form: string): string {
  const text = nlp(form);
  text.tag(tag);
  return tag === 'Verb' ? text.verbs().toInfinitive().text() : text.nouns().toSingular().text();
}
