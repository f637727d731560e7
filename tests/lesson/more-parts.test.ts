import { describe, expect, test } from 'vitest';
import { catalogue } from '../../src/analyze/index.ts';
import { bySight } from '../../src/lesson/by-sight/by-sight.ts';
import { mapLetters } from '../../src/lesson/by-sight/map-letters.ts';
import { cards } from '../../src/lesson/cards/cards.ts';
import { fitWords } from '../../src/lesson/fit-words.ts';
import { homeSheet } from '../../src/lesson/home-sheet/home-sheet.ts';
import { createPicker, type LessonInput, type PartMaker } from '../../src/lesson/index.ts';
import { newPattern } from '../../src/lesson/new-pattern/new-pattern.ts';
import rules from '../../src/lesson/new-pattern/rules.json' with { type: 'json' };
import { sayRule } from '../../src/lesson/new-pattern/say-rule.ts';
import { heardAs } from '../../src/lesson/review/correspondences.ts';
import { spacedReview } from '../../src/lesson/spaced-review/spaced-review.ts';
import { stepCheck } from '../../src/lesson/step-check/step-check.ts';
import { syllableDivision } from '../../src/lesson/syllable-division/syllable-division.ts';
import { isMistakable } from '../../src/lesson/word-lists/is-mistakable.ts';
import { wordSort } from '../../src/lesson/word-sort/word-sort.ts';
import { wordsOfPattern } from '../../src/lesson/words-of-patterns.ts';
import { soundName } from '../../src/marks/sound-names.ts';
import { checkOddInputs, makeOf, moreParts, quickInput, steps, storm, unreadable } from './check-sheet.ts';
import { lessonInput } from './load-lesson.ts';

const ALL = { timeout: 240_000 };

const made = new Map<string, ReturnType<typeof makeOf>>();

/**
 * Makes a part at every step of every starter, with a different seed at each step, and passes the part to `look`. Each
 * part is made only once. The group must be able to read the text for pupils in each part.
 */
function atEveryStep(
  maker: PartMaker,
  look: (part: ReturnType<typeof makeOf>, input: LessonInput, at: string) => void,
  chosen: Record<string, string> = {},
): void {
  for (const { id, step } of steps) {
    const input = quickInput(id, step);
    const key = `${maker.id} ${JSON.stringify(chosen)} ${id} ${step}`;
    const at = `${maker.id} at ${id} ${step}`;
    let part = made.get(key);
    if (!part) {
      part = makeOf(maker, input, 31 * step, chosen);
      expect(unreadable(part, input), at).toEqual([]);
      made.set(key, part);
    }
    look(part, input, at);
  }
}

const blockOf = ({ blocks }: ReturnType<typeof makeOf>, id: string) => blocks.find((each) => each.id === id);
const column = (part: ReturnType<typeof makeOf>, id: string, at = 0): string[] =>
  (blockOf(part, id)?.rows ?? []).map((row) => row[at]!).filter((cell) => cell !== '');

describe('the new pattern part', () => {
  test(
    'sorts words with the pattern on one side and words without it on the other, none on both',
    ALL,
    () => {
      let looked = 0;
      atEveryStep(newPattern, (part, input, at) => {
        const [has, hasNot] = [column(part, 'sort', 0), column(part, 'sort', 1)];
        if (has.length === 0) return;
        looked++;
        expect(new Set([...has, ...hasNot]).size, at).toBe(has.length + hasNot.length);
        expect(column(part, 'words').toSorted(), at).toEqual([...has, ...hasNot].toSorted());
        const label = blockOf(part, 'pattern')!.title;
        const { id, family } = catalogue.find((row) => row.label === label)!;
        if (family === 'syllable type') return;
        const requires = (word: string): boolean => {
          const { requires, units } = input.analyzer.analyze(word).readings[0]!;
          return requires.includes(id) || units.some(({ pattern }) => pattern === id);
        };
        expect(
          has.filter((word) => !requires(word)),
          at,
        ).toEqual([]);
        expect(hasNot.filter(requires), at).toEqual([]);
        const pattern = blockOf(part, 'pattern')!;
        expect(
          pattern.rows[0]!.filter((cell) => cell === ''),
          at,
        ).toEqual([]);
        if (pattern.note!.includes('short word'))
          expect(
            has.filter((word) => input.known.find(word)!.reading.syllables.length > 1),
            at,
          ).toEqual([]);
      });
      expect(looked).toBeGreaterThan(100);
    },
  );

  test('has a complete rule for every pattern that has words', () => {
    const ids = new Set<string>(catalogue.map(({ id }) => id));
    expect(Object.keys(rules).filter((id) => !ids.has(id))).toEqual([]);
    const rows = catalogue.filter(
      ({ id, family }) => id !== 'irregular' && !/^(?:syllable division|root)$/.test(family),
    );
    for (const row of rows)
      expect(sayRule(row, { accent: 'american', marks: 'dictionary' }), row.id).toMatch(
        /^[A-Z-].*\.$|^[a-z’]+-? .*\.$/,
      );
    for (const row of rows)
      expect(sayRule(row, { accent: 'american', marks: 'dictionary' }), row.id).not.toMatch(
        /[{}]|says? silent|undefined/,
      );
  });
});

describe('a word sort', () => {
  test('has the sound exactly once in every word, spelt as in the head of the column', ALL, () => {
    let looked = 0;
    atEveryStep(wordSort, (part, input, at) => {
      const sort = blockOf(part, 'sort');
      if (!sort) return;
      expect(sort.columns.length, at).toBeGreaterThanOrEqual(2);
      expect(sort.columns.length, at).toBeLessThanOrEqual(4);
      const sound = /the sound (\S+) as in/.exec(blockOf(part, 'words')!.note!)![1];
      for (const [i, { head }] of sort.columns.entries()) {
        for (const word of column(part, 'sort', i)) {
          looked++;
          const { units } = input.analyzer.analyze(word).readings[0]!;
          const own = units.filter((unit) => soundName(heardAs(unit.sound)) === sound);
          expect(
            own.map(({ letters }) => letters),
            `${at} ${word}`,
          ).toEqual([head]);
        }
      }
    });
    expect(looked).toBeGreaterThan(800);
  });
});

describe('the by-sight words part', () => {
  test(
    'shows letters that make up the word, and rows with the word three times among other words',
    ALL,
    () => {
      atEveryStep(bySight, (part, _input, at) => {
        for (const [word, letters] of blockOf(part, 'map')?.rows ?? [])
          expect(letters!.replace(/[[\] ]/g, '').toLowerCase(), at).toBe(word!.toLowerCase());
        for (const [word, row] of blockOf(part, 'find')?.rows ?? []) {
          const words = row!.split('\u2003');
          expect(
            words.filter((each) => each === word),
            `${at} ${word}`,
          ).toHaveLength(3);
          expect(words.length, `${at} ${word}`).toBeGreaterThanOrEqual(5);
        }
      });
    },
  );

  test.each([
    ['said', 'steady-steps', 6, 's [ai] d'],
    ['come', 'steady-steps', 12, 'c [o] m [e]'],
    ['could', 'steady-steps', 22, 'c [oul] d'],
    ['she', 'steady-steps', 20, 'sh e'],
    ['does', 'steady-steps', 32, 'd [oe] s'],
    ['does', 'steady-steps', 75, 'd [oe] s'],
  ])('maps the letters of %s at a step of %s', (word, id, step, letters) => {
    const { analyzer, known } = lessonInput(id, step);
    expect(mapLetters(word, analyzer.analyze(word).readings[0]!, known)?.letters).toBe(letters);
  });

  test('treats a word without regular letters as a whole word', () => {
    const { analyzer, known } = lessonInput('steady-steps', 12);
    expect(mapLetters('one', analyzer.analyze('one').readings[0]!, known)).toBeNull();
  });
});

test(
  'each word to divide equals the divided word without its marks, with a type for each syllable',
  ALL,
  () => {
    let looked = 0;
    atEveryStep(syllableDivision, (part, _input, at) => {
      for (const [word, marked, types] of blockOf(part, 'divide')?.rows ?? []) {
        looked++;
        const plain = marked!.normalize('NFD').replace(/[\u0300-\u036f]/g, '');
        expect(plain.replaceAll('·', ''), at).toBe(word);
        expect(plain.split('·').length, `${at} ${word}`).toBe(types!.split(', ').length);
        expect(plain.split('·').length, `${at} ${word}`).toBeGreaterThanOrEqual(2);
      }
    });
    expect(looked).toBeGreaterThan(500);
  },
);

test(
  'a step check has up to ten words, five made-up words, five by-sight words and two sentences',
  ALL,
  () => {
    let whole = 0;
    atEveryStep(stepCheck, (part, input, at) => {
      if (part.says !== null) return;
      const sizes = { real: 10, 'made-up': 5, 'by-sight': 5, sentences: 2 };
      const few = Object.entries(sizes).filter(([id, size]) => column(part, id).length < size);
      const note = blockOf(part, 'about')!.note!;
      expect(note.includes('Fewer than usual'), at).toBe(few.length > 0);
      if (few.length === 0) whole++;
      for (const [id, size] of Object.entries(sizes))
        expect(column(part, id).length).toBeLessThanOrEqual(size);
      for (const word of column(part, 'made-up')) expect(input.bank.find(word), at).toBeUndefined();
      expect(column(part, 'about')[0], at).toMatch(/not an assessment/);
      expect(blockOf(part, 'record')!.rows).toHaveLength(12);
    });
    expect(whole).toBeGreaterThan(60);
  },
);

describe('cards', () => {
  test.each([
    ['words', '6', '1', 6],
    ['words', '12', '2', 24],
    ['letters', '12', '1', 12],
  ])('with %s have %s on a page and fill %s pages', (of, size, pages, count) => {
    const part = makeOf(cards, lessonInput('steady-steps', 32), 5, { of, size, pages });
    expect(part.blocks[0]!.layout).toBe(`cards-${size}`);
    expect(new Set(column(part, 'cards')).size).toBe(count);
  });

  test('show no rare endings, and show compounds and contractions as whole words', ALL, () => {
    atEveryStep(
      cards,
      (part, input, at) => {
        const texts = column(part, 'cards');
        expect(
          texts.filter((text) => /^(?:[nld]th|lch|ffe)$/.test(text)),
          at,
        ).toEqual([]);
        if (input.focus.some((id) => /^(?:compound|contraction|possessive)$/.test(id)) && part.says === null)
          expect(blockOf(part, 'cards')!.columns[0]!.head, at).toBe('');
      },
      { of: 'letters' },
    );
  });

  test.each([
    ['second-tide', 26, 'syllables-3'],
    ['steady-steps', 66, 'syllables-3'],
    ['second-tide', 21, 'consonant-le'],
  ])('with words of %s at step %i all have the pattern %s', (id, step, pattern) => {
    const input = lessonInput(id, step);
    for (const word of column(makeOf(cards, input, 7), 'cards'))
      expect(input.known.find(word)!.reading.requires, word).toContain(pattern);
  });

  test('with syllables form whole words when they are read in order', () => {
    const input = lessonInput('steady-steps', 52);
    const texts = column(makeOf(cards, input, 5, { of: 'syllables' }), 'cards');
    expect(texts.length).toBeGreaterThan(8);
    const joined = texts.join('');
    const isWords = (from: number): boolean =>
      from === joined.length ||
      Array.from({ length: 12 }, (_, i) => from + 3 + i).some(
        (to) => to <= joined.length && input.known.find(joined.slice(from, to)) && isWords(to),
      );
    expect(isWords(0), joined).toBe(true);
  });

  test('use the words of the sheet first', () => {
    const input = lessonInput('steady-steps', 30);
    const sheet = [
      {
        says: null,
        blocks: [
          {
            id: 'words',
            title: '',
            layout: 'words' as const,
            columns: [{ head: '', shows: 'both' as const }],
            rows: [['teeth'], ['beach'], ['qwx']],
          },
        ],
      },
    ];
    const { blocks } = cards.make(input, () => '', createPicker(1), sheet);
    expect(blocks[0]!.rows.slice(0, 2)).toEqual([['teeth'], ['beach']]);
  });
});

test('a schwa is always an irregular part in letter mapping', () => {
  const { analyzer, known } = lessonInput('england-2013', 46);
  for (const [word, letters] of [
    ['about', '[a] b ou t'],
    ['sugar', '[s] u g [ar]'],
  ] as const)
    expect(mapLetters(word, analyzer.analyze(word).readings[0]!, known)?.letters).toBe(letters);
});

test('a check, cards and a home sheet have words for every pattern of the step', ALL, () => {
  for (const [maker, block, room] of [
    [stepCheck, 'real', 10],
    [cards, 'cards', 12],
    [homeSheet, 'en-words', 8],
  ] as const) {
    let looked = 0;
    atEveryStep(maker, (part, input, at) => {
      if (part.says !== null || input.focus.length === 0) return;
      const needs = column(part, block).map((word) => {
        const reading = input.known.find(word)?.reading ?? input.analyzer.analyze(word).readings[0]!;
        return new Set(reading.requires);
      });
      const all = input.focus.filter((id) => wordsOfPattern(input, id).length > 0);
      // A rime (-ank) is shown by words with its letters. A step may have more patterns than there is room for.
      const shown = all.filter((id) => !id.startsWith('rime-') && wordsOfPattern(input, id).length > 2);
      if (all.length > room) return;
      looked++;
      expect(
        shown.filter((id) => !needs.some((requires) => requires.has(id))),
        at,
      ).toEqual([]);
    });
    expect(looked).toBeGreaterThan(80);
  }
});

test('no syllable division separates a soft c or g from the letter that softens it', ALL, () => {
  atEveryStep(syllableDivision, (part, _input, at) => {
    for (const [, marked = ''] of blockOf(part, 'divide')?.rows ?? [])
      expect(marked.normalize('NFD').replace(/[\u0300-\u036f]/g, ''), at).not.toMatch(/[cg]·[eiy]/);
  });
});

test('a group in England gets no American spelling, and other groups get no British spelling', ALL, () => {
  for (const { id, step } of steps) {
    const words = fitWords(quickInput(id, step)).map(({ word }) => word);
    const isEngland = id === 'england-2013';
    expect(
      words.filter((word) =>
        (isEngland ? /^(?:gray|color|harbor|favorite)$/ : /^(?:grey|colour|harbour|practise)$/).test(word),
      ),
      `${id} ${step}`,
    ).toEqual([]);
  }
});

test.each([
  ['vew', 'V UW'],
  ['scue', 'S K UW'],
  ['fank', 'F AE NG K'],
  ['dird', 'D ER D'],
  ['firt', 'F ER T'],
  ['haint', 'HH EY N T'],
])('%s sounds too much like a word to be a made-up word', (word, sound) =>
  expect(isMistakable(word, sound)).toBe(true),
);

test('a lesson on closed syllables has no words with open syllables before these are taught', () => {
  const input = lessonInput('second-tide', 10);
  expect(input.focus).toContain('type-closed');
  expect(input.sequence!.steps.slice(10).flatMap(({ teaches }) => teaches)).toContain('type-open');
  for (let seed = 0; seed < 12; seed++) {
    const words = makeOf(syllableDivision, input, seed).blocks.flatMap(({ rows }) => rows);
    expect(words.length).toBeGreaterThan(2);
    for (const [word, , types] of words) expect(types!.split(', '), word).not.toContain('open');
  }
});

test('a home sheet names a silent w by itself, and no card shows sw', () => {
  const input = lessonInput('england-2013', 30);
  expect(input.focus).toContain('w-silent');
  for (let seed = 0; seed < 6; seed++) {
    const [about] = makeOf(homeSheet, input, seed).blocks;
    expect(about!.rows[0]![0]).toContain('silent “w”, as in sword');
    const letters = makeOf(cards, input, seed, { of: 'letters' }).blocks.flatMap(({ rows }) => rows.flat());
    expect(letters.length).toBeGreaterThan(0);
    expect(letters).not.toContain('sw');
  }
});

test('a home sheet is in the chosen language, with the same words in each', () => {
  const input = lessonInput('steady-steps', 29);
  const [english, spanish] = ['en', 'es'].map((language) => makeOf(homeSheet, input, 3, { language }));
  expect(english!.blocks[0]!.rows[0]![0]).toMatch(/“ai”, as in rain/);
  expect(spanish!.blocks[0]!.rows[0]![0]).toMatch(/«ai»/);
  expect(column(spanish!, 'es-words')).toEqual(column(english!, 'en-words'));
  expect(makeOf(homeSheet, input, 3, { language: 'both' }).blocks).toHaveLength(8);
});

test(
  'a home sheet names at most five spellings, no rare endings, and no by-sight word of its pattern',
  ALL,
  () => {
    atEveryStep(homeSheet, (part, { focus }, at) => {
      if (part.says !== null) return;
      const about = column(part, 'en-about')[0]!;
      expect(about.split('“').length - 1, at).toBeLessThanOrEqual(5);
      expect(about, at).not.toMatch(/“(?:dth|nth|lth|lch|ffe)”/);
      const words = column(part, 'en-words');
      if (focus.length > 0 && focus.every((id) => /^(?:contraction|possessive)$/.test(id)))
        expect(
          words.filter((word) => !word.includes("'")),
          at,
        ).toEqual([]);
      if (focus.includes('ea-long-e')) expect(column(part, 'en-by-sight'), at).not.toContain('eat');
    });
  },
);

test.each(moreParts)(
  'a group that has been taught nothing, or an odd passage, causes no error: %o',
  (maker) => checkOddInputs(maker),
);

test('the same seed gives the same part', () => {
  const input = { ...lessonInput('steady-steps', 66), passage: storm };
  for (const maker of moreParts) expect(makeOf(maker, input, 9)).toEqual(makeOf(maker, input, 9));
});

describe('spaced review', () => {
  const earlier = [
    { day: '2026-09-01', patterns: ['ai', 'oa'], words: ['rain', 'boat', 'verdict'], bySight: ['said'] },
    { day: '2026-11-20', patterns: ['oa'], words: ['boat', 'goat'], bySight: ['said', 'aardvark'] },
    { day: '2026-11-25', patterns: ['igh'], words: ['light'], bySight: [] },
  ];
  const input = { ...lessonInput('steady-steps', 32), earlier };

  test('brings due words back, the most overdue first, without words that are unreadable or were met today', () => {
    const part = makeOf(spacedReview, input, 1);
    expect(column(part, 'words')).toEqual(['rain', 'goat', 'boat']);
    expect(column(part, 'by-sight')).toEqual(['said']);
    expect(blockOf(part, 'words')!.rows[1]).toEqual(['goat', '5 days ago']);
  });

  test('shows the teacher the patterns that have not been used for a month', () => {
    expect(column(makeOf(spacedReview, input, 1), 'long')).toEqual(['ai as in rain']);
  });

  test('shows a note before the first sheet, and on a day with nothing due', () => {
    expect(makeOf(spacedReview, { ...input, earlier: [] }, 1).says).toMatch(/No sheet/);
    const today = earlier.filter(({ day }) => day === input.day);
    expect(makeOf(spacedReview, { ...input, earlier: today }, 1).says).toMatch(/Nothing is due/);
  });
});
