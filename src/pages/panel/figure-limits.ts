import type { Tally } from '../../analyze/types.ts';
import type { PageWords } from '../../contract/page-contract.ts';

/** A reason why the figure does not cover everything that a teacher sees on the page. */
export interface FigureLimit {
  readonly name: LimitName;
  /** True if so much may be missing that no percentage is shown. */
  readonly withheld?: true;
  readonly applies: (page: PageWords, tally: Tally) => boolean;
}

export type LimitName =
  | 'otherLanguage'
  | 'mostlySkipped'
  | 'fullFrame'
  | 'canvas'
  | 'written'
  | 'covered'
  | 'rows'
  | 'paid'
  | 'frame'
  | 'silentFrames'
  | 'restless'
  | 'picture';

const counted = ({ running, names }: Tally): number => running + names;
const isWhole = ({ scope }: PageWords): boolean => scope !== 'selection';

/**
 * Limits for covered text. Fewer than `FEW` covered words are a button or a caption. The covered words must also make
 * up at least a tenth of the text (`TENTH`).
 */
const FEW = 20;
const TENTH = 10;
/** A page with this many words or more is read for its words, not its pictures. */
const MANY = 100;

/** The limits of a figure, most important first. The comment on each limit has an example and a counter-example. */
export const FIGURE_LIMITS: readonly FigureLimit[] = [
  {
    // Example: a page in Welsh. Counter-example: a page in British English.
    name: 'otherLanguage',
    applies: ({ language }, tally) => counted(tally) > 0 && language !== '' && !/^en\b/i.test(language),
  },
  {
    // Example: a scanned page whose letters are cut into runs that are not words. Counter-example: a recipe with its
    // numbers.
    name: 'mostlySkipped',
    withheld: true,
    applies: (_page, tally) => counted(tally) > 0 && tally.skipped > counted(tally),
  },
  {
    // Example: the menu around a book that is in a PDF or an unreadable frame. Counter-example: a story below a large
    // film.
    name: 'fullFrame',
    withheld: true,
    applies: (page) => page.scope === 'page' && page.foreign.some(({ fills }) => fills),
  },
  {
    // Example: an editor that draws its letters and has a menu of real text. Counter-example: a story in front of a
    // drawing.
    name: 'canvas',
    withheld: true,
    applies: ({ drawn, scope }) => drawn === 'canvas' && scope === 'page',
  },
  {
    // Example: a document editor. Counter-example: a story with a field for comments.
    name: 'written',
    withheld: true,
    applies: (page, tally) => isWhole(page) && page.written > counted(tally),
  },
  {
    // Example: a story that fades out under an offer to subscribe. Counter-example: a story under a thin notice.
    name: 'covered',
    applies: (page, tally) => isWhole(page) && page.covered >= FEW && page.covered * TENTH >= counted(tally),
  },
  {
    // Example: a log that draws ten of a thousand rows. Counter-example: a long list that is complete on the page.
    name: 'rows',
    applies: (page, tally) => counted(tally) > 0 && page.rows && isWhole(page),
  },
  {
    // Example: a newspaper for subscribers. Counter-example: a newspaper that is free to read.
    name: 'paid',
    applies: (page, tally) => counted(tally) > 0 && isWhole(page) && page.paid,
  },
  {
    // Example: a whale log from another site, or a timetable in a PDF, beside the text. Counter-example: a frame of the
    // page’s own site, since such a frame is read.
    name: 'frame',
    applies: (page) => isWhole(page) && page.foreign.length > 0,
  },
  {
    // Example: a page with a frame of its own site that is stuck. Counter-example: a page whose adverts never load,
    // since they have nothing to read.
    name: 'silentFrames',
    applies: (page) => isWhole(page) && page.silentFrames > 0,
  },
  {
    // Example: a ticker of ships. Counter-example: a page that loads more when scrolled.
    name: 'restless',
    applies: (page) => isWhole(page) && page.restless,
  },
  {
    // Example: a picture book of scanned pages. Counter-example: a story with a large photograph.
    name: 'picture',
    applies: ({ drawn, scope }, tally) =>
      counted(tally) > 0 && drawn === 'picture' && scope === 'page' && tally.running < MANY,
  },
];

/** Returns the most important limit of a figure, or null if the figure covers everything on the page. */
export function findLimit(page: PageWords, tally: Tally): FigureLimit | null {
  return FIGURE_LIMITS.find(({ applies }) => applies(page, tally)) ?? null;
}
