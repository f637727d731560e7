import { expect } from 'vitest';
import { catalogue, compileGroup, createJudge, speechOf } from '../../src/analyze/index.ts';
import { bySight } from '../../src/lesson/by-sight/by-sight.ts';
import { cards } from '../../src/lesson/cards/cards.ts';
import { homeSheet } from '../../src/lesson/home-sheet/home-sheet.ts';
import {
  createKnownWords,
  createPicker,
  findFocus,
  type LessonInput,
  type LessonPart,
  openWordBank,
  type PartMaker,
} from '../../src/lesson/index.ts';
import { newPattern } from '../../src/lesson/new-pattern/new-pattern.ts';
import { stepCheck } from '../../src/lesson/step-check/step-check.ts';
import { syllableDivision } from '../../src/lesson/syllable-division/syllable-division.ts';
import { wordSort } from '../../src/lesson/word-sort/word-sort.ts';
import { withoutMarks } from '../../src/marks/mark-word.ts';
import { lessonInput, sequences } from './load-lesson.ts';

/** All steps of all starter sequences. */
export const steps = sequences.flatMap(({ id, steps }) => steps.map((_, i) => ({ id, step: i + 1 })));

/** A passage with easy and hard sentences, a heading, a list entry and speech. */
export const storm = {
  title: 'The storm',
  text: `# The storm
Ines ran to the quay to see the sea. The rain fell on the red sail, and the knight in the play was not there. Otto and Bram had to wait an hour for the ferry because the wind was strong.
- a wet rope
“Can you hear the bell?” said Wilma. “It rings when the mist is thick,” said Mr. Falk. When the lantern on the pier began to glow, the gulls rose from the rocks and flew over the harbour in a long white line.
A man sat on a bench with a net and a box of fish. The ship hit a rock, but the crew got off in a little boat. They made a plan to mend the mast.`,
};

/** Texts that are not proper passages. */
export const oddTexts = [
  '',
  ' \n\n',
  '<p>net</p> **nets** | `x`',
  '###\n- \n•',
  'Ǆxq \u0000 \ud800 🚢🚢 ... "“(',
  '12 34.5 http://x.y/z',
  'a'.repeat(3000),
];

const inputs = new Map<string, LessonInput>();

/** Returns the input for a step. Each input is made only once. */
export function inputAt(id: string, step: number): LessonInput {
  const key = `${id} ${step}`;
  const input = inputs.get(key) ?? lessonInput(id, step);
  inputs.set(key, input);
  return input;
}

/** Makes a part with the given choices, and with the usual choice for all others. */
export function makeOf(
  maker: PartMaker,
  input: LessonInput,
  seed: number,
  chosen: Record<string, string> = {},
): LessonPart {
  const choices = maker.choices(input);
  const usual = (id: string): string => chosen[id] ?? choices.find((choice) => choice.id === id)?.usual ?? '';
  return maker.make(input, usual, createPicker(seed, maker.id));
}

/**
 * Returns the cells for pupils that the group cannot read, or whose letters the group was not taught. Also checks that
 * the part is well formed.
 */
export function unreadable({ blocks, says }: LessonPart, { known }: LessonInput): string[] {
  expect(says === null).toBe(blocks.length > 0);
  return blocks.flatMap(({ columns, rows, layout }) =>
    rows.flatMap((row) => {
      if (layout === 'table') expect(row).toHaveLength(columns.length);
      return row.filter((cell, i) => {
        const { shows, head } = (columns[i] ?? columns[0])!;
        return (
          shows !== 'key' &&
          shows !== 'free' &&
          cell !== '' &&
          cell !== '\u00a0' &&
          !(head === 'Letters' ? isTaught(cell, known) : known.reads(withoutMarks(cell)))
        );
      });
    }),
  );
}

/** Whether all letters of a cell belong to taught patterns, for example `ee`, `a_e`, `+ ing` or `f, ff`. */
function isTaught(cell: string, known: LessonInput['known']): boolean {
  const taught = catalogue.filter(({ id }) => known.knows(id)).flatMap(({ letters }) => letters.split(' '));
  return cell.split(',').every((one) => taught.includes(one.replaceAll(/[^a-z_]/g, '')));
}

/**
 * The word bank in five parts. Finding the words that a group knows in the whole bank takes longer than making all
 * parts of a lesson.
 */
const banks = Array.from({ length: 5 }, (_, fifth) => {
  const { words } = inputAt('steady-steps', 1).bank;
  const some = words.filter((_, i) => i % 5 === fifth);
  const bank = openWordBank(
    some.map(({ word, parts, meaning }) => `${word}\t${parts}\t${meaning}`).join('\n'),
  );
  return { bank, knownTo: createKnownWords(bank, inputAt('steady-steps', 1).analyzer) };
});

const quick = new Map<string, LessonInput>();

/**
 * Returns an input like `lessonInput`, but with only a fifth of the bank, a different fifth at each step. Each input is
 * made once for all tests of a process.
 */
export function quickInput(id: string, step: number): LessonInput {
  const key = `${id} ${step}`;
  const input = quick.get(key) ?? makeQuickInput(id, step);
  quick.set(key, input);
  return input;
}

function makeQuickInput(id: string, step: number): LessonInput {
  const first = inputAt('steady-steps', 1);
  const sequence = sequences.find((each) => each.id === id)!;
  const group = { ...first.group, sequence: id, step, ...(sequence.accent && { accent: sequence.accent }) };
  const judge = createJudge(first.analyzer, compileGroup(group, sequence));
  const { bank, knownTo } = banks[step % 5]!;
  const known = knownTo(judge);
  const analyzer = first.analyzer.speaking(speechOf(group));
  return {
    ...first,
    ...{ group, sequence, analyzer, judge, bank, known },
    focus: findFocus(group, sequence, known.knows),
  };
}

/** The parts that `more-parts.test.ts` makes at every step without a passage, and checks against the law of every part. */
export const moreParts = [newPattern, wordSort, bySight, syllableDivision, stepCheck, cards, homeSheet];

/**
 * Checks the law of every part: at every step, alternately with and without a passage, pupils get only text that they
 * can read. Returns the number of blocks that each part made. The number of the step is the seed. `suitability.test.ts`
 * and `more-parts.test.ts` make the same parts with other seeds.
 */
export function checkEveryStep(makers: readonly PartMaker[]): Record<string, number> {
  const made = Object.fromEntries(makers.map(({ id }) => [id, 0]));
  for (const [n, { id, step }] of steps.entries()) {
    const input = quickInput(id, step);
    for (const [m, maker] of makers.entries()) {
      const passage = (n + m) % 2 === 0 ? storm : null;
      if (!passage && moreParts.includes(maker)) continue;
      const part = makeOf(maker, { ...input, passage }, step);
      expect(unreadable(part, input), `${maker.id} at ${id} ${step}`).toEqual([]);
      made[maker.id]! += part.blocks.length;
    }
  }
  return made;
}

let odd: readonly LessonInput[] | undefined;

/**
 * Checks a part with a group that was taught nothing, with odd passages and with unknown choices. The part throws no
 * error, and the same seed gives the same part.
 */
export function checkOddInputs(maker: PartMaker): void {
  odd ??= [
    inputAt('steady-steps', 0),
    lessonInput('none', 0, { sequence: null }),
    inputAt('steady-steps', 1),
    inputAt('second-tide', 30),
  ];
  for (const input of odd) {
    for (const text of oddTexts) {
      const given = { ...input, passage: { title: '', text } };
      const part = makeOf(maker, given, 7, { word: 'zzz', count: '-3' });
      expect(unreadable(part, given)).toEqual([]);
      expect(makeOf(maker, given, 7, { word: 'zzz', count: '-3' })).toEqual(part);
      if (part.says !== null) expect(part.says).toMatch(/[.:;] .*\.$/);
    }
  }
}
