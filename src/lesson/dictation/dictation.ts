import { markedText } from '../../marks/mark-word.ts';
import { soundName } from '../../marks/sound-names.ts';
import { namesOfPeople } from '../first-names.ts';
import type { KnownWord } from '../known-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { LessonBlock, PartMaker } from '../lesson-part.ts';
import { numberChoice } from '../number-choice.ts';
import type { Picker } from '../picker.ts';
import { composeSentences } from '../sentences/index.ts';
import { chooseSounds } from './choose-sounds.ts';
import { chooseBySight, chooseWords } from './choose-words.ts';
import { findInPassage } from './find-in-passage.ts';

const COUNTS = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10];

/**
 * Sounds, words, by-sight words and sentences that the group writes as it hears them. The pupils' sheet has lines to
 * write on, and the key has the answers. The cells of `sounds` are taught letters. The group can read every other
 * answer.
 */
export const dictation: PartMaker = {
  id: 'dictation',
  title: 'Dictation',
  use: 'Say sounds, words and sentences, and pupils write them.',
  choices: ({ passage }) => [
    numberChoice('sounds', 'Sounds', COUNTS, 3),
    numberChoice('words', 'Words', COUNTS, 6),
    numberChoice('by-sight', 'By-sight words', COUNTS, 3),
    numberChoice('sentences', 'Sentences', [0, 1, 2], 2),
    {
      id: 'from',
      label: 'Sentences from',
      options: [
        ...(passage ? [{ value: 'passage', label: 'the passage' }] : []),
        { value: 'composed', label: 'words they can read' },
      ],
      usual: passage ? 'passage' : 'composed',
    },
  ],
  make(input, chosen, picker) {
    const count = (id: string): number => Number(chosen(id)) || 0;
    const all = [
      soundsBlock(input, count('sounds'), picker),
      wordsBlock(input, count('words'), picker),
      bySightBlock(input, count('by-sight'), picker),
      sentencesBlock(input, count('sentences'), chosen('from') === 'passage', picker),
    ];
    const blocks = all.filter((block) => block.rows.length > 0);
    const made = Object.fromEntries(all.map(({ id, rows }) => [id, rows.length]));
    if (blocks.length > 0) return { blocks, says: null, made };
    const none = ['sounds', 'words', 'by-sight', 'sentences'].every((id) => count(id) === 0);
    return {
      blocks,
      says: none
        ? 'There is nothing to write yet. Choose how many sounds, words or sentences you want.'
        : 'This group can write no words yet. Move it on a step, or add taught patterns on the Groups page.',
    };
  },
};

function soundsBlock(input: LessonInput, count: number, picker: Picker): LessonBlock {
  return {
    id: 'sounds',
    title: 'Sounds',
    layout: 'table',
    columns: [
      { head: 'Sound', shows: 'key' },
      { head: 'As in', shows: 'key' },
      { head: 'Letters', shows: 'blank' },
    ],
    rows: chooseSounds(input, count, picker).map(({ sound, letters, keyWord }) => [
      soundName(sound, input.known.style),
      keyWord,
      letters.join(', '),
    ]),
    note: 'Say the sound and the word. The group writes every spelling of the sound it was taught.',
  };
}

function wordsBlock(input: LessonInput, count: number, picker: Picker): LessonBlock {
  return {
    id: 'words',
    title: 'Words',
    layout: 'table',
    columns: [
      { head: 'Word', shows: 'blank' },
      { head: 'Marked', shows: 'key' },
    ],
    rows: chooseWords(input, count, picker).map((word) => [word.word, marked(word)]),
    note: 'Say the word, say it in a sentence, say it again.',
  };
}

const marked = ({ word, reading }: KnownWord): string => markedText(word, reading);

function bySightBlock(input: LessonInput, count: number, picker: Picker): LessonBlock {
  return {
    id: 'by-sight',
    title: 'By-sight words',
    layout: 'words',
    columns: [{ head: '', shows: 'blank' }],
    rows: chooseBySight(input, count, picker).map((word) => [word]),
  };
}

function sentencesBlock(
  input: LessonInput,
  count: number,
  fromPassage: boolean,
  picker: Picker,
): LessonBlock {
  const found = fromPassage ? chooseFound(input, count, picker) : [];
  const { known, focus, group, analyzer } = input;
  const wanted = count - found.length;
  const composed =
    wanted > 0
      ? composeSentences(known, { names: namesOfPeople(group.names, analyzer), focus, count: wanted }, picker)
      : [];
  return {
    id: 'sentences',
    title: count === 1 ? 'A sentence' : 'Sentences',
    layout: 'lines',
    columns: [{ head: '', shows: 'blank' }],
    rows: [...found, ...composed].map((sentence) => [sentence]),
    note:
      fromPassage && found.length < count && composed.length > 0
        ? 'From the passage, and made of words the group can read. Read each aloud before you use it.'
        : composed.length > 0
          ? 'Made of words the group can read. Read each aloud before you use it.'
          : 'From the passage. Say the whole sentence, then a few words at a time.',
  };
}

/**
 * Chooses sentences of the passage. If none of them practises the lesson and two are wanted, there is room left for one
 * that does.
 */
function chooseFound(input: LessonInput, count: number, picker: Picker): string[] {
  const { own, others } = findInPassage(input);
  const first = picker.pickEarly(own, count);
  const room = count - first.length - (own.length === 0 && count > 1 ? 1 : 0);
  return [...first, ...picker.pickEarly(others, room)];
}
