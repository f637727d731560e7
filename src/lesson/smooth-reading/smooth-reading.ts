import type { LessonBlock, PartMaker } from '../lesson-part.ts';
import { passageSentences } from '../passage-sentences.ts';
import { cutPhrases } from './cut-phrases.ts';

const COUNTS = [3, 4, 6, 8, 12];
const BREAKS: Readonly<Record<string, string>> = { bar: '  |  ', gap: '\u2003\u2003' };

/** The passage's sentences in phrases, to be read without stopping inside one, and plain beside. */
export const smoothReading: PartMaker = {
  id: 'smooth-reading',
  title: 'Smooth reading',
  choices: () => [
    {
      id: 'count',
      label: 'How many sentences',
      options: COUNTS.map((count) => ({ value: String(count), label: String(count) })),
      usual: '6',
    },
    {
      id: 'breaks',
      label: 'Between phrases',
      options: [
        { value: 'bar', label: 'a bar' },
        { value: 'gap', label: 'a wide gap' },
      ],
      usual: 'bar',
    },
  ],
  make(input, chosen, picker) {
    const sentences = passageSentences(input.passage);
    if (sentences.length === 0) {
      return {
        blocks: [],
        says: input.passage
          ? 'The passage has no whole sentence yet: write one at the desk.'
          : 'There is no passage yet: choose one, and its sentences are cut into phrases here.',
      };
    }
    const count = Math.max(1, Number(chosen('count')) || 0);
    const first = picker.below(Math.max(1, sentences.filter(input.known.reads).length - count + 1));
    const readable = sentences.filter(input.known.reads).slice(first, first + count);
    const later = sentences.filter((sentence) => !input.known.reads(sentence));
    return { blocks: [...phrases(readable, chosen('breaks')), ...notYet(later.slice(0, count))], says: null };
  },
};

function phrases(sentences: readonly string[], breaks: string): LessonBlock[] {
  if (sentences.length === 0) return [];
  let total = 0;
  return [
    {
      id: 'phrases',
      title: 'Read each phrase without stopping',
      layout: 'table',
      note: 'First with the breaks, then without. Change a break where you would pause elsewhere.',
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
      note: 'Sentences of the passage with a word the group cannot read yet: to read aloud to the pupils.',
      columns: [{ head: '', shows: 'key' }],
      rows: sentences.map((sentence) => [cutPhrases(sentence).join(BREAKS.bar)]),
    },
  ];
}

/** Words as they are counted on the desk: o’clock is one, lighthouse-keeper is one. */
function countWords(sentence: string): number {
  return sentence.match(/[\p{L}\p{N}]+(?:['’-][\p{L}\p{N}]+)*/gu)?.length ?? 0;
}
