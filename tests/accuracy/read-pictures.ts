import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { type Browser, chromium, type Page } from 'playwright-core';
import type { PictureReading } from '../../src/picture/picture-reading.ts';
import { findChromium } from '../../src/tools/find-browser.ts';
import type { PictureCase } from './picture-cases.ts';

const modules = fileURLToPath(new URL('../../node_modules', import.meta.url));
const READER: Readonly<Record<string, string>> = {
  'worker.min.js': 'tesseract.js/dist',
  'tesseract-core-simd-lstm.js': 'tesseract.js-core',
  'tesseract-core-simd-lstm.wasm': 'tesseract.js-core',
  'eng.traineddata.gz': '@tesseract.js-data/eng/4.0.0_best_int',
};
const TYPES: Readonly<Record<string, string>> = { js: 'text/javascript', wasm: 'application/wasm' };

/** A browser that renders pages and reads their pictures with the picture reader of the sources. */
export interface PictureBench {
  render(one: PictureCase): Promise<Buffer>;
  /** Returns the reading of a picture and the time that the reading took, in milliseconds. */
  read(picture: Buffer, type: string): Promise<{ readonly reading: PictureReading; readonly took: number }>;
  close(): Promise<void>;
}

export async function openPictureBench(): Promise<PictureBench> {
  const args = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const browser = await chromium.launch({ executablePath: findChromium(), args });
  const reader = await openReaderPage(browser);
  return {
    render: (one) => renderCase(browser, reader, one),
    read: async (picture, type) =>
      reader.evaluate(
        async ([data, kind]) => {
          const blob = await (await fetch(`data:${kind};base64,${data}`)).blob();
          const start = performance.now();
          const reading = await (globalThis as unknown as { reader: Reader }).reader.read(blob);
          return { reading, took: performance.now() - start };
        },
        [picture.toString('base64'), type] as const,
      ),
    close: () => browser.close(),
  };
}

interface Reader {
  read(blob: Blob): Promise<PictureReading>;
}

async function openReaderPage(browser: Browser): Promise<Page> {
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(new URL('../../src/picture/open-picture-reader.ts', import.meta.url))],
    bundle: true,
    write: false,
    format: 'iife',
    globalName: 'picture',
    platform: 'browser',
    logLevel: 'silent',
  });
  const page = await browser.newPage();
  await page.route('http://pictures.example/**', (route) => {
    const name = new URL(route.request().url()).pathname.split('/').at(-1)!;
    if (name === 'reader') return route.fulfill({ body: '<!doctype html>', contentType: 'text/html' });
    const folder = READER[name];
    if (folder === undefined) return route.abort();
    return route.fulfill({
      body: readFileSync(`${modules}/${folder}/${name}`),
      contentType: TYPES[name.split('.').at(-1)!] ?? 'application/octet-stream',
    });
  });
  await page.goto('http://pictures.example/reader');
  await page.addScriptTag({ content: `${outputFiles[0]!.text};globalThis.picture = picture;` });
  await page.evaluate(async () => {
    const { picture } = globalThis as unknown as { picture: { openPictureReader(): Promise<Reader> } };
    Object.assign(globalThis, { reader: await picture.openPictureReader() });
  });
  return page;
}

async function renderCase(browser: Browser, reader: Page, one: PictureCase): Promise<Buffer> {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 900 },
    deviceScaleFactor: one.density,
  });
  try {
    const page = await context.newPage();
    await page.route('http://pictures.example/fonts/*', (route) => {
      const file = new URL(route.request().url()).pathname.split('/').at(-1)!;
      const font = file.replace(/-latin-.*/, '');
      return route.fulfill({
        body: readFileSync(`${modules}/@fontsource/${font}/files/${file}`),
        contentType: 'font/woff2',
        headers: { 'access-control-allow-origin': '*' },
      });
    });
    await page.setContent(one.html);
    await page.evaluate(() => document.fonts.ready);
    const picture = await page.locator('body').screenshot();
    return one.scan ? await scan(reader, picture, one.scan) : picture;
  } finally {
    await context.close();
  }
}

/** Simulates a scanner: turns the page, softens it a little, adds noise and a grey background, and saves it as JPEG. */
async function scan(reader: Page, picture: Buffer, how: NonNullable<PictureCase['scan']>): Promise<Buffer> {
  const data = await reader.evaluate(
    async ([png, { turn, noise }]) => {
      const bitmap = await createImageBitmap(await (await fetch(`data:image/png;base64,${png}`)).blob());
      const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
      const context = canvas.getContext('2d')!;
      context.fillStyle = '#fff';
      context.fillRect(0, 0, canvas.width, canvas.height);
      context.translate(canvas.width / 2, canvas.height / 2);
      context.rotate((turn * Math.PI) / 180);
      context.filter = 'blur(0.6px)';
      context.drawImage(bitmap, -canvas.width / 2, -canvas.height / 2);
      const image = context.getImageData(0, 0, canvas.width, canvas.height);
      let state = 12345;
      for (let n = 0; n < image.data.length; n += 4) {
        let sum = 0;
        for (let k = 0; k < 3; k++) {
          state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
          sum += state / 4294967296 - 0.5;
        }
        for (let k = 0; k < 3; k++) image.data[n + k] = image.data[n + k]! * 0.88 + 14 + sum * noise * 2;
      }
      context.putImageData(image, 0, 0);
      const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.8 });
      const bytes = new Uint8Array(await blob.arrayBuffer());
      let text = '';
      for (const byte of bytes) text += String.fromCharCode(byte);
      return btoa(text);
    },
    [picture.toString('base64'), how] as const,
  );
  return Buffer.from(data, 'base64');
}
