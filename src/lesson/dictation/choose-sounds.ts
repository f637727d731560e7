import { catalogue, soundsIn } from '../../analyze/index.ts';
import type { PatternId } from '../../analyze/types.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { Picker } from '../picker.ts';
import { correspondences, heardAs } from '../review/correspondences.ts';
import { isSpelling, waysToSpell } from '../review/ways-to-spell.ts';

/** A sound to write down, with all the letters that the group was taught for the sound. */
export interface SoundToWrite {
  readonly sound: string;
  /** The spellings, likeliest first: `ai`, `ay`, `a_e`. */
  readonly letters: readonly string[];
  /** A word for the teacher to say. It is the catalogue's word where the group can read none. */
  readonly keyWord: string;
}

/** Endings that spell a single sound: the s of legs, the ed of jumped and sailed. */
const ENDINGS: readonly { readonly sound: string; readonly id: PatternId; readonly letters: string }[] = [
  { sound: 'Z', id: 'suffix-s', letters: 's' },
  { sound: 'T', id: 'suffix-ed-t', letters: 'ed' },
  { sound: 'D', id: 'suffix-ed-d', letters: 'ed' },
];
/**
 * The most spellings of a sound on a line. A British group at the end of its sequence knows more spellings of `or` than
 * fit, and the rest are rare.
 */
const MOST_LETTERS = 12;

/**
 * Returns sounds for which the group was taught letters. The lesson's sounds come first. Of the rest, sounds of the
 * latest steps are likelier. These are left out:
 * - the weak vowel, which nobody can pronounce alone
 * - silent letters: in knot the n counts and the k does not
 * - sh and zh where an ending with these sounds was taught, except in a lesson on them. Some teachers want the ti of
 * station on the key, and others only whole endings.
 */
export function chooseSounds(
  { known, focus, group, sequence }: LessonInput,
  count: number,
  picker: Picker,
): SoundToWrite[] {
  const order = (sequence?.steps.slice(0, group.step) ?? []).toReversed().flatMap(({ teaches }) => teaches);
  const taught = correspondences.filter(({ id, family }) => family !== 'schwa' && known.knows(id));
  const placeOf = (id: string): number => {
    const at = order.indexOf(id);
    return at < 0 ? order.length : at;
  };
  const rows = taught.toSorted((a, b) => placeOf(a.id) - placeOf(b.id));
  const soundsOf = (some: typeof rows): string[] => [
    ...new Set(
      some.map((row) => heardAs(soundsIn(row, known.accent)[0]!)).filter((one) => !/^(?:-|AX)/.test(one)),
    ),
  ];
  const now = soundsOf(rows.filter(({ id }) => focus.includes(id)));
  const inEndings: string[] = catalogue
    .filter(({ id, family }) => family === 'final syllable' && known.knows(id))
    .flatMap((row) => soundsIn(row, known.accent).map((sound) => sound.split('.')[0]!))
    .filter((sound) => sound === 'SH' || sound === 'ZH');
  const before = soundsOf(rows).filter((sound) => !now.includes(sound) && !inEndings.includes(sound));
  const first = picker.pick(now, Math.ceil(count / 2));
  const chosen = [...first, ...picker.pickEarly(before, count - first.length)];
  const more = picker.pick(
    now.filter((sound) => !chosen.includes(sound)),
    count - chosen.length,
  );
  return [...chosen, ...more].map((sound) => {
    const ways = waysToSpell(sound, known, focus);
    const own = taught.filter((row) => soundsIn(row, known.accent).some((each) => heardAs(each) === sound));
    // Where no word can be read yet, the letters are listed as they are taught.
    const spelt =
      ways.length > 0
        ? ways.map((way) => way.letters)
        : own.flatMap((row) => row.letters.split(' ')).filter(isSpelling);
    // The lesson's own spellings are listed even where no word shows them yet: the gh of laugh, because laugh is known
    // by sight.
    const ours = own
      .filter(
        (row) =>
          focus.includes(row.id) &&
          heardAs(soundsIn(row, known.accent)[0]!) === sound &&
          !row.letters.split(' ').some((one) => spelt.includes(one)),
      )
      .map((row) => row.letters.split(' ')[0]!);
    const endings = ENDINGS.filter((one) => one.sound === sound && known.knows(one.id)).map(
      (one) => one.letters,
    );
    const letters = [...new Set([...spelt.slice(0, MOST_LETTERS - ours.length), ...ours, ...endings])];
    // The catalogue's word is preferred, because it has no other hard part: ruby rather than truth.
    const plain = own.find((row) => row.letters.split(' ')[0] === letters[0] && known.reads(row.keyWord));
    return { sound, letters, keyWord: plain?.keyWord ?? ways[0]?.examples[0]?.word ?? own[0]?.keyWord ?? '' };
  });
}
