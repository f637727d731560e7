import type { LessonBlock, PartMaker } from '../lesson-part.ts';
import { numberChoice } from '../number-choice.ts';
import type { Picker } from '../picker.ts';
import { findHomophones, type Homophone, type HomophoneSet } from './find-homophones.ts';

/** A wide gap that is visible on the page and does not break. Common spaces would be shown as one. */
const WIDE_SPACE = '\u00a0\u00a0\u00a0';
const COUNTS = [2, 3, 4, 5, 6, 8];

/** Words pronounced alike. The adult says the meaning of one word, and the pupils write that word. */
export const homophones: PartMaker = {
  id: 'homophones',
  title: 'Homophones',
  use: 'Pupils choose the word that fits each clue.',
  choices: () => [
    numberChoice('count', 'How many sets', COUNTS, 6),
    {
      id: 'shown',
      label: 'Words to choose from',
      options: [
        { value: 'yes', label: 'on the sheet' },
        { value: 'no', label: 'not shown' },
      ],
      usual: 'yes',
    },
  ],
  make(input, chosen, picker) {
    const sets = findHomophones(input);
    const count = Number(chosen('count'));
    const ofPassage = sets.filter(({ inPassage }) => inPassage.length > 0);
    const picked = [
      ...picker.pickEarly(ofPassage.filter(isWhole), count),
      ...picker.pickEarly(
        sets.filter((set) => isWhole(set) && !ofPassage.includes(set)),
        count,
      ),
      // A set with a single known word leaves nothing to choose, but shows the adult which other word the pupils may
      // meet.
      ...picker.pickEarly(
        ofPassage.filter((set) => !isWhole(set)),
        count,
      ),
    ].slice(0, count);
    if (picked.length === 0) {
      return {
        blocks: [],
        says: 'The group can read no pair of homophones yet. Choose a later step, or add by-sight words.',
      };
    }
    // Only one word of each set is asked for. If both were asked for, the second would be the word that is left.
    const rows = picked.map((set) =>
      makeRow(set, chooseAsked(set, picker), chosen('shown') === 'yes', picker.shuffle),
    );
    const block: LessonBlock = {
      id: 'alike',
      title: 'Write the one that fits',
      layout: 'table',
      note: noteOn(picked),
      columns: [
        { head: 'Words', shows: 'both' },
        { head: 'Answer', shows: 'blank' },
        { head: 'Say: write the one that means, or fits …', shows: 'key' },
        { head: 'Homophones', shows: 'key' },
      ],
      rows,
    };
    return { blocks: [block], says: null, made: { count: picked.length } };
  },
};

/** Returns the word of a set to write. It is a word of the passage, where the set has one. */
function chooseAsked(set: HomophoneSet, picker: Picker): Homophone {
  const known = knownOf(set);
  const there = known.filter(({ word }) => set.inPassage.includes(word));
  const from = there.length > 0 ? there : known;
  return from[picker.below(from.length)]!;
}

function makeRow(
  set: HomophoneSet,
  asked: Homophone,
  shown: boolean,
  shuffle: <T>(items: readonly T[]) => T[],
): string[] {
  const known = knownOf(set);
  const others = set.words.filter((each) => each.known && each !== asked).map(({ word }) => word);
  const later = set.words.filter((each) => !each.known).map(({ word }) => word);
  return [
    shown && known.length > 1 ? shuffle(known.map(({ word }) => word)).join(WIDE_SPACE) : '',
    asked.word,
    asked.clue,
    [others.join(', '), later.length > 0 ? `not yet taught: ${later.join(', ')}` : '']
      .filter((text) => text !== '')
      .join('; '),
  ];
}

function noteOn(sets: readonly HomophoneSet[]): string {
  const inPassage = sets.flatMap((set) => set.inPassage);
  const varying = sets.filter(({ varies }) => varies).map((set) => set.words.map(({ word }) => word));
  return [
    'Say the meaning, or the sentence with its gap. The pupils write the word that fits.',
    inPassage.length > 0 ? `In the passage: ${inPassage.join(', ')}.` : '',
    varying.length > 0
      ? `Not homophones in every accent: ${varying.map((words) => words.join(' and ')).join('; ')}.`
      : '',
  ]
    .filter((text) => text !== '')
    .join(' ');
}

/** Whether a set leaves something to choose: two words that the group can read and that children know. */
function isWhole(set: HomophoneSet): boolean {
  return knownOf(set).length > 1;
}

function knownOf({ words }: HomophoneSet): readonly Homophone[] {
  return words.filter(({ known, met }) => known && met);
}
