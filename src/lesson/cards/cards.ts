import { fitWords, oneOfFamily } from '../fit-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { LessonBlock, LessonPart, PartMaker } from '../lesson-part.ts';
import type { Picker } from '../picker.ts';
import { chooseReview } from '../review/choose-review.ts';
import { daysSinceTaught } from '../review/days-since-taught.ts';
import { wordsOnSheet } from '../spaced-review/words-on-sheet.ts';
import { isDivisible } from '../syllable-division/choose-words.ts';

const SIZES = ['6', '12'] as const;

/** Cards to cut out with letters, words or syllables of the lesson: six or twelve fill a page. */
export const cards: PartMaker = {
  id: 'cards',
  title: 'Cards to cut out',
  extra: true,
  fromSheet: true,
  use: 'Print letters, words or syllables of the lesson as cards to sort, match or build with.',
  choices: () => [
    {
      id: 'of',
      label: 'Cards with',
      options: [
        { value: 'words', label: 'words' },
        { value: 'letters', label: 'letters' },
        { value: 'syllables', label: 'syllables' },
      ],
      usual: 'words',
    },
    {
      id: 'size',
      label: 'Cards on a page',
      options: SIZES.map((value) => ({ value, label: value })),
      usual: '12',
    },
    {
      id: 'pages',
      label: 'Pages',
      options: ['1', '2'].map((value) => ({ value, label: value })),
      usual: '1',
    },
  ],
  make(input, chosen, picker, sheet = []) {
    const size = chosen('size') === '6' ? 6 : 12;
    const count = size * (chosen('pages') === '2' ? 2 : 1);
    const of = chosen('of');
    const texts =
      of === 'letters'
        ? lettersOf(input, count, picker)
        : of === 'syllables'
          ? syllablesOf(input, sheet, count, picker)
          : wordsOf(input, sheet, count, picker);
    if (texts.length === 0) {
      return {
        blocks: [],
        says:
          of === 'syllables'
            ? 'The group can read too few words of two syllables yet. Choose letters or words for the cards.'
            : 'There is nothing for cards yet. Choose the group’s step on the Groups page.',
      };
    }
    return { says: null, blocks: [cardsBlock(texts, size, of)] };
  },
};

function cardsBlock(texts: readonly string[], size: 6 | 12, of: string): LessonBlock {
  return {
    id: 'cards',
    title: '',
    layout: size === 6 ? 'cards-6' : 'cards-12',
    // A card with letters or a syllable is no word to read alone.
    columns: [{ head: of === 'letters' ? 'Letters' : '', shows: of === 'syllables' ? 'free' : 'both' }],
    rows: texts.map((text) => [text]),
  };
}

function lettersOf(input: LessonInput, count: number, picker: Picker): string[] {
  const taught = daysSinceTaught(input.group, input.sequence, input.day);
  const rows = chooseReview(input, taught, count * 2, picker);
  return [...new Set(rows.map(({ letters }) => letters.split(' ')[0]!))].slice(0, count);
}

/** Words on the sheet that pupils read, those of the lesson before others; words of the lesson where the sheet has too few. */
function wordsOf(input: LessonInput, sheet: readonly LessonPart[], count: number, picker: Picker): string[] {
  const fit = fitWords(input);
  const byName = new Map(fit.map((each) => [each.word, each]));
  const onSheet = oneOfFamily(
    [...new Set(wordsOnSheet(sheet))].flatMap((word) => byName.get(word) ?? []),
  ).map(({ word }) => word);
  const practises = new Set(
    oneOfFamily(fit.filter(({ requires }) => requires.some((id) => input.focus.includes(id)))).map(
      ({ word }) => word,
    ),
  );
  const first = [
    ...onSheet.filter((word) => practises.has(word)),
    ...onSheet.filter((word) => !practises.has(word)),
  ].slice(0, count);
  const more = [...practises].filter((word) => !first.includes(word));
  const taken = [...first, ...picker.pickEarly(more, count - first.length)];
  const rest = oneOfFamily(fit)
    .map(({ word }) => word)
    .filter((word) => !taken.includes(word));
  return [...taken, ...picker.pickEarly(rest, count - taken.length)];
}

/** The syllables of words in pairs, so that the cards make the words again. */
function syllablesOf(
  input: LessonInput,
  sheet: readonly LessonPart[],
  count: number,
  picker: Picker,
): string[] {
  const fit = oneOfFamily(
    fitWords(input)
      .filter(isDivisible)
      .filter(({ built }) => !built),
  );
  const onSheet = new Set(wordsOnSheet(sheet));
  const ours = fit.filter(({ requires }) => requires.some((id) => input.focus.includes(id)));
  const order = [
    ...fit.filter(({ word }) => onSheet.has(word)),
    ...picker.pickEarly(ours, count),
    ...picker.pickEarly(fit, count),
  ];
  const texts: string[] = [];
  for (const { reading } of new Set(order)) {
    const parts = reading.syllables.map(({ text }) => text);
    if (texts.length + parts.length <= count && !parts.some((part) => texts.includes(part)))
      texts.push(...parts);
  }
  return texts;
}
