import regular from '@fontsource/andika/files/andika-latin-400-normal.woff2?url';
import bold from '@fontsource/andika/files/andika-latin-700-normal.woff2?url';
import marked from '@fontsource/andika/files/andika-latin-ext-400-normal.woff2?url';

/**
 * The font of sheets that comes with the package: Andika, by SIL, under the Open Font Licence. `marked` contains the
 * vowels with a macron or breve. The ranges are from the font's package.
 */
const FACES = [
  { url: regular, weight: '400', range: 'U+0000-00FF, U+0131, U+0152-0153, U+2000-206F, U+20AC' },
  { url: bold, weight: '700', range: 'U+0000-00FF, U+0131, U+0152-0153, U+2000-206F, U+20AC' },
  // This face declares a single weight. With a range of weights, a browser would use this face for all letters and find
  // none in it.
  { url: marked, weight: '400', range: 'U+0100-0130, U+0132-0151, U+0154-02BA, U+1E00-1E9F' },
] as const;
const MARKED = /[\u0100-\u0130\u0132-\u0151\u0154-\u02ba\u1e00-\u1e9f]/;

let loading: Promise<void> | undefined;
let isLoaded = false;

/** Returns whether the font is loaded, so that a measurement taken now is right in print. */
export function isSheetFontLoaded(): boolean {
  return isLoaded;
}

/**
 * Loads the font for this page, once. Never rejects: if the font cannot be loaded, sheets are set in a font of the
 * machine.
 */
export function loadSheetFont(): Promise<void> {
  loading ??= Promise.all(
    FACES.map(async ({ url, weight, range }) => {
      const face = new FontFace('Andika', `url(${url})`, { weight, unicodeRange: range });
      document.fonts.add(await face.load());
    }),
  ).then(
    () => {
      isLoaded = true;
    },
    () => undefined,
  );
  return loading;
}

/**
 * Embeds the font in the markup of a page that uses the font, so that the page looks the same on any machine. Rejects
 * if the font file in the package cannot be read.
 */
export async function withSheetFont(markup: string): Promise<string> {
  if (!markup.includes('Andika')) return markup;
  const faces = FACES.filter(({ url }) => url !== marked || MARKED.test(markup));
  const rules = await Promise.all(
    faces.map(
      async ({ url, weight, range }) =>
        `@font-face { font-family: Andika; font-weight: ${weight}; unicode-range: ${range}; src: url(${await dataUrl(url)}) format("woff2"); }`,
    ),
  );
  return markup.replace('</head>', () => `<style>\n${rules.join('\n')}\n</style>\n</head>`);
}

async function dataUrl(url: string): Promise<string> {
  const bytes = new Uint8Array(await (await fetch(url)).arrayBuffer());
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return `data:font/woff2;base64,${btoa(binary)}`;
}
