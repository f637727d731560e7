import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { createJudge } from '../src/analyze/index.ts';
import { loadEngine } from '../src/cli/load-engine.ts';
import { loadGroup } from '../src/cli/load-group.ts';
import { createSwapper, openSwaps, reachFor } from '../src/swap/index.ts';
import phrases from '../src/swap/phrase-swaps.json' with { type: 'json' };
import { readSwapSentences } from './accuracy/swap-sentences.ts';

const bytes = readFileSync(new URL('../public/data/swaps.bin', import.meta.url));
const swapper = createSwapper(openSwaps(bytes), phrases);
const find = (marked: string, options = {}) => {
  const start = marked.indexOf('[');
  const end = marked.indexOf(']') - 1;
  return swapper.findSwaps(marked.replace(/[[\]]/g, ''), start, end, options);
};
const texts = (marked: string): string[] => find(marked).swaps.map(({ text }) => text);

test('the table is small enough to ship', () => {
  expect(bytes.length).toBeLessThan(2.1e6);
});

describe('on our own sentences about Tarn Quay and its news', () => {
  const asked = readSwapSentences('swap-test');
  const right = asked.map(({ sentence, start, end, right }) =>
    swapper.findSwaps(sentence, start, end).swaps.map(({ text }) => right.includes(text.toLowerCase())),
  );
  test('there are at least 150 sentences', () => {
    expect(asked.length).toBeGreaterThanOrEqual(150);
  });
  test('the first swap is good in at least 90 % of the sentences', () => {
    expect(right.filter(([first]) => first).length / asked.length).toBeGreaterThanOrEqual(0.9);
  });
  test('one of the first three swaps is good in at least 95 % of the sentences', () => {
    const good = right.filter((list) => list.slice(0, 3).includes(true));
    expect(good.length / asked.length).toBeGreaterThanOrEqual(0.95);
  });
});

test('a swap that practises the step never comes later than one that is merely readable', () => {
  let moved = 0;
  for (const { sentence, start, end } of readSwapSentences('swap-test')) {
    const plain = swapper.findSwaps(sentence, start, end, { reach: () => 'reads' }).swaps;
    plain.forEach(({ text }, at) => {
      const practised = (text.match(/[\p{L}'’-]+/gu) ?? []).map((word) => word.toLowerCase());
      const reach = (word: string) => (practised.includes(word.toLowerCase()) ? 'fresh' : 'reads');
      const now = swapper
        .findSwaps(sentence, start, end, { reach })
        .swaps.findIndex((swap) => swap.text === text);
      expect(now, `${text}: ${sentence}`).toBeLessThanOrEqual(at);
      if (now < at) moved++;
    });
  }
  expect(moved).toBeGreaterThan(0);
});

describe('swaps take the form of the word', () => {
  test.each([
    ['They [purchased] a boat.', 'bought'],
    ['She is [purchasing] a boat.', 'buying'],
    ['He has [selected] a hat.', 'chosen'],
    ['The [vessels] sank.', 'ships'],
    ['The [immense] wave hit us.', 'huge'],
    ['[Immense] waves hit us.', 'Huge'],
    ['They are [extinguishing] the fire.', 'putting out'],
  ])('%s: %s', (marked, text) => {
    expect(texts(marked)).toContain(text);
  });

  test('a phrasal verb is not offered before a pronoun', () => {
    expect(texts('They [extinguished] it.')).not.toContain('put out');
  });

  test('the article changes together with the swap', () => {
    const huge = find('It was an [enormous] wave.').swaps.find(({ text }) => text === 'huge');
    expect(huge?.article).toEqual({ start: 7, end: 9, text: 'a' });
  });
});

describe('swaps fit the sense and the part of speech', () => {
  test.each([
    ['The prisoner was [charged] with theft by the police.', 'accused'],
    ['The film was [shot] in a small town.', 'filmed'],
    ['They sat on the [bank] of the river.', 'side'],
    ['The two towns are [rivals] at the boat race.', 'enemies'],
    ['Water is a [necessity].', 'need'],
  ])('%s: %s', (marked, text) => {
    expect(texts(marked).slice(0, 3)).toContain(text);
  });
});

describe('swaps that fit only one construction', () => {
  const first = (marked: string): string => {
    const { swaps, best } = find(marked);
    return best > 0 ? swaps[0]!.text : '';
  };
  const offers = (marked: string): string[] => {
    const { swaps, best } = find(marked);
    return swaps.slice(0, best).map(({ text }) => text);
  };
  test.each([
    ["[It's] late.", 'It is'],
    ["They [don't] sing.", 'do not'],
    ['[Many] boats sank.', 'Lots of'],
  ])('%s: %s', (marked, text) => {
    expect(first(marked)).toBe(text);
  });
  test.each([
    ['said', 'He [announced] that it sank.', 'He [announced] the sale.'],
    ['told', 'She [explained] how it sank.', 'She [explained] the rule.'],
    ['end', 'It will [result] in a flood.', 'It will [result] from a flood.'],
    ['said yes', 'He [agreed] to the plan.', 'He [agreed] with her.'],
    ['thought', 'He [believed] that it rained.', 'He [believed] him.'],
    ['picked', 'They [chose] the red boat.', 'They [chose] to go.'],
    ['think', 'I [guess] that it rained.', 'I [guess] what it was.'],
    ['rushed', 'They [hurried] to the quay.', 'They [hurried] up the hill.'],
    ['some', 'He saw [several] boats.', 'He rang [several] times.'],
    ['thought of', 'She [considered] the plan.', 'She [considered] him a friend.'],
    ['not the same', 'It was [different].', 'It was [different] from the old one.'],
  ])('%s: %s Not: %s', (text, fits, doesNot) => {
    expect([texts(fits).includes(text), texts(doesNot).includes(text)]).toEqual([true, false]);
  });
  test('a participle before its noun is not replaced, but a participle used as a noun is', () => {
    expect(offers('They helped the [injured] man.')).toEqual([]);
    expect(offers('They helped the [injured].')).toContain('hurt');
  });
  test.each([
    ["[It's] been late.", 'It is'],
    ["It is late, [isn't] it?", 'is not'],
    ['There were too [many] boats.', 'lots of'],
    ['They [allowed] the boys to go.', 'let'],
    ['They [provided] them with food.', 'gave'],
    ['They [continued] to sing.', 'went on'],
    ['[Guess] what they saw.', 'Think'],
    ['It was a [slightly] wet day.', 'bit'],
    ['The plan [requires] that they sing.', 'needs'],
    ["Why [can't] the boys sing?", 'cannot'],
    ['He was too busy to [talk].', 'speak'],
    ['The [sofa] is old, but it is the one sofa here.', 'couch'],
  ])('%s: not %s', (marked, text) => {
    expect(offers(marked)).not.toContain(text);
  });
});

test('of two ways to read a word, the one that better supports a swap counts', () => {
  expect(texts('A small light [illuminated] the steps.')[0]).toBe('lit');
});

test('a helping verb makes a participle only of a verb that follows directly', () => {
  expect(texts('The man had a boat and [selected] a rope.')).toContain('chose');
  expect(texts('The man had [selected] a rope.')).toContain('chosen');
});

describe('swaps for a group', () => {
  const judge = createJudge(
    loadEngine(),
    loadGroup(new URL('../profiles/groups/herons.json', import.meta.url).pathname).compiled,
  );
  const reach = reachFor(judge);

  test('readable swaps come first, and only readable swaps are recommended', () => {
    let recommended = 0;
    let mixed = 0;
    for (const { sentence, start, end } of readSwapSentences('swap-tune')) {
      const { swaps, best } = swapper.findSwaps(sentence, start, end, { reach });
      const reads = swaps.map((swap) => swap.reads);
      recommended += best;
      mixed += Number(reads.includes(true) && reads.includes(false));
      expect(reads).toEqual([...reads].sort((one, other) => Number(other) - Number(one)));
      expect(reads.slice(0, best)).not.toContain(false);
      for (const swap of swaps) {
        expect(swap.reads).toBe(swap.text.split(' ').every((word) => reach(word) !== 'not'));
      }
    }
    expect(recommended).toBeGreaterThan(10);
    expect(mixed).toBeGreaterThan(10);
  });

  test('if no swap fits, the word may be taught or left', () => {
    const { best, alternatives } = find('The [lighthouse] is old.', { reach: () => 'not' });
    expect(best).toBe(0);
    expect(alternatives).toEqual(['teach', 'leave']);
  });
});

test('a word with a capital in mid sentence is likely a name, so nothing is recommended', () => {
  expect(find('The boat of [Grant] is old.').best).toBe(0);
  expect(find('They will [grant] a wish.').best).toBeGreaterThan(0);
  expect(find('[Grant] them a wish.').best).toBeGreaterThan(0);
});

test('an empty or impossible place has no swaps', () => {
  for (const [start, end] of [
    [0, 0],
    [5, 3],
    [3, 4],
    [-1, 99],
  ]) {
    expect(swapper.findSwaps('The old pier.', start!, end!).best).toBe(0);
  }
  expect(swapper.findSwaps('', 0, 0).swaps).toEqual([]);
});

test('bytes that are not a table of swaps are refused', () => {
  expect(() => openSwaps(new Uint8Array(64))).toThrow(RangeError);
});
