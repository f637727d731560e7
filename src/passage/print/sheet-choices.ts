/** The teacher's choices for printing a passage. The document and the web page follow these choices as far as they can. */
export interface SheetChoices {
  readonly paper: keyof typeof PAPERS;
  /** In points. */
  readonly size: (typeof SIZES)[number];
  readonly font: keyof typeof FONTS;
  readonly gaps: keyof typeof GAPS;
  /** In line heights. */
  readonly lineSpacing: (typeof LINE_SPACINGS)[number];
  /**
   * `numbers` prints the number of each line. `counts` prints the number of words read by the end of each line.
   * Headings have neither.
   */
  readonly margin: (typeof MARGINS)[number];
  readonly dots: boolean;
  readonly vowels: boolean;
  readonly fresh: boolean;
  readonly storyWords: boolean;
  readonly nameLine: boolean;
}

/**
 * Fonts, named by their look. The first font in `css` is the one that most machines have, except for `beginner`. `word`
 * is the font that a document asks for.
 * - `beginner` comes with the extension (`sheet-font.ts`) and is made for beginning readers. It has the a and g of
 * handwriting, and distinguishes I, l and 1.
 * - `wide` distinguishes I, l and 1.
 * - `round` has the a and g of handwriting.
 * Style guides for readers with dyslexia name fonts like `wide` and `round`, and gaps like those in `GAPS` (from
 * memory).
 */
export const FONTS = {
  beginner: {
    css: 'Andika, Verdana, "DejaVu Sans", "Noto Sans", sans-serif',
    word: 'Andika',
  },
  book: {
    css: 'Georgia, "Iowan Old Style", "Noto Serif", "DejaVu Serif", serif',
    word: 'Georgia',
  },
  plain: {
    css: 'Arial, Helvetica, "Liberation Sans", "Noto Sans", sans-serif',
    word: 'Arial',
  },
  wide: {
    css: 'Verdana, "DejaVu Sans", "Noto Sans", sans-serif',
    word: 'Verdana',
  },
  round: {
    css: '"Comic Sans MS", "Comic Neue", "Chalkboard SE", "Century Gothic", "URW Gothic", sans-serif',
    word: 'Comic Sans MS',
  },
} as const;

/** Gaps between letters and between words, in ems. */
export const GAPS = {
  usual: { letters: 0, words: 0 },
  wider: { letters: 0.06, words: 0.2 },
  widest: { letters: 0.12, words: 0.4 },
} as const;

/** In millimetres. */
export const PAPERS = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
} as const;

export const SIZES = [14, 18, 22, 26] as const;
export const LINE_SPACINGS = [1.4, 1.8, 2.4] as const;
export const MARGINS = ['none', 'numbers', 'counts'] as const;

export const usualChoices: SheetChoices = {
  paper: 'a4',
  size: 18,
  font: 'beginner',
  gaps: 'usual',
  lineSpacing: 1.8,
  margin: 'none',
  dots: false,
  vowels: false,
  fresh: false,
  storyWords: true,
  nameLine: true,
};

/** The regions that print on Letter-size paper (CLDR, supplemental data, `paperSize`; from memory). */
const LETTER = new Set('BZ CA CL CO CR GT MX NI PA PH PR SV US VE'.split(' '));

/**
 * Returns the paper size for a browser's language tag. If the tag has no region (`es`), the region where most readers
 * of the language live decides. Returns A4 for any text that is not a language tag.
 */
export function paperOf(language: string): SheetChoices['paper'] {
  try {
    return LETTER.has(new Intl.Locale(language).maximize().region ?? '') ? 'letter' : 'a4';
  } catch {
    return 'a4';
  }
}

/** Returns the saved choices that are valid, and the usual value for every other choice. `kept` may be any value. */
export function parseChoices(kept: unknown, usual: SheetChoices = usualChoices): SheetChoices {
  const given = (typeof kept === 'object' && kept !== null ? kept : {}) as Record<string, unknown>;
  const taken = Object.entries(usual).map(([key, otherwise]) => {
    const value = given[key];
    const choices = OPEN[key];
    const isTaken = choices ? choices.includes(value) : typeof value === 'boolean';
    return [key, isTaken ? value : otherwise];
  });
  return Object.fromEntries(taken) as unknown as SheetChoices;
}

const OPEN: Readonly<Record<string, readonly unknown[]>> = {
  paper: Object.keys(PAPERS),
  size: SIZES,
  font: Object.keys(FONTS),
  gaps: Object.keys(GAPS),
  lineSpacing: LINE_SPACINGS,
  margin: MARGINS,
};
