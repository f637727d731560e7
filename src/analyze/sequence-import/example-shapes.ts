import type { PatternId } from '../types.ts';

/** A rule that tells the sound of letters from their place in an example word. */
interface ExampleShape {
  readonly name: string;
  readonly letters: string;
  readonly patterns: readonly PatternId[];
  readonly word: RegExp;
  readonly example: string;
  readonly counterExample: string;
}

const open = (vowel: string, patterns: readonly PatternId[], example: string, counterExample: string) => ({
  name: `${vowel} at the end of a short word`,
  letters: vowel,
  patterns,
  word: new RegExp(`^[^aeiouy]{1,3}${vowel}$`),
  example,
  counterExample,
});

/**
 * The first shape whose letters and word fit decides. The shapes are regularities of English spelling (common
 * practice).
 */
export const exampleShapes: readonly ExampleShape[] = [
  open('e', ['long-e'], 'she', 'shed'),
  open('o', ['long-o'], 'go', 'got'),
  open('i', ['long-i'], 'hi', 'hit'),
  ...['a', 'e', 'i', 'o', 'u'].map(
    (vowel): ExampleShape => ({
      name: `${vowel} in a closed syllable`,
      letters: vowel,
      patterns: [`short-${vowel}`],
      // A vowel before l, r or w is excluded because these letters change it. Also excluded are i before nd and o
      // before st.
      word: new RegExp(
        `^(?!.*(?:ind|ost|wa|qua)$)[^aeiouyw]{0,3}${vowel}(?:[bcdfgjkmnpstvxz][^aeiouyr]{0,2})$`,
      ),
      example: { a: 'hat', e: 'net', i: 'pin', o: 'pot', u: 'tub' }[vowel]!,
      counterExample: { a: 'hate', e: 'me', i: 'pine', o: 'go', u: 'music' }[vowel]!,
    }),
  ),
  {
    name: 'a before l',
    letters: 'a',
    patterns: ['a-before-l'],
    word: /^[^aeiou]{0,2}al(?:l|k|t)$/,
    example: 'walk',
    counterExample: 'pal',
  },
  {
    name: 'a after w or qu',
    letters: 'a',
    patterns: ['a-after-w'],
    word: /^(?:s?w|s?qu)a(?:sh|nt|tch|n|s|mp|ddle)$/,
    example: 'squash',
    counterExample: 'wag',
  },
  {
    name: 'ar after w or qu',
    letters: 'ar',
    patterns: ['ar-or'],
    word: /^(?:s?w|qu)ar/,
    example: 'warm',
    counterExample: 'harm',
  },
  {
    name: 'or after w',
    letters: 'or',
    patterns: ['or-er'],
    word: /^wor[^n]/,
    example: 'world',
    counterExample: 'worn',
  },
  {
    name: 'i before nd or ld',
    letters: 'i',
    patterns: ['i-long-closed'],
    word: /^[^aeiou]{0,2}i(?:nd|ld)$/,
    example: 'find',
    counterExample: 'fin',
  },
  {
    name: 'o before l and a consonant',
    letters: 'o',
    patterns: ['o-long-closed'],
    word: /^[^aeiou]{0,2}ol[dlt]$/,
    example: 'cold',
    counterExample: 'cod',
  },
  {
    name: 'y at the end of a word without another vowel',
    letters: 'y',
    patterns: ['y-long-i'],
    word: /^[^aeiouy]{1,3}y$/,
    example: 'fly',
    counterExample: 'pony',
  },
  {
    name: 'y at the end of a longer word',
    letters: 'y',
    patterns: ['y-long-e'],
    word: /[aeiou][^aeiou]+y$/,
    example: 'jelly',
    counterExample: 'jay',
  },
  {
    name: 'y between consonants',
    letters: 'y',
    patterns: ['y-short-i'],
    word: /^[^aeiouy]{1,2}y[^aeiouy]{1,2}$/,
    example: 'gym',
    counterExample: 'yam',
  },
  {
    name: 'y at the start',
    letters: 'y',
    patterns: ['y'],
    word: /^y[aeiou]/,
    example: 'yam',
    counterExample: 'gym',
  },
  ...(['c', 'g'] as const).flatMap((letter): readonly ExampleShape[] => [
    {
      name: `${letter} before e, i, y`,
      letters: letter,
      patterns: [`soft-${letter}`],
      word: letter === 'c' ? /c[eiy]/ : /(?:^|[aeiou])g(?:em|en|er|ia|in(?!g)|ym|e$|es$)/,
      example: letter === 'c' ? 'ice' : 'page',
      counterExample: letter === 'c' ? 'cat' : 'get',
    },
    {
      name: `${letter} before other letters`,
      letters: letter,
      patterns: [letter],
      word: new RegExp(`${letter}(?:[aou]|[^aeiouyh]|$)`),
      example: letter === 'c' ? 'cat' : 'gap',
      counterExample: letter === 'c' ? 'ice' : 'page',
    },
  ]),
  {
    name: 'oo before k',
    letters: 'oo',
    patterns: ['oo-book'],
    word: /^[^aeiou]{1,2}oo[kd]?k$/,
    example: 'hook',
    counterExample: 'hoop',
  },
  {
    name: 'oo before other letters',
    letters: 'oo',
    patterns: ['oo-moon'],
    word: /^[^aeiou]{1,3}oo(?:n|m|p|l|t|f|se?|ze?|th)?$/,
    example: 'spoon',
    counterExample: 'hook',
  },
];

/** Returns the patterns that the shape of an example word gives its letters. Returns none if the shape leaves them open. */
export function patternsInExample(letters: string, word: string): readonly PatternId[] {
  return exampleShapes.find((shape) => shape.letters === letters && shape.word.test(word))?.patterns ?? [];
}
