import { expect, test } from 'vitest';
import { doubts } from './doubts.ts';
import { exampleShapes, patternsInExample } from './example-shapes.ts';
import { headingRules } from './heading-rules.ts';
import { notationRules } from './notation-rules.ts';
import { readClause } from './read-clause.ts';
import { readPatterns } from './read-items.ts';
import { sentenceRules } from './read-prose.ts';
import { splitLexemes } from './split-lexemes.ts';
import { wordRules } from './word-rules.ts';

function rulesUsed(clause: string): readonly string[] {
  const used: string[] = [];
  readClause(splitLexemes(clause), (rule) => used.push(rule));
  return used;
}

test.each([...notationRules, ...wordRules, ...headingRules])(
  '“$name” applies to “$example”, not to “$counterExample”',
  (rule) => {
    expect(rulesUsed(rule.example)).toContain(rule.name);
    expect(rulesUsed(rule.counterExample)).not.toContain(rule.name);
  },
);

test.each(doubts)('$name: “$example” is a guess, “$counterExample” is sure', ({ name, ...clauses }) => {
  const heard = (clause: string) => {
    const names: string[] = [];
    readPatterns(clause, undefined, (doubt) => names.push(doubt));
    return names;
  };
  expect(heard(clauses.example)).toContain(name);
  expect(heard(clauses.counterExample)).not.toContain(name);
});

test.each(sentenceRules)(
  '“$name” cuts “$example”, not “$counterExample”',
  ({ example, counterExample, applies }) => {
    const cuts = (sentence: string) => (applies(sentence, false) ?? []).filter(({ text }) => text !== '');
    expect(
      cuts(example)
        .map(({ text }) => text)
        .join('')
        .replaceAll(/\s+/g, ''),
    ).toBe(example.replaceAll(' ', ''));
    expect(cuts(counterExample)).toEqual([]);
  },
);

test.each(exampleShapes)(
  'the letters $letters in $example have the shape “$name”, unlike $counterExample',
  (shape) => {
    expect(patternsInExample(shape.letters, shape.example)).toEqual(shape.patterns);
    expect(patternsInExample(shape.letters, shape.counterExample)).not.toEqual(shape.patterns);
  },
);

test('every rule has a name of its own', () => {
  const names = [...notationRules, ...wordRules, ...headingRules, ...doubts].map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
});
