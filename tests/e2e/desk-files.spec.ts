import fc from 'fast-check';
import { strFromU8, strToU8, unzipSync, zipSync, zlibSync } from 'fflate';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import {
  makeColumns,
  makeDocx,
  makeEpub,
  makeLockedPdf,
  makePdf,
  makeScan,
  makeTable,
  pdfParagraphs,
} from '../desk/make-files.ts';
import { axeFaults } from './axe-faults.ts';
import { startBrowser, type TestBrowser } from './browser.ts';
import { clearKept } from './clear-kept.ts';

let browser: TestBrowser;
let desk: Page;
/** Requests to other sites, scripts that ran, and errors that the page reported. */
let strayed: string[];

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
/** Opens an empty desk. */
async function openDesk(): Promise<void> {
  await clearKept(browser);
  desk = await browser.context.newPage();
  desk.on('request', (request) => {
    if (!/^(chrome-extension|data|blob):/.test(request.url())) strayed.push(request.url());
  });
  desk.on('dialog', (dialog) => {
    strayed.push(dialog.message());
    void dialog.dismiss();
  });
  desk.on('pageerror', (error) => strayed.push(error.message));
  desk.on('console', (message) => {
    // Chromium reports that an event handler in a page that is only parsed will not run. A dialog would show if it did
    // run.
    if (/Content Security Policy/i.test(message.text()) && !/inline event handler/.test(message.text()))
      strayed.push(message.text());
  });
  await desk.goto(browser.inside('desk.html'));
}
beforeEach(() => {
  strayed = [];
});

async function choose(name: string, bytes: Uint8Array): Promise<void> {
  await desk.getByLabel(/^Choose a text/).setInputFiles({ name, mimeType: '', buffer: Buffer.from(bytes) });
}

interface Stored {
  readonly title: string;
  readonly original: string;
  readonly source: {
    readonly url: string | null;
    readonly byline: string | null;
    readonly date: string | null;
  };
}

/** Opens a file and returns the passage as it is stored. */
async function opened(
  name: string,
  bytes: Uint8Array | string,
): Promise<Stored & { readonly lines: string[] }> {
  await choose(name, typeof bytes === 'string' ? strToU8(bytes) : bytes);
  return passage();
}

async function passage(): Promise<Stored & { readonly lines: string[] }> {
  await desk.waitForSelector('.cm-line, .note-wrong');
  expect(await desk.locator('.note-wrong').allTextContents()).toEqual([]);
  const stored = await desk.evaluate(
    () =>
      new Promise<Stored[]>((resolve, reject) => {
        const opening = indexedDB.open('desk');
        opening.onerror = reject;
        opening.onsuccess = () => {
          const asking = opening.result.transaction('passages').objectStore('passages').getAll();
          asking.onsuccess = () => {
            resolve(asking.result);
            opening.result.close();
          };
        };
      }),
  );
  expect(stored.length).toBe(1);
  expect(strayed).toEqual([]);
  return { ...stored[0]!, lines: stored[0]!.original.split('\n') };
}

async function fault(name: string, bytes: Uint8Array | string): Promise<string> {
  // The message about the previous file disappears as soon as another file is chosen.
  await choose(name, typeof bytes === 'string' ? strToU8(bytes) : bytes);
  const says = await desk.locator('.note-wrong').textContent();
  expect(strayed).toEqual([]);
  return says ?? '';
}

/** Returns a Word document with another body. */
function withDocument(docx: Uint8Array, body: string): Uint8Array {
  const parts = unzipSync(docx);
  const { 'word/document.xml': document } = parts;
  const [head] = strFromU8(document!).split('<w:body>');
  return zipSync({ ...parts, 'word/document.xml': strToU8(`${head}<w:body>${body}`) });
}

async function expectSound(): Promise<void> {
  for (const colorScheme of ['light', 'dark'] as const) {
    await desk.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await desk.setViewportSize({ width: 360, height: 800 });
    expect(await axeFaults(desk)).toEqual([]);
    const beyond = await desk.evaluate(() =>
      [...document.querySelectorAll('main *')]
        .filter((element) => element.getBoundingClientRect().right > innerWidth - 8)
        .map(({ className }) => className),
    );
    expect(beyond).toEqual([]);
  }
  await desk.setViewportSize({ width: 1200, height: 900 });
}

describe('opening a file', () => {
  beforeEach(openDesk);

  test('a text file keeps its paragraphs, whatever program wrote it', async () => {
    const bytes = Uint8Array.from('The caf\xe9 by the quay is shut.\r\n\r\nIt\x92s cold.', (sign) =>
      sign.charCodeAt(0),
    );
    const { title, lines } = await opened('Cold day.txt', bytes);
    expect(title).toBe('Cold day');
    expect(lines).toEqual(['The café by the quay is shut.', 'It’s cold.']);
  });

  test('a web page gives its story, with its author, date and address', async () => {
    const sentence =
      'The ferry came in late that night<sup>1</sup>, and the crew had to tie her up in the dark. ';
    const { title, source, lines } = await opened(
      'page.html',
      `<!doctype html><html><head><title>A Late Ferry</title><link rel="canonical" href="https://post.example/late">
       <meta name="author" content="Wilma Falk"><meta property="article:published_time" content="2026-11-24T08:00:00Z">
       <script>alert('ran')</script></head><body onload="alert('ran')"><nav><a href="/">Yachts</a></nav><main><article><h1>A Late Ferry</h1>
       ${`<p>${sentence}</p>`.repeat(8)}<img src="https://post.example/a.png" onerror="alert('ran')" width="300" height="200">
       <h2>What they had</h2><ul><li>rope</li><li>nets</li></ul><p>${sentence}</p></article></main><footer>Buy a yacht today</footer></body></html>`,
    );
    const plain = 'The ferry came in late that night, and the crew had to tie her up in the dark.';
    expect(title).toBe('A Late Ferry');
    expect(source).toEqual({
      url: 'https://post.example/late',
      byline: 'Wilma Falk',
      date: '24 November 2026',
    });
    expect(lines).toEqual([
      '# A Late Ferry',
      ...Array(8).fill(plain),
      '## What they had',
      '- rope',
      '- nets',
      plain,
    ]);
    await desk.getByText('One picture was left out.').waitFor();
  });

  test('a Word document keeps headings and lists, without footnotes and pictures', async () => {
    const { title, lines } = await opened('ferry.docx', await makeDocx());
    expect(title).toBe('The Marigold at Rest');
    expect(lines).toEqual([
      '# The Marigold at Rest',
      'The ferry is old but she runs well.',
      '## What she needs',
      '- red paint',
      '- a new rope',
      '- Scrub the deck.',
      'Ines & Otto will paint her <soon>.',
    ]);
    await desk.getByText('2 pictures and one footnote were left out.').waitFor();
  });

  test('the lines of a PDF are joined to paragraphs', async () => {
    const { title, lines } = await opened('night.pdf', await makePdf());
    expect(title).toBe('A Wild Night');
    expect(lines).toEqual(['# A Wild Night', ...pdfParagraphs, '- one bell', '- six nets']);
    await desk.getByText('One picture was left out.').waitFor();
  });

  test('a PDF in two columns is read column by column', async () => {
    const [left, right] = [pdfParagraphs[0]!, pdfParagraphs[2]!];
    expect((await opened('columns.pdf', await makeColumns([left, right]))).lines).toEqual([left, right]);
  });

  test.each([
    [2, 30],
    [2, 12],
    [3, 20],
  ])(
    'a PDF with %s columns %s points apart, drawn row by row, is read column by column',
    async (count, gutter) => {
      const [left, , right] = pdfParagraphs as [string, string, string];
      const columns = [left, `${right} ${left}`, left].slice(0, count);
      const pdf = await makeColumns(columns, 'rows', { gutter, heading: 'A Wild Night on the Wall' });
      expect((await opened('rows.pdf', pdf)).lines).toEqual(['# A Wild Night on the Wall', ...columns]);
    },
  );

  test('a PDF with a table keeps its rows', async () => {
    const rows = [
      ['Day', 'Boat', 'Left at'],
      ['Monday', 'Marigold', 'ten'],
      ['Tuesday', 'Marigold', 'six'],
      ['Thursday', 'Tern', 'nine'],
      ['Friday', 'Marigold', 'two'],
      ['Sunday', 'none', 'never'],
    ];
    const { original } = await opened('table.pdf', await makeTable(rows));
    expect(original.split(/\s+/)).toEqual(rows.flat().flatMap((cell) => cell.split(' ')));
  });

  const story = (words: string) => `<p>${words}</p>`.repeat(30);
  const book = () =>
    makeEpub([
      {
        name: 'cover',
        label: 'Cover',
        body: '<svg xmlns="http://www.w3.org/2000/svg"><image href="a.png"/></svg>',
      },
      { name: 'rights', label: 'Copyright', body: story('All rights stay with Wilma Falk.') },
      {
        name: 'one',
        label: 'The Bell',
        body: `<h2>The Bell</h2>${story('Bram rang the bell &#8212; twice&nbsp;&amp; more.')}<p>It was late<a epub:type="noteref" href="#n">1</a>.<br/>He sat.</p><aside epub:type="footnote" id="n">A note.</aside><img src="a.png" alt=""/>`,
      },
      { name: 'more', body: '<p>Then he went home.</p>' },
      {
        name: 'two',
        label: 'The Wall',
        body: `${story('Wilma sat on the wall.')}<script>alert('ran')</script>`,
      },
    ]);

  test('a book shows its chapters, with the first chapter of the story ticked', async () => {
    await choose('bell.epub', book());
    await desk.getByRole('heading', { name: 'Chapters of “The Bell on the Wall”' }).waitFor();
    const labels = desk.locator('.chapters').getByRole('checkbox');
    expect(await desk.locator('.chapters label > span:first-of-type').allTextContents()).toEqual([
      'Copyright',
      'The Bell',
      'The Wall',
    ]);
    expect(await labels.nth(1).isChecked()).toBe(true);
    await expectSound();
    await desk.getByRole('button', { name: /^Make a passage: / }).click();
    const { title, source, lines } = await passage();
    expect(title).toBe('The Bell on the Wall: The Bell');
    expect(source.byline).toBe('Wilma Falk');
    expect(lines).toEqual([
      '## The Bell',
      ...Array(30).fill('Bram rang the bell — twice & more.'),
      'It was late.',
      'He sat.',
      'Then he went home.',
    ]);
    await desk.getByText('One picture and one footnote were left out.').waitFor();
  });

  test('two chapters of a book can be chosen by keyboard', async () => {
    await choose('bell.epub', book());
    await desk.getByRole('heading', { name: /^Chapters of/ }).waitFor();
    for (const _ of [1, 2, 3]) await desk.keyboard.press('Tab');
    await desk.keyboard.press('Space');
    await desk.keyboard.press('Tab');
    await desk.keyboard.press('Enter');
    const { title, lines } = await passage();
    expect(title).toBe('The Bell on the Wall');
    expect(lines.filter((line) => line.startsWith('#'))).toEqual(['## The Bell', '# The Wall']);
  });
});

describe('a sentence explains why a file cannot be opened:', () => {
  // A file that cannot be opened changes nothing, so the next file is chosen on the same desk.
  beforeAll(openDesk);

  test.each<[string, string, () => Uint8Array | string | Promise<Uint8Array>, RegExp]>([
    ['an empty file', 'a.txt', () => '', /^This file is empty/],
    ['a text without words', 'a.txt', () => ' \n\n ', /no words/],
    ['a picture named a text', 'a.txt', () => new Uint8Array(500).fill(1), /not a text/],
    ['another kind', 'a.xls', () => 'x', /^Wordreach opens text, web pages/],
    ['a locked PDF', 'a.pdf', makeLockedPdf, /has a password/],
    ['a scanned PDF', 'a.pdf', makeScan, /pictures of pages/],
    ['half a PDF', 'a.pdf', async () => (await makePdf()).slice(0, 300), /^This PDF is damaged/],
    ['half a document', 'a.docx', async () => (await makeDocx()).slice(0, 3000), /damaged/],
    [
      'an old or locked document',
      'a.docx',
      () => new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 1, 2]),
      /old version of Word/,
    ],
    ['a text named a document', 'a.docx', () => 'Hello', /named \.docx, but it is another kind/],
    ['a zip that is no document', 'a.docx', () => zipSync({ 'a.xml': strToU8('<a/>') }), /damaged/],
    ['a zip that is no book', 'a.epub', () => zipSync({ 'a.xml': strToU8('<a/>') }), /damaged/],
    [
      'a locked book',
      'a.epub',
      () =>
        makeEpub([{ name: 'one', body: 'x' }], {
          'META-INF/encryption.xml': strToU8('<CipherReference URI="OEBPS/text/one x.xhtml"/>'),
        }),
      /locked by its seller/,
    ],
    [
      'a book that unpacks without end',
      'a.epub',
      () => makeEpub([{ name: 'one', body: 'x' }], { 'OEBPS/bomb.xhtml': new Uint8Array(80_000_000) }),
      /too large once it is unpacked/,
    ],
    [
      'a page of elements in each other without end',
      'a.html',
      () => `<!doctype html><p>The tide.${'<div>'.repeat(200_000)}`,
      /more than 1,000 levels deep/,
    ],
    [
      'a PDF that unpacks to more and more',
      'a.pdf',
      () => {
        const packed = zlibSync(zlibSync(new Uint8Array(80_000_000)));
        const head = `%PDF-1.7\n1 0 obj\n<< /Filter [/FlateDecode /FlateDecode] /Length ${packed.length} >>\nstream\n`;
        return Buffer.concat([strToU8(head), packed, strToU8('\nendstream\nendobj\n')]);
      },
      /too large once it is unpacked/,
    ],
    [
      'a book that lists one chapter again and again',
      'a.epub',
      () => {
        const items = Array.from({ length: 20_000 }, (_, n) => `<item id="i${n}" href="text/one.xhtml"/>`);
        const file = `<package><manifest>${items.join('')}</manifest></package>`;
        return makeEpub([{ name: 'one', body: 'x' }], { 'OEBPS/book.opf': strToU8(file) });
      },
      /lists too many parts/,
    ],
    [
      'a text of more lines than anybody wrote',
      'a.txt',
      () => 'a\n'.repeat(300_001),
      /more than 300,000 lines/,
    ],
    [
      'a page of more tags than anybody wrote',
      'a.html',
      () => `<!doctype html>${'<b>a</b>'.repeat(500_001)}`,
      /more than a million tags/,
    ],
    [
      'a page of marks left open, which become millions',
      'a.html',
      () => {
        const left = Array.from({ length: 500 }, (_, n) => `<b id="${n}">`).join('');
        return `<!doctype html><div>${left}</div>${'<p>a'.repeat(20_000)}`;
      },
      /more than a million tags/,
    ],
    [
      'a book of more tags than anybody wrote',
      'a.epub',
      () => makeEpub([{ name: 'one', body: '<b>a</b>'.repeat(500_001) }]),
      /too large once it is unpacked/,
    ],
    [
      'a table of contents in elements without end',
      'a.epub',
      () =>
        makeEpub([{ name: 'one', body: 'x' }], {
          'OEBPS/nav.xhtml': strToU8(`<html><body>${'<nav>'.repeat(200_000)}`),
        }),
      /more than 1,000 levels deep/,
    ],
    [
      'a document whose entities grow without end',
      'a.docx',
      () =>
        zipSync({
          'word/document.xml': strToU8('<!DOCTYPE a [<!ENTITY b "bb"><!ENTITY c "&b;&b;">]><a>&c;</a>'),
        }),
      /not a document that Word wrote/,
    ],
  ])('%s', async (_, name, make, says) => {
    expect(await fault(name, await make())).toMatch(says);
  });

  test.each<[string, string, () => Uint8Array | Promise<Uint8Array>, RegExp]>([
    [
      'a page of a million empty tags',
      'a.html',
      () => strToU8(`<!doctype html>${'<i></i>'.repeat(499_000)}`),
      /no words in this web page|takes too long/,
    ],
    [
      'a book of a million empty tags',
      'a.epub',
      () => makeEpub([{ name: 'one', body: '<i></i>'.repeat(499_000) }]),
      /no words in this book|takes too long/,
    ],
    [
      'a document of elements in each other without end',
      'a.docx',
      async () => withDocument(await makeDocx(), '<w:sdt><w:sdtContent>'.repeat(200_000)),
      /takes too long to read|damaged/,
    ],
  ])('%s, while the page stays responsive', { timeout: 120_000 }, async (_, name, make, says) => {
    await desk.evaluate(() => {
      const frames = [performance.now()];
      Object.assign(window, { frames });
      const draw = (): void => {
        frames.push(performance.now());
        requestAnimationFrame(draw);
      };
      draw();
    });
    expect(await fault(name, await make())).toMatch(says);
    const frames = await desk.evaluate(() => (window as unknown as { frames: number[] }).frames);
    const longest = Math.max(...frames.slice(1).map((time, i) => time - frames[i]!));
    // A busy page would not be drawn until the file has been read.
    expect(longest).toBeLessThan((frames.at(-1)! - frames[0]!) / 2);
  });

  test('a dropped file of more than 25 MB', async () => {
    await desk.getByRole('group', { name: 'Open a file' }).evaluate((place) => {
      const data = new DataTransfer();
      data.items.add(new File([new Uint8Array(25_000_001)], 'a.txt'));
      place.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
    });
    await desk.getByText('This file is larger than 25 MB.').waitFor();
    await expectSound();
  });

  // tests/views/any-file.test.ts opens hundreds of damaged files without a browser. A few of them are opened in the
  // page here.
  test('any bytes give a text, chapters or a sentence, never an error', async () => {
    const whole = await Promise.all([
      makeDocx(),
      makePdf(),
      makeEpub([{ name: 'one', body: '<p>Nets.</p>' }]),
    ]);
    const kinds = ['txt', 'md', 'html', 'docx', 'pdf', 'epub'];
    const broken = fc
      .tuple(
        fc.constantFrom(0, 1, 2),
        fc.array(fc.tuple(fc.nat(), fc.nat(255)), { minLength: 1, maxLength: 12 }),
      )
      .map(([n, changes]) => {
        const bytes = whole[n]!.slice();
        for (const [at, byte] of changes) bytes[at % bytes.length] = byte;
        return { kind: ['docx', 'pdf', 'epub'][n]!, bytes };
      });
    const random = fc.record({
      kind: fc.constantFrom(...kinds),
      bytes: fc.uint8Array({ maxLength: 600, size: 'max' }),
    });
    const begin = async (): Promise<void> => {
      await desk.goto('about:blank');
      await desk.goto(browser.inside('desk.html#new'));
    };
    let texts = 0;
    let faults = 0;
    await begin();
    await fc.assert(
      fc.asyncProperty(fc.oneof(broken, random), async ({ kind, bytes }) => {
        await desk.getByRole('heading', { name: 'New passage' }).waitFor();
        await choose(`any.${kind}`, bytes);
        await desk.waitForSelector('.note-wrong, .cm-line, .chapters', { timeout: 20_000 });
        if ((await desk.locator('.note-wrong').count()) > 0) faults++;
        else {
          texts++;
          await begin();
        }
        expect(strayed).toEqual([]);
      }),
      { seed: 20261125, numRuns: 10 },
    );
    expect(Math.min(texts, faults), 'both happen').toBeGreaterThan(0);
  });
});

test('the reader for a kind of file is loaded with the first such file', async () => {
  await openDesk();
  const loaded: string[] = [];
  desk.on('request', (request) => loaded.push(request.url()));
  await desk.reload();
  await desk.getByRole('heading', { name: 'Open a file' }).waitFor();
  const heavy = /read-(pdf|docx|epub|page-file)|pdf\.worker|unpack-zip/;
  expect(loaded.filter((address) => heavy.test(address))).toEqual([]);
  await opened('night.pdf', await makePdf());
  expect(loaded.some((address) => /read-pdf/.test(address))).toBe(true);
  expect(loaded.some((address) => /read-docx/.test(address))).toBe(false);
});
