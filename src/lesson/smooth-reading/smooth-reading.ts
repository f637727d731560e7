import { namesOfPeople } from '../first-names.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { LessonBlock, PartMaker } from '../lesson-part.ts';
import { numberChoice } from '../number-choice.ts';
import { passageSentences } from '../passage-sentences.ts';
import type { Picker } from '../picker.ts';
import { composeSentences } from '../sentences/index.ts';
import { cutPhrases } from './cut-phrases.ts';

const COUNTS = [3, 4, 6, 8, 12];
/** The fewest words of a sentence that is cut into phrases. */
const FEWEST_WORDS = 4;
const BREAKS: Readonly<Record<string, string>> = { bar: '  |  ', gap: '\u2003\u2003' };

/**
 * The passage's sentences in phrases, to be read without stopping inside a phrase, and the plain sentences beside them.
 * Without a passage the sentences are composed.
 */
export const smoothReading: PartMaker = {
  id: 'smooth-reading',
  title: 'Phrases',
  use: 'Pupils read sentences phrase by phrase, then smoothly.',
  choices: () => [
    numberChoice('count', 'How many sentences', COUNTS, 6),
    {
      id: 'breaks',
      label: 'Phrase breaks',
      options: [
        { value: 'bar', label: 'a bar' },
        { value: 'gap', label: 'a wide space' },
      ],
      usual: 'bar',
    },
  ],
  make(input, chosen, picker) {
    const count = Math.max(1, Number(chosen('count')) || 0);
    const sentences = passageSentences(input.passage);
    const readable = sentences.filter(
      (sentence) => input.known.reads(sentence) && countWords(sentence) >= FEWEST_WORDS,
    );
    const first = picker.below(Math.max(1, readable.length - count + 1));
    const later = sentences.filter((sentence) => !input.known.reads(sentence));
    const blocks = [
      ...(sentences.length === 0
        ? phrases(compose(input, count, picker), chosen('breaks'), 'Made of words the group can read. ')
        : phrases(readable.slice(first, first + count), chosen('breaks'))),
      ...notYet(later.slice(0, count)),
    ];
    return {
      blocks,
      made: { count: blocks.find(({ id }) => id === 'phrases')?.rows.length ?? 0 },
      says:
        blocks.length === 0
          ? 'The group can read too few words for a sentence yet. Try again some steps later, or choose a passage.'
          : null,
    };
  },
};

/** Makes sentences of our own for a lesson without a passage. */
function compose({ known, group, focus, analyzer }: LessonInput, count: number, picker: Picker): string[] {
  return composeSentences(known, { names: namesOfPeople(group.names, analyzer), focus, count }, picker);
}

function phrases(sentences: readonly string[], breaks: string, about = ''): LessonBlock[] {
  if (sentences.length === 0) return [];
  let total = 0;
  return [
    {
      id: 'phrases',
      title: 'Read each phrase without stopping',
      layout: 'table',
      note: `${about}Read with the breaks first, then without. Move a break if you would pause elsewhere.`,
      columns: [
        { head: 'In phrases', shows: 'both' },
        { head: 'Plain', shows: 'both' },
        { head: 'Words', shows: 'key' },
        { head: 'So far', shows: 'key' },
      ],
      rows: sentences.map((sentence) => {
        const words = countWords(sentence);
        total += words;
        return [
          cutPhrases(sentence).join(BREAKS[breaks] ?? BREAKS.bar),
          sentence.replace(/\s+/g, ' '),
          String(words),
          String(total),
        ];
      }),
    },
  ];
}

function notYet(sentences: readonly string[]): LessonBlock[] {
  if (sentences.length === 0) return [];
  return [
    {
      id: 'not-yet',
      title: 'Not yet readable',
      layout: 'lines',
      note: 'Read these sentences to the pupils: each has a word the group cannot read yet.',
      columns: [{ head: '', shows: 'key' }],
      rows: sentences.map((sentence) => [cutPhrases(sentence).join(BREAKS.bar)]),
    },
  ];
}

/** Counts words as the desk does: o’clock is one word, and lighthouse-keeper is one word. */
function countWords(sentence: string): number {
  return sentence.match(/[\p{L}\p{N}]+(?:['’-][\p{L}\p{N}]+)*/gu)?.length ?? 0;
}
