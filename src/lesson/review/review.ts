import { catalogue, soundsIn } from '../../analyze/index.ts';
import type { Pattern } from '../../analyze/types.ts';
import { soundName } from '../../marks/sound-names.ts';
import { findExamples, plainExamples } from '../find-examples.ts';
import type { KnownWord } from '../known-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { LessonBlock, PartMaker } from '../lesson-part.ts';
import { numberChoice } from '../number-choice.ts';
import type { Picker } from '../picker.ts';
import { chooseReview } from './choose-review.ts';
import { correspondenceOf, correspondences, heardAs } from './correspondences.ts';
import { daysSinceTaught } from './days-since-taught.ts';
import { waysToSpell } from './ways-to-spell.ts';

const COUNTS = [6, 8, 10, 12, 16, 20];
/** The choice to show no sound. No sound has this name. */
const NOT_SHOWN = 'none';

/** Letters whose sounds the pupils say, recent and older ones, and all the ways taught so far to spell one sound. */
export const review: PartMaker = {
  id: 'review',
  title: 'Letter-sound review',
  use: 'Pupils say the sound of each letter card, then name the ways to spell one sound.',
  choices: (input) => [
    numberChoice('count', 'How many letters', COUNTS, 10),
    {
      id: 'sound',
      label: 'Ways to spell',
      options: [
        ...listSounds(input).map(({ sound, word }) => ({
          value: sound,
          label: `${soundName(sound, input.known.style)} as in ${word}`,
        })),
        { value: NOT_SHOWN, label: 'not shown' },
      ],
      usual: listSounds(input)[0]?.sound ?? NOT_SHOWN,
    },
  ],
  make(input, chosen, picker) {
    const blocks = [
      ...makeCards(input, Number(chosen('count')), picker),
      ...makeWays(input, chosen('sound'), picker),
    ];
    return {
      blocks,
      made: { count: blocks.find(({ id }) => id === 'letters')?.rows.length ?? 0 },
      says:
        blocks.length === 0
          ? 'No letters have been taught yet. Choose the group’s step on the Groups page.'
          : null,
    };
  },
};

function makeCards(input: LessonInput, count: number, picker: Picker): LessonBlock[] {
  const taught = daysSinceTaught(input.group, input.sequence, input.day);
  const rows = chooseReview(input, taught, count, picker);
  if (rows.length === 0) return [];
  const cards = rows.map((row) => showRow(row, input, picker));
  // Letters that only forms of words have (accomplished) are left out until they have a word of their own. Before any
  // word can be read, no letters are left out.
  const withWord = cards.filter(({ word }) => word !== '');
  const shown = withWord.length > 2 ? withWord : cards;
  return [
    {
      id: 'letters',
      title: 'Say the sound',
      layout: 'table',
      note: `Recent letters come often, older ones less and less often.${
        taught.estimated ? ' Steps without a date count as a week each.' : ''
      }`,
      columns: [
        { head: 'Letters', shows: 'both' },
        { head: 'Word', shows: 'both' },
        { head: 'Sound', shows: 'key' },
      ],
      rows: shown.map(({ letters, word, sound }) => [letters, word, soundName(sound, input.known.style)]),
    },
  ];
}

/**
 * Returns the text of a card for a row: its first letters, a word with these letters, and their sound in the word (the
 * al of half, not the al of palm). The word is the row's key word if the group can read it. Without a word, the sound
 * is the row's first sound.
 */
function showRow(
  row: Pattern,
  input: LessonInput,
  picker: Picker,
): { letters: string; word: string; sound: string } {
  const { id, keyWord, letters } = row;
  const sounds = soundsIn(row, input.known.accent);
  const first = letters.split(' ')[0]!;
  const unitIn = ({ reading }: KnownWord) =>
    reading.units.find((unit) => unit.pattern === id && unit.letters === first);
  const examples = findExamples(input.known, id).filter(unitIn);
  const own = examples.filter((each) => unitIn(each)!.sound === sounds[0]);
  const isKey = ({ word, reading }: KnownWord): boolean => word === keyWord && reading.base === null;
  const shown = examples.find(isKey) ?? pickOne(own, first, sounds[0]!, picker) ?? pickAny(examples);
  if (!shown) return { letters: first, word: '', sound: sounds[0]! };
  return { letters: first, word: shown.word, sound: unitIn(shown)!.sound };
}

/**
 * Returns a word that shows a spelling plainly. A word that begins with the spelling is preferred: whip for wh. There
 * is none for ng, so ring is chosen.
 */
function pickOne(
  words: readonly KnownWord[],
  letters: string,
  sound: string,
  picker: Picker,
): KnownWord | undefined {
  const fit = plainExamples(words, letters, sound).words;
  const first = fit.filter(({ reading }) => reading.units[0]!.letters === letters);
  return picker.pickEarly(showable(first.length > 0 ? first : fit, letters), 1)[0];
}

/**
 * Returns the commonest word that is no form of another word. It may have another sound of the row: half for al, not
 * palm.
 */
function pickAny(words: readonly KnownWord[]): KnownWord | undefined {
  return words.find(({ reading }) => reading.affixes.length === 0);
}

/** The hand-chosen examples of the catalogue, by their letters: cloud and mouth for ou. */
const chosenByHand = new Map<string, Set<string>>();
for (const { letters, examples } of catalogue) {
  for (const spelt of letters.split(' ')) {
    const chosen = chosenByHand.get(spelt) ?? new Set<string>();
    chosenByHand.set(spelt, chosen);
    for (const word of examples) chosen.add(word);
  }
}

/**
 * Returns the words chosen by hand where there are some. Otherwise returns common words, the shorter names of things
 * first, because these are easiest to picture.
 */
function showable(words: readonly KnownWord[], letters: string): readonly KnownWord[] {
  const chosen = words.filter(({ word }) => chosenByHand.get(letters)?.has(word));
  if (chosen.length > 0) return chosen;
  const some = words.slice(0, 24);
  const things = some.filter(({ parts, word }) => parts[0] === 'n' && word.length <= 6);
  return things.length > 2 ? things.slice(0, 8) : some.slice(0, 8);
}

function makeWays(input: LessonInput, sound: string, picker: Picker): LessonBlock[] {
  const ways = waysToSpell(sound, input.known, input.focus);
  if (ways.length === 0) return [];
  return [
    {
      id: 'ways',
      title: `Ways to spell ${soundName(sound, input.known.style)} so far`,
      layout: 'table',
      note: 'Published: P. R. Hanna and others, Phoneme-Grapheme Correspondences as Cues to Spelling Improvement (1966), percent of 17,310 words. Our count: percent of the words in our list.',
      columns: [
        { head: 'Letters', shows: 'both' },
        { head: 'Word', shows: 'both' },
        { head: 'Published', shows: 'key' },
        { head: 'Our count', shows: 'key' },
      ],
      rows: ways.map(({ letters, examples, share, published }) => [
        letters,
        picker.pickEarly(showable(examples, letters), 1)[0]!.word,
        published === null ? '' : `${published}%`,
        share < 1 ? 'under 1%' : `${Math.round(share)}%`,
      ]),
    },
  ];
}

/**
 * Returns the sounds the group can spell, each with a word for the adult. The lesson's sounds come first, then vowels,
 * then consonants. Sounds with a single spelling come last, because they leave no choice.
 */
function listSounds({ focus, known }: LessonInput): readonly ListedSound[] {
  const before = listed.get(known);
  if (before?.focus === focus) return before.sounds;
  const sounds = findSounds(focus, known);
  listed.set(known, { focus, sounds });
  return sounds;
}

interface ListedSound {
  readonly sound: string;
  readonly word: string;
}

/** The sounds are cached, because finding them looks through all examples of all sounds. */
const listed = new WeakMap<
  LessonInput['known'],
  { readonly focus: LessonInput['focus']; readonly sounds: readonly ListedSound[] }
>();

function findSounds(focus: LessonInput['focus'], known: LessonInput['known']): ListedSound[] {
  const found = new Map<string, { word: string; ways: number }>();
  const note = (row: Pattern): void => {
    const { id, keyWord } = row;
    if (!known.knows(id)) return;
    const sound = heardAs(soundsIn(row, known.accent)[0]!);
    if (sound === '-' || found.has(sound)) return;
    const ways = waysToSpell(sound, known, focus).length;
    if (ways > 0) found.set(sound, { word: keyWord, ways });
  };
  for (const id of focus) {
    const row = correspondenceOf(id);
    if (row) note(row);
  }
  const isVowel = ({ sounds }: Pattern): boolean => /[AEIOU]/.test(sounds[0]!);
  correspondences.filter(isVowel).forEach(note);
  correspondences.filter((row) => !isVowel(row)).forEach(note);
  return [...found]
    .sort(([, a], [, b]) => Number(b.ways > 1) - Number(a.ways > 1))
    .map(([sound, { word }]) => ({ sound, word }));
}
