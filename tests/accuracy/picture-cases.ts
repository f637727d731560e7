import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** A page with known text that is rendered and read. */
export interface PictureCase {
  readonly name: string;
  readonly kind: 'screen' | 'fine' | 'scan' | 'columns' | 'web';
  readonly html: string;
  readonly words: readonly string[];
  /** The text of the page, with one paragraph on each line. */
  readonly text: string;
  /** The number of screen dots for each pixel of the page. */
  readonly density: number;
  /** The effect of a scanner: the page is turned by this many degrees, with noise and a grey cast. Null for a screen. */
  readonly scan: { readonly turn: number; readonly noise: number } | null;
}

/**
 * Typefaces of the registry, similar to the typefaces of offices (Arial, Times), phones, the web, books and children's
 * books.
 */
export const FONTS = [
  'arimo',
  'tinos',
  'roboto',
  'open-sans',
  'lora',
  'merriweather',
  'eb-garamond',
  'andika',
] as const;
const SIZES = [14, 16, 18, 20];
const GROUNDS = [
  { ground: '#ffffff', ink: '#1a1a1a' },
  { ground: '#f4ecd8', ink: '#4a3b28' },
  { ground: '#1e1f22', ink: '#d8d8d4' },
];
const root = fileURLToPath(new URL('../..', import.meta.url));

/** Returns the cases of the given kinds, or all cases. `every` takes every nth case. */
export function listPictureCases(kinds: readonly string[], every = 1): PictureCase[] {
  const cases = [...screens(1), ...screens(2), ...scans(), ...columns(), ...web()];
  return cases
    .filter(({ kind }) => kinds.length === 0 || kinds.includes(kind))
    .filter((_, n) => n % every === 0);
}

/** Returns paragraphs from the texts of the first shelf, some 240 words from a given place on. */
export function takeText(from: number, words = 240): string[] {
  const all = paragraphs();
  const taken: string[] = [];
  let count = 0;
  for (let n = (from * 37) % all.length; count < words; n = (n + 1) % all.length) {
    taken.push(all[n]!);
    count += all[n]!.split(/\s+/).length;
  }
  return taken;
}

let kept: string[] | undefined;
function paragraphs(): string[] {
  kept ??= readdirSync(`${root}/profiles/texts`)
    .sort()
    .flatMap((file) =>
      readFileSync(`${root}/profiles/texts/${file}`, 'utf8')
        .split('\n\n')
        .slice(1)
        .map((text) => text.replace(/\s+/g, ' ').trim())
        .filter((text) => text.length > 30 && !/^[#*-]/.test(text)),
    );
  return kept;
}

/** Writes a page in a typeface. `style` is the style of the body. */
export function writePage(
  font: string,
  size: number,
  lines: readonly string[],
  style: string,
  heading = '',
): string {
  const face = (weight: number): string =>
    `@font-face{font-family:F;font-weight:${weight};src:url(http://pictures.example/fonts/${font}-latin-${weight}-normal.woff2)}`;
  const safe = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');
  return `<!doctype html><meta charset="utf-8"><style>${face(400)}${face(700)}
    body{margin:0;padding:24px 32px;font:400 ${size}px/1.5 F;${style}}p{margin:0 0 .8em}h1{font-size:1.5em;margin:0 0 .5em;column-span:all}</style>
    ${heading && `<h1>${safe(heading)}</h1>`}${lines.map((line) => `<p>${safe(line)}</p>`).join('')}`;
}

function screens(density: number): PictureCase[] {
  return FONTS.flatMap((font, f) =>
    SIZES.map((size, s) => {
      const { ground, ink } = GROUNDS[(f + s) % 3]!;
      const lines = takeText(f * 4 + s);
      return {
        name: `${font} ${size}px ${ground} x${density}`,
        kind: density > 1 ? 'fine' : 'screen',
        html: writePage(font, size, lines, `width:${size * 46}px;background:${ground};color:${ink}`),
        ...textOf(lines),
        density,
        scan: null,
      } satisfies PictureCase;
    }),
  );
}

/** Returns scans of 200 dots an inch. A page of 96 pixels an inch is drawn with 2.083 dots for each pixel. */
function scans(): PictureCase[] {
  return FONTS.flatMap((font, f) =>
    [-1.2, 0.6].map((turn, n) => {
      const lines = takeText(50 + f * 2 + n, 330);
      return {
        name: `${font} scan turned ${turn}`,
        kind: 'scan',
        html: writePage(
          font,
          n ? 16 : 14.67,
          lines,
          'width:640px;padding:80px;background:#fff;color:#151515',
        ),
        ...textOf(lines),
        density: 200 / 96,
        scan: { turn, noise: 12 },
      } satisfies PictureCase;
    }),
  );
}

function columns(): PictureCase[] {
  return FONTS.map((font, f) => {
    const lines = takeText(90 + f, 320);
    const style = `width:760px;columns:2;column-gap:${f % 2 ? 28 : 40}px;text-align:${f % 2 ? 'justify' : 'left'};background:#fff;color:#222`;
    const heading = 'News from Tarn Quay';
    return {
      name: `${font} two columns`,
      kind: 'columns',
      html: writePage(font, 16, lines, style, heading),
      ...textOf([heading, ...lines]),
      density: f % 3 ? 1 : 2,
      scan: f % 3 === 1 ? { turn: 0.5, noise: 8 } : null,
    } satisfies PictureCase;
  });
}

/** Returns the beginnings of ten stories by other authors, if their files are available. */
function web(): PictureCase[] {
  const folder = `${root}/../shared/pages/expected`;
  let files: string[];
  try {
    files = readdirSync(folder).sort();
  } catch {
    return [];
  }
  const prose = files.flatMap((file) => {
    const lines = readFileSync(`${folder}/${file}`, 'utf8')
      .split('\n')
      .filter((line) => line.trim() !== '');
    const taken: string[] = [];
    let words = 0;
    for (const line of lines) {
      if (words > 300) break;
      taken.push(line);
      words += line.split(/\s+/).length;
    }
    return words > 300 && words < 500 && taken.every((line) => /^[ -~‘’“”–—…]*$/.test(line))
      ? [{ file, taken }]
      : [];
  });
  return prose.slice(0, 10).map(({ file, taken }, n) => {
    const font = FONTS[n % FONTS.length]!;
    const { ground, ink } = GROUNDS[n % 3]!;
    return {
      name: `${file} ${font}`,
      kind: 'web',
      html: writePage(font, 16, taken, `width:720px;background:${ground};color:${ink}`),
      ...textOf(taken),
      density: 1,
      scan: null,
    } satisfies PictureCase;
  });
}

function textOf(lines: readonly string[]): { readonly words: string[]; readonly text: string } {
  return { words: lines.flatMap(listWords), text: lines.join('\n') };
}

/**
 * Returns the words of a text in the form used for comparison. Quotes are made straight, signs around words and between
 * them are left out, and capitals are kept.
 */
export function listWords(text: string): string[] {
  return text
    .normalize('NFKC')
    .replace(/[‘’ʼ]/g, "'")
    .replace(/[“”]/g, '"')
    .split(/[\s–—]+|--+/u)
    .map((word) => word.replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, ''))
    .filter((word) => word !== '');
}
