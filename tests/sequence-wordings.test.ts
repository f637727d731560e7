import fc from 'fast-check';
import { expect, test } from 'vitest';
import { catalogue } from '../src/analyze/catalogue/catalogue.ts';
import { type ImportedItem, importSequence } from '../src/analyze/index.ts';
import { loadAnalyzer } from './load-analyzer.ts';
import {
  endingConditions,
  exceptions,
  isRight,
  layOuts,
  preparations,
  remarkPlaces,
  sightNames,
  sightRemarks,
  type Wording,
  wordingsOf,
} from './sequences/wordings.ts';

const engine = loadAnalyzer();
const rows = catalogue
  .map((row) => wordingsOf(row).filter(({ text }) => !exceptions.some(([wording]) => wording.test(text))))
  .filter((wordings) => wordings.length > 0);

function read(pasted: string): readonly (readonly ImportedItem[])[] {
  return importSequence(pasted, {}, [], engine).steps.map(({ items }) => items);
}

/** Returns a description of the fault of a reading, or null if the reading has no fault. */
function fault(items: readonly ImportedItem[], wordings: readonly Wording[]): string | null {
  const ids = [...new Set(items.flatMap(({ patterns }) => patterns))];
  const asked = items.filter(({ status }) => status === 'unknown').map(({ text }) => text);
  const words = items.flatMap(({ bySight }) => bySight).filter((word) => !/^(?:the|of)$/.test(word));
  if (isRight(wordings, ids) && asked.length + words.length === 0) return null;
  return `${wordings.map(({ text }) => text).join(' | ')} = ${[...ids, ...words].join(' ')}, asked ${asked.join(', ')}`;
}

/** Wordings drawn at random: any row, and then any wording of that row. */
const wording = fc
  .nat(rows.length - 1)
  .chain((row) => fc.nat(rows[row]!.length - 1).map((at) => rows[row]![at]!));

test('any wording that a teacher may use for a row of the catalogue is read as that row', () => {
  expect(rows.length).toBeGreaterThan(330);
  const drawn = fc.sample(wording, { seed: 20_261_130, numRuns: 1000 });
  const faults = drawn.flatMap((one) => fault(read(`Week 1: ${one.text}\nWeek 2: review`)[0]!, [one]) ?? []);
  expect(faults).toEqual([]);
}, 120_000);

test.each(Object.entries(layOuts))(
  'several wordings together are read as their rows in %s',
  (_, layOut) => {
    const steps = fc.array(fc.array(wording, { minLength: 2, maxLength: 3 }), { minLength: 3, maxLength: 6 });
    const drawn = fc.sample(steps, { seed: 20_261_130, numRuns: 12 });
    const faults = drawn.flatMap((planned) => {
      const found = read(layOut(planned));
      if (found.length !== planned.length) return [`${found.length} steps: ${layOut(planned)}`];
      return planned.flatMap((wordings, i) => fault(found[i]!, wordings) ?? []);
    });
    expect(faults).toEqual([]);
  },
  120_000,
);

/** Ways in which a teacher may join two things in a line. Common practice, no source. */
const joints: Readonly<Record<string, (one: string, other: string) => string>> = {
  'a comma': (one, other) => `${one}, ${other}`,
  and: (one, other) => `${one} and ${other}`,
  'a slash': (one, other) => `${one} / ${other}`,
  'the word then': (one, other) => `${one}, then ${other}`,
  with: (one, other) => `${one} with ${other}`,
  'as well as': (one, other) => `${one} as well as ${other}`,
  'a dash': (one, other) => `${one} - ${other}`,
  brackets: (one, other) => `${one} (${other})`,
  'a full stop': (one, other) => `${one}. ${other[0]!.toUpperCase()}${other.slice(1)}`,
};

/** The highest number of pairs, out of 200, that may be read wrong without a guess or a question. */
const MOST_SURE = 4;

test.each(Object.entries(joints))(
  'of two wordings joined by %s, neither is often lost without a guess or a question',
  (_, join) => {
    const faults = fc
      .sample(fc.tuple(wording, wording), { seed: 20_261_201, numRuns: 200 })
      .flatMap(([one, other]) => {
        const text = join(one.text, other.text);
        const items = read(`Week 1\n${text}\nWeek 2\nreview`)[0]!;
        const sure = items.every(({ status }) => status !== 'guessed' && status !== 'unknown');
        const found = fault(items, [one, other]);
        return sure && found !== null ? [`${text}: ${found}`] : [];
      });
    expect(faults.slice(MOST_SURE)).toEqual([]);
  },
  60_000,
);

test('remarks beside a list of by-sight words are never taught as sure words', () => {
  const words = 'said of they were come have there what one two who again your could people'.split(' ');
  const list = fc.shuffledSubarray(words, { minLength: 2, maxLength: 5 });
  const drawn = fc.sample(fc.record({ list, name: fc.constantFrom(...sightNames) }), {
    seed: 20_261_130,
    numRuns: 4,
  });
  const faults = drawn.flatMap(({ list: own, name }) =>
    ['', ...sightRemarks].flatMap((remark) => {
      const line = `${name}${own.join(', ')}${remark}`;
      const items = read(`Week 1\n- sh\n- ${line}`)[0]!;
      const sure = items.filter(({ status }) => status === 'matched').flatMap(({ bySight }) => bySight);
      const all = items.flatMap(({ bySight }) => bySight);
      const wrong = sure.some((word) => !own.includes(word)) || !own.every((word) => all.includes(word));
      return wrong ? [`${line} = ${all.join(' ')}`] : [];
    }),
  );
  expect(faults).toEqual([]);
});

test('a line of examples below the pattern they show is not asked about', () => {
  const shown = catalogue.flatMap((row) => {
    const [wording] = wordingsOf(row);
    const words = row.examples.filter(
      (word) => /^[a-z]+$/.test(word) && engine.analyze(word).readings[0]?.requires.includes(row.id),
    );
    return wording !== undefined && words.length > 1 ? [{ wording, words }] : [];
  });
  expect(shown.length).toBeGreaterThan(250);
  const faults = fc
    .sample(fc.constantFrom(...shown), { seed: 20_261_130, numRuns: 120 })
    .flatMap(({ wording, words }) => {
      const line = words.slice(0, 3).join(', ');
      const items = read(`Week 1\n- ${wording.text}\n- ${line}\nWeek 2\n- review`)[0]!;
      const teaches = items.flatMap(({ patterns }) => patterns);
      const asked = items.some(({ status, bySight }) => status === 'unknown' || bySight.length > 0);
      return asked || !isRight([wording], teaches)
        ? [`${wording.text} / ${line} = ${teaches.join(' ')}`]
        : [];
    });
  expect(faults).toEqual([]);
});

test.each(Object.entries(remarkPlaces))(
  'a remark on things that a teacher prepares is never a sure match: %s',
  (_, place) => {
    const { verbs, things } = preparations;
    const drawn = fc.sample(
      fc.record({ verb: fc.constantFrom(...verbs), thing: fc.constantFrom(...things) }),
      {
        seed: 20_261_130,
        numRuns: 80,
      },
    );
    const faults = drawn.flatMap(({ verb, thing }) => {
      const remark = `${verb[0]!.toUpperCase()}${verb.slice(1)} ${thing}`;
      return read(place(remark))[0]!
        .filter(
          ({ status, patterns, bySight }) => status === 'matched' && patterns.length + bySight.length > 0,
        )
        .filter(
          ({ patterns, bySight }) => ![...patterns, ...bySight].every((one) => /^(?:sh|ch|the)$/.test(one)),
        )
        .map(({ text, patterns, bySight }) => `${remark}: ${text} = ${[...patterns, ...bySight].join(' ')}`);
    });
    expect(faults).toEqual([]);
  },
);

test('letters that only say where -es is added are not taught', () => {
  const faults = endingConditions.flatMap((text) => {
    const ids = read(`Week 1: ${text}; ai\nWeek 2: review`)[0]!.flatMap(({ patterns }) => patterns);
    return /^suffix-es(?: suffix-es-iz)? ai$/.test(ids.join(' ')) ? [] : [`${text} = ${ids.join(' ')}`];
  });
  expect(faults).toEqual([]);
});

test('word families of a short vowel teach the vowel', () => {
  const forms = [
    (v: string, ends: readonly string[]) => `Short ${v} word families -${ends[0]}`,
    (v: string, ends: readonly string[]) =>
      `short ${v} word families: ${ends.map((end) => `-${end}`).join(', ')}`,
    (v: string, ends: readonly string[]) =>
      `Short ${v} families (${ends.map((end) => `-${end}`).join(', ')})`,
    (v: string, ends: readonly string[]) => `short ${v} rimes ${ends.map((end) => `-${end}`).join(' and ')}`,
  ];
  const faults = [...'aeiou'].flatMap((vowel) =>
    forms.flatMap((form) => {
      const text = form(vowel, [`${vowel}t`, `${vowel}g`, `${vowel}n`]);
      const items = read(`Week 1: ${text}\nWeek 2: sh`)[0]!;
      const ids = items.flatMap(({ patterns }) => patterns);
      const right = ids.join() === `short-${vowel}` && items.every(({ status }) => status !== 'guessed');
      return right ? [] : [`${text} = ${ids.join(' ')}`];
    }),
  );
  expect(faults).toEqual([]);
});
