import { AMERICAN, rememberFor } from '../../analyze/index.ts';
import type { PatternId } from '../../analyze/types.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { Picker } from '../picker.ts';
import { isLegal } from './is-legal.ts';
import { isMistakable } from './is-mistakable.ts';
import { listRimes } from './list-rimes.ts';
import { listWords } from './listed-words.ts';
import { cutInHalves, type Half } from './one-syllable.ts';

/** The largest number of made-up words to try. After that the words found so far are used. */
const MOST_TRIES = 1500;
/** A made-up word is too close to a real word if it becomes one with one of these endings. */
const FORMS = ['s', 'es'];
/** The fewest words a blend must begin. A rarer blend (phr, dw) is met too seldom to be read at sight. */
const FEWEST_ONSETS = 2;
/** The number of words in a list that may begin or end alike, if there are others. */
const ALIKE = 2;

/**
 * Makes words of one syllable that a group can read and that need a pattern of the focus. Beginnings and ends of words
 * the group knows are combined anew. The combination sh + ost is excluded because its o is long in most. Each made-up
 * word follows the spelling rules of English, has only one pronunciation, is no real word, does not sound like one, and
 * is not coarse.
 */
export function makeNonsense(
  input: LessonInput,
  focus: ReadonlySet<PatternId>,
  count: number,
  picker: Picker,
): string[] {
  const { analyzer, known } = input;
  const { onsets, rimes, heard } = halvesOf(input);
  const ours = [onsets, rimes].map((halves) =>
    halves.filter(({ patterns }) => patterns.some((id) => focus.has(id))),
  );
  const pools = [
    [ours[0]!, rimes],
    [onsets, ours[1]!],
  ].filter((pool) => pool.every((halves) => halves.length > 0));
  if (pools.length === 0) return [];
  const limits = ours.map((halves) => Math.max(ALIKE, Math.ceil(count / Math.max(distinct(halves), 1))));
  const found: string[] = [];
  const tried = new Set<string>();
  const alike = new Map<string, number>();
  for (let tries = 0; tries < MOST_TRIES && found.length < count; tries++) {
    const pool = pools[picker.below(pools.length)]!;
    const [onset, rime] = pool.map((halves) => halves[picker.below(halves.length)]!) as [Half, Half];
    const word = onset.letters + rime.letters;
    if (tried.has(word)) continue;
    tried.add(word);
    const keys = [`${onset.letters}-`, `-${rime.letters}`];
    if (keys.some((key, end) => (alike.get(key) ?? 0) >= limits[end]!)) continue;
    if (!isFit(word, onset.sound, rime.sound)) continue;
    found.push(word);
    for (const key of keys) alike.set(key, (alike.get(key) ?? 0) + 1);
  }
  return found;

  function isFit(word: string, ...halves: readonly string[]): boolean {
    const sound = halves.filter(Boolean).join(' ');
    // Wh before o is pronounced h (who, whole). A made-up word may also sound like a real word with another spelling:
    // mie sounds like my.
    if (!isLegal(word) || /^who/.test(word) || heard.has(sound) || isMistakable(word, sound)) return false;
    // The lists of words that a made-up word may be mistaken for contain American words.
    const american = analyzer.speaking(AMERICAN).analyze(word).readings[0]!.pronunciation;
    if (isMistakable(word, american)) return false;
    const reading = analyzer.analyze(word).readings[0]!;
    return (
      reading.source === 'rule' &&
      reading.pronunciation === sound &&
      reading.requires.some((id) => focus.has(id)) &&
      known.reads(word) &&
      // A word plus an ending must not be a real word: britch is left out because of britches, which is read like
      // stitches.
      FORMS.every((end) => analyzer.analyze(word + end).usage === null)
    );
  }
}

function distinct(halves: readonly Half[]): number {
  return new Set(halves.map(({ letters }) => letters)).size;
}

interface Halves {
  /** Common beginnings and ends are included many times and are therefore more likely. */
  readonly onsets: readonly Half[];
  readonly rimes: readonly Half[];
  /** The pronunciations of words. */
  readonly heard: ReadonlySet<string>;
}

/** The beginnings and ends of the words that a group knows, found once for each group. */
const halvesOf = rememberFor(findHalves, ({ known }) => known);

function findHalves(input: LessonInput): Halves {
  const isUsual = listRimes(input);
  const cut = listWords(input).flatMap(({ word, reading }) => cutInHalves(word, reading) ?? []);
  const begins = new Map<string, number>();
  for (const { onset } of cut) begins.set(onset.letters, (begins.get(onset.letters) ?? 0) + 1);
  const onsets = cut
    .map(({ onset }) => onset)
    .filter(
      ({ letters, sound }) =>
        letters !== '' && (!sound.includes(' ') || begins.get(letters)! >= FEWEST_ONSETS),
    );
  const rimes = cut.map(({ rime }) => rime).filter(({ letters, sound }) => isUsual(letters, sound));
  const heard = new Set(input.known.analyses.map(({ readings }) => readings[0]!.pronunciation));
  return { onsets, rimes, heard };
}
