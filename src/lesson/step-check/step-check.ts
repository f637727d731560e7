import { chooseBySight } from '../dictation/choose-words.ts';
import { namesOfPeople } from '../first-names.ts';
import type { LessonBlock, PartMaker } from '../lesson-part.ts';
import { numberChoice } from '../number-choice.ts';
import { composeSentences } from '../sentences/index.ts';
import { chooseMadeUp, chooseRealWords } from './choose-items.ts';

const REAL = 10;
const MADE_UP = 5;
const BY_SIGHT = 5;
const SENTENCES = 2;
/** An empty cell to write in. */
const EMPTY = '\u00a0';
/** Printed on every sheet of the check. */
const DISCLAIMER = 'The teacher’s own check of what was taught. It is not an assessment of a child.';

/** Words and sentences a pupil reads at the end of a step, with a score box, and a class record on the key. */
export const stepCheck: PartMaker = {
  id: 'step-check',
  title: 'End-of-step check',
  extra: true,
  use: 'One pupil at a time reads the items aloud, and you note the scores in the class record on your key.',
  choices: () => [numberChoice('pupils', 'Pupils in the class record', [6, 12, 18, 24, 30], 12)],
  make(input, chosen, picker) {
    const { known, group, focus, analyzer } = input;
    const real = focus.length > 0 ? chooseRealWords(input, REAL, picker) : [];
    const { words: madeUp, ofStep } =
      real.length > 0 ? chooseMadeUp(input, MADE_UP, picker) : { words: [], ofStep: 0 };
    const bySight = chooseBySight(input, BY_SIGHT, picker);
    const sentences = apart(
      composeSentences(
        known,
        { names: namesOfPeople(group.names, analyzer), focus, count: 4 * SENTENCES },
        picker,
      ),
      SENTENCES,
    );
    const wished = [
      { id: 'real', title: 'Words', short: 'Words', rows: real, wanted: REAL },
      { id: 'made-up', title: 'Made-up words', short: 'Made-up', rows: madeUp, wanted: MADE_UP },
      { id: 'by-sight', title: 'By-sight words', short: 'By sight', rows: bySight, wanted: BY_SIGHT },
      { id: 'sentences', title: 'Sentences', short: 'Sentences', rows: sentences, wanted: SENTENCES },
    ];
    const items = wished.filter(({ rows }) => rows.length > 0);
    if (real.length === 0) {
      return {
        blocks: [],
        says: 'The group can read too few words for a check yet. Choose a later step on the Groups page.',
      };
    }
    const total = items.reduce((sum, { rows }) => sum + rows.length, 0);
    const heads = items.map(({ short, rows }) => `${short} /${rows.length}`);
    const few = wished.filter(({ rows, wanted }) => rows.length < wanted);
    const blocks: LessonBlock[] = [
      {
        id: 'about',
        title: '',
        layout: 'lines',
        columns: [{ head: '', shows: 'free' }],
        rows: [[DISCLAIMER]],
        note: `Show one block at a time and count what is read right without help.${
          few.length > 0
            ? ` Fewer than usual, because the group can read too few yet: ${few.map(({ title }) => title.toLowerCase()).join(', ')}.`
            : ''
        }${
          ofStep < madeUp.length
            ? ' Some made-up words are of earlier steps, because this one makes too few.'
            : ''
        }`,
      },
      ...items.map(
        ({ id, title, rows }): LessonBlock => ({
          id,
          title,
          layout: id === 'sentences' ? 'lines' : 'words',
          columns: [{ head: '', shows: 'both' }],
          rows: rows.map((text) => [text]),
        }),
      ),
      {
        id: 'score',
        title: 'Score',
        layout: 'grid',
        columns: [...heads, `All /${total}`].map((head) => ({ head, shows: 'free' })),
        rows: [[...heads, ''].map(() => EMPTY)],
      },
      {
        id: 'record',
        title: 'Class record',
        layout: 'grid',
        columns: ['Pupil', ...heads, `All /${total}`].map((head) => ({ head, shows: 'key' })),
        rows: Array.from({ length: Number(chosen('pupils')) || 12 }, () =>
          ['', ...heads, ''].map(() => EMPTY),
        ),
      },
    ];
    return { blocks, says: null };
  },
};

/**
 * Returns sentences that share no longer word, as far as possible. Two sentences that both test church would test only
 * one word.
 */
function apart(sentences: readonly string[], count: number): string[] {
  const longWords = (text: string): string[] => text.toLowerCase().match(/[a-z']{4,}/g) ?? [];
  const taken: string[] = [];
  for (const one of sentences) {
    const shares = taken.some((other) => longWords(one).some((word) => longWords(other).includes(word)));
    if (taken.length < count && !shares) taken.push(one);
  }
  return [...taken, ...sentences.filter((one) => !taken.includes(one))].slice(0, count);
}
