import type { Judge } from '../../analyze/index.ts';
import { settleCounts, tallyText } from '../../analyze/index.ts';
import type { PatternId, Standing, Tally, WordKey } from '../../analyze/types.ts';
import { type ShadedWord, type ShadeLine, shadeText } from '../../passage/shade-line.ts';
import type { ScreenLine } from '../../picture/join-screens.ts';
import type { Box } from '../../picture/picture-reading.ts';
import { listWritten, matchWords } from './match-words.ts';

/** A word of a picture with its standing for the group. */
export interface PictureMark {
  readonly screen: number;
  readonly box: Box;
  /** The word as written in the current text. */
  readonly text: string;
  /** The offset of the word in the text, in UTF-16 units. */
  readonly start: number;
  readonly end: number;
  readonly standing: Standing;
  /** Whether the reading needs checking: it is unsure, and the teacher has neither corrected nor confirmed it. */
  readonly isOpen: boolean;
}

/** The marks over the pictures, and the figures of the text. */
export interface ShadedPictures {
  readonly marks: readonly PictureMark[];
  readonly tally: Tally;
}

/**
 * The order in which standings take precedence. If one place has several words, as in well-known, the first of their
 * standings in this list is shown.
 */
const ORDER: readonly Standing[] = ['beyond', 'unsure', 'fresh', 'by-sight', 'reads', 'name', 'skipped'];
/** The key for all words with an unsure reading that would be beyond the group. */
const OPEN = '?';

/**
 * Returns the standings of the words of pictures, based on the corrected text. A word with an unsure reading is never
 * beyond the group, neither in the picture nor in the figures. `checked` has the names (`markName`) of the words that
 * the teacher confirmed.
 */
export function shadePictures(
  lines: readonly ScreenLine[],
  text: string,
  shade: ShadeLine,
  judge: Judge,
  checked: ReadonlySet<string>,
): ShadedPictures {
  const words = lines.flatMap(({ words, screen }) => words.map((word) => ({ ...word, screen })));
  const written = listWritten(text);
  const matched = matchWords(
    words.map((word) => word.text),
    written.map((word) => word.text),
  );
  const judged = shadeText(text, shade);
  // Both lists are in the order of the text.
  let next = 0;
  const insides = written.map(({ end }) => {
    const from = next;
    while (next < judged.length && judged[next]!.start < end) next++;
    return judged.slice(from, next);
  });
  const open = new Set<number>();
  const marks = words.flatMap(({ box, screen, isSure, text: read }, n): PictureMark[] => {
    const place = matched[n];
    if (place === null || place === undefined) return [];
    const { start, end, text } = written[place]!;
    const inside = insides[place]!;
    const isOpen = !isSure && read === text && !checked.has(markName({ screen, box })) && /\p{L}/u.test(text);
    if (isOpen) open.add(place);
    const found = ORDER.find((standing) => inside.some((word) => word.standing === standing)) ?? 'skipped';
    const standing = isOpen && found === 'beyond' ? 'unsure' : found;
    return [{ screen, box, text, start, end, standing, isOpen }];
  });
  return {
    marks,
    tally: tally(judged, new Set([...open].flatMap((n) => insides[n]!)), text, shade, judge),
  };
}

/** The name of a picture's word among the checked words. */
export function markName({ screen, box }: Pick<PictureMark, 'screen' | 'box'>): string {
  return `${screen} ${box.left} ${box.top}`;
}

/** Returns the figures. A word that is beyond the group and has an unsure reading counts as unsure. */
function tally(
  judged: readonly ShadedWord[],
  open: ReadonlySet<ShadedWord>,
  text: string,
  shade: ShadeLine,
  judge: Judge,
): Tally {
  const counts = new Map<WordKey, number>();
  for (const word of judged) {
    const counted = word.standing === 'beyond' && open.has(word) ? OPEN : word.key;
    counts.set(counted, (counts.get(counted) ?? 0) + 1);
  }
  const skipped = text.split('\n').reduce((sum, line) => sum + shade(line).skipped, 0);
  const verdict = (key: WordKey) =>
    key === OPEN ? ({ standing: 'unsure', missing: [] as PatternId[] } as const) : judge(key);
  return tallyText({ words: settleCounts(counts), skipped }, Object.assign(verdict, { ...judge }));
}
