import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import {
  type Analyzer,
  compileGroup,
  createJudge,
  cutText,
  importSequence,
  parseGroup,
  parseSequence,
  tokenize,
  toSequence,
  vet,
} from '../../src/analyze/index.ts';
import type { Token } from '../../src/analyze/types.ts';
import { readFrequency } from '../../src/data/read-frequency.ts';
import { type FuzzTarget, hold, target } from './fuzz-target.ts';
import { mutateText, nastyText, readTexts } from './nasty-inputs.ts';

const herons = parseGroup(json('profiles/groups/herons.json'));
const steps = parseSequence(json('profiles/sequences/steady-steps.json'));
const story = readFileSync(new URL('../../public/story/index.html', import.meta.url), 'utf8').replace(
  /<[^>]*>/g,
  ' ',
);
const sentences = story.split(/(?<=[.!?])\s+/);

/** Returns the fuzz targets for splitting, analysing and judging text, and for reading a pasted sequence. */
export function analysisTargets(analyzer: Analyzer): readonly FuzzTarget[] {
  const judge = createJudge(analyzer, compileGroup(herons, steps));
  const text = fc.oneof(nastyText, mutateText(fc.constantFrom(...sentences)));
  const words = [...readFrequency().keys()].slice(0, 30_000);
  return [
    target({
      name: 'tokeniser',
      input: text,
      share: 42,
      check: (input) => {
        expectInOrder(tokenize(input), input);
        expectInOrder(cutText(input), input);
      },
    }),
    target({
      name: 'analysis of words',
      input: fc.oneof(nastyText, mutateText(fc.constantFrom(...words))),
      share: 25,
      check: (key) => {
        const { readings } = analyzer.analyze(key);
        hold(readings.length > 0, 'a word has a reading');
        for (const { syllables, source } of readings)
          if (source === 'dictionary')
            hold(
              syllables.every((syllable) => syllable.text !== ''),
              'no syllable is empty',
            );
        judge(key);
      },
    }),
    target({
      name: 'standing of texts',
      input: fc.array(text, { maxLength: 3 }).map((some) => some.join('\n')),
      share: 10,
      check: (input) => {
        const tokens = tokenize(input);
        const keys = tokens.filter(({ kind }) => kind === 'word').map(({ key }) => [key, 1] as const);
        const { tally } = vet({ words: keys, skipped: tokens.length - keys.length }, judge);
        hold(tally.running + tally.names + tally.skipped === tokens.length, 'every token is counted once');
      },
    }),
    target({
      name: 'sequence importer',
      input: fc.oneof(nastyText, mutateText(pieceOf(readTexts('sequences', '.txt')))),
      share: 6,
      check: (input) => {
        const imported = importSequence(input);
        const made = toSequence(imported, {
          id: 'pasted',
          name: 'Pasted',
          source: 'Pasted',
          licence: 'None',
        });
        if (made.steps.length > 0) parseSequence(JSON.parse(JSON.stringify(made)));
      },
    }),
  ];
}

/** Returns some lines of one of the texts. The first line of the text is chosen as often as any later place. */
function pieceOf(texts: readonly string[]): fc.Arbitrary<string> {
  const place = fc.oneof(fc.constant(0), fc.double({ min: 0, max: 1, noNaN: true }));
  return fc.tuple(fc.constantFrom(...texts), place).map(([text, from]) => {
    const start = text.lastIndexOf('\n', Math.floor(from * text.length)) + 1;
    return text.slice(start, start + 500);
  });
}

function expectInOrder(tokens: readonly Token[], text: string): void {
  let end = 0;
  for (const token of tokens) {
    hold(token.start >= end && token.end > token.start, 'spans are in order, apart, not empty');
    end = token.end;
  }
  hold(end <= text.length, 'spans are within the text');
}

function json(path: string): unknown {
  return JSON.parse(readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8'));
}
