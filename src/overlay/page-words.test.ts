import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { settleCounts } from '../analyze/index.ts';
import { PageWords } from './page-words.ts';

describe('the words of a page', () => {
  test('are counted as they are on the page now, whatever was there before', () => {
    const keys = fc.constantFrom('fog', 'Bram', 'tide^', 'read#1');
    fc.assert(
      fc.property(fc.array(fc.tuple(keys, fc.integer({ min: 0, max: 3 }))), (steps) => {
        const words = new PageWords();
        const expected = new Map<string, number>();
        for (const [key, count] of steps) {
          words.of(key).count = count;
          if (count > 0) expected.set(key, count);
          else expected.delete(key);
        }
        expect([...words.counts()].sort()).toEqual([...expected].sort());
        expect(
          words
            .present()
            .map(({ key }) => key)
            .sort(),
        ).toEqual([...expected.keys()].sort());
        words.forgetGone();
        for (const [key, count] of expected) expect(words.of(key).count).toBe(count);
        expect([...words.counts()].sort()).toEqual([...expected].sort());
      }),
    );
  });

  test('share one entry for all places of a key', () => {
    const words = new PageWords();
    expect(words.of('fog')).toBe(words.of('fog'));
    expect(words.of('Fog')).not.toBe(words.of('fog'));
    expect([words.of('read').isHomograph, words.of('fog').isHomograph]).toEqual([true, false]);
  });

  test('share one entry for all places of a key even if many keys are alike', () => {
    const key = fc.string({
      unit: fc.constantFrom('a', 'b', 'e', 'B', '^', '+'),
      minLength: 1,
      maxLength: 6,
    });
    fc.assert(
      fc.property(fc.array(key, { maxLength: 60 }), (keys) => {
        const words = new PageWords();
        const known = new Map<string, unknown>();
        for (const key of keys) {
          const word = words.of(key);
          expect(word.key).toBe(key);
          expect(word).toBe(known.get(key) ?? word);
          known.set(key, word);
        }
      }),
    );
  });

  test('forget words that are gone', () => {
    const words = new PageWords();
    const gone = words.of('fog');
    words.forgetGone();
    expect(words.of('fog')).not.toBe(gone);
  });
});

describe('a capital at the start of a sentence', () => {
  const page = (...counts: (readonly [key: string, count: number])[]) => {
    const words = new PageWords();
    for (const [key, count] of counts) {
      words.of(key).count = count;
      words.of(key).standing = 'reads';
    }
    return words;
  };

  test('becomes a name if the page has the name inside a sentence, and the name is checked anew', () => {
    const words = page(['Biscuit^', 1]);
    words.of('Biscuit').count = 2;
    expect(words.settle()).toEqual([{ key: 'Biscuit', isHomograph: false, standing: undefined, count: 1 }]);
    expect(words.counts()).toEqual(new Map([['Biscuit', 3]]));
    expect(words.settle()).toEqual([]);
  });

  test('gets the standing of the name at once if it is known', () => {
    const words = page(['Biscuit^', 1]);
    words.of('Biscuit').count = 1;
    words.of('Biscuit').standing = 'name';
    expect(words.settle()).toEqual([{ key: 'Biscuit', isHomograph: false, standing: 'name', count: 1 }]);
  });

  test('counts as a sentence capital again once the name is gone', () => {
    const words = page(['Biscuit^', 1], ['Biscuit', 1]);
    words.settle();
    words.of('Biscuit').count = 0;
    expect(words.settle()).toEqual([{ key: 'Biscuit^', isHomograph: false, standing: undefined, count: 1 }]);
  });

  test('is settled as in a text with the same words', () => {
    const key = fc
      .tuple(
        fc.constantFrom('Tide', 'Tides', "Tide's", 'Bram', 'TIDE'),
        fc.constantFrom('', '^', '~', '+', '='),
      )
      .map(([word, sign]) => word + sign);
    const all = fc.oneof(key, fc.constantFrom('tide', "tide's", 'bram'));
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.tuple(all, fc.integer({ min: 0, max: 4 })), { selector: ([one]) => one }),
        (counts) => {
          const words = page(...counts);
          words.settle();
          const isOnPage = counts.filter(([, count]) => count > 0);
          expect(words.counts()).toEqual(settleCounts(new Map(isOnPage)));
        },
      ),
    );
  });

  test('stays as it is if the page gives no evidence', () => {
    expect(page(['Biscuit^', 1], ['biscuit', 3]).settle()).toEqual([]);
  });
});
