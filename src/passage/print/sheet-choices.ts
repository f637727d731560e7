/** How the teacher wants a passage printed; the document and the web page follow what of it they can. */
export interface SheetChoices {
  readonly paper: keyof typeof PAPERS;
  /** In points. */
  readonly size: (typeof SIZES)[number];
  readonly font: keyof typeof FONTS;
  readonly gaps: keyof typeof GAPS;
  /** In line heights. */
  readonly lineSpacing: (typeof LINE_SPACINGS)[number];
  /** `numbers`: each line has its number; `counts`: how many words were read at its end. Headings have neither. */
  readonly margin: (typeof MARGINS)[number];
  readonly dots: boolean;
  readonly vowels: boolean;
  readonly fresh: boolean;
  readonly storyWords: boolean;
  readonly nameLine: boolean;
}

/**
 * Fonts by what they look like. `beginner` comes with the extension (`sheet-font.ts`) and is made for readers who begin: it has the a and g
 * of handwriting, and keeps I, l and 1 apart. Of the others the first of `css` is what most machines have; `word` is what a document asks for.
 * `wide` keeps I, l and 1 apart, `round` has the a and g of handwriting; style guides for readers with dyslexia name
 * both kinds, and gaps like these (from memory).
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

/** Where sheets of paper are of Letter size (CLDR, supplemental data, `paperSize`; from memory). */
const LETTER = new Set('BZ CA CL CO CR GT MX NI PA PH PR SV US VE'.split(' '));

/** The paper of a language as a browser names it; of one without a region (`es`), where most of its readers are. A4 for anything that is no language. */
export function paperOf(language: string): SheetChoices['paper'] {
  try {
    return LETTER.has(new Intl.Locale(language).maximize().region ?? '') ? 'letter' : 'a4';
  } catch {
    return 'a4';
  }
}

/** Takes kept choices as far as they are such; the rest is as usual. Any value may be given. */
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
