import type { Tally } from '../../analyze/types.ts';
import type { PageWords } from '../../contract/page-contract.ts';

/** A reason why the figure is not of all that a teacher sees on the page. */
export interface FigureLimit {
  readonly name: LimitName;
  /** Whether so much may be missing that no percentage is given. */
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

/** Fewer covered words than this are a button or a caption; and a tenth of the text. */
const FEW = 20;
const TENTH = 10;
/** With more words than this a page is read for its words, not its pictures. */
const MANY = 100;

/** The most important first. Each with a page it is said of, and one it is not said of. */
export const FIGURE_LIMITS: readonly FigureLimit[] = [
  {
    // A page in Welsh; not one in British English.
    name: 'otherLanguage',
    applies: ({ language }, tally) => counted(tally) > 0 && language !== '' && !/^en\b/i.test(language),
  },
  {
    // A scanned page whose letters are cut into runs that are no words; not a recipe with its numbers.
    name: 'mostlySkipped',
    withheld: true,
    applies: (_page, tally) => counted(tally) > 0 && tally.skipped > counted(tally),
  },
  {
    // The menu around a book in a PDF or a frame that cannot be read; not a story below a large film.
    name: 'fullFrame',
    withheld: true,
    applies: (page) => page.scope === 'page' && page.foreign.some(({ fills }) => fills),
  },
  {
    // An editor that draws its letters, with a menu of real text; not a story in front of a drawing.
    name: 'canvas',
    withheld: true,
    applies: ({ drawn, scope }) => drawn === 'canvas' && scope === 'page',
  },
  {
    // An editor of documents; not a story with a field for comments.
    name: 'written',
    withheld: true,
    applies: (page, tally) => isWhole(page) && page.written > counted(tally),
  },
  {
    // A story that fades out under an offer to subscribe; not one under a thin notice.
    name: 'covered',
    applies: (page, tally) => isWhole(page) && page.covered >= FEW && page.covered * TENTH >= counted(tally),
  },
  {
    // A log that draws ten rows of a thousand; not a long list that is all there.
    name: 'rows',
    applies: (page, tally) => counted(tally) > 0 && page.rows && isWhole(page),
  },
  {
    // A newspaper for subscribers; not one that is free to read.
    name: 'paid',
    applies: (page, tally) => counted(tally) > 0 && isWhole(page) && page.paid,
  },
  {
    // A whale log from another harbour, or a timetable in a PDF, beside the text; not a frame of the page's own site, which is read.
    name: 'frame',
    applies: (page) => isWhole(page) && page.foreign.length > 0,
  },
  {
    // A page with a frame of its own site that is stuck; not one whose adverts never load, which have nothing to read.
    name: 'silentFrames',
    applies: (page) => isWhole(page) && page.silentFrames > 0,
  },
  {
    // A ticker of ships; not a page that loads more when scrolled.
    name: 'restless',
    applies: (page) => isWhole(page) && page.restless,
  },
  {
    // A picture book of scanned pages; not a story with a large photograph.
    name: 'picture',
    applies: ({ drawn, scope }, tally) =>
      counted(tally) > 0 && drawn === 'picture' && scope === 'page' && tally.running < MANY,
  },
];

/** The most important limit of a figure; null when it is of all that is on the page. */
export function findLimit(page: PageWords, tally: Tally): FigureLimit | null {
  return FIGURE_LIMITS.find(({ applies }) => applies(page, tally)) ?? null;
}
