import fc from 'fast-check';
import { strFromU8, unzipSync } from 'fflate';
import mammoth from 'mammoth';
import { describe, expect, test } from 'vitest';
import { nastyText } from '../../../tests/e2e/nasty-text.ts';
import type { Passage } from '../kept/passage.ts';
import { cleanText } from './clean-text.ts';
import { makeSheet, plainContent, type Sheet, type SheetWords, textOfRuns } from './make-sheet.ts';
import { paperOf, parseChoices, usualChoices } from './sheet-choices.ts';
import { writeDocx } from './write-docx.ts';
import { writeHtml } from './write-html.ts';
import { writeText } from './write-text.ts';

const passage: Passage = {
  id: 'one',
  title: 'The Ferry <Marigold> & "Co."',
  source: { url: 'https://tarn-quay.example/a?b=1&c=2', byline: 'Wilma Falk', date: '3 May' },
  original: '',
  versions: {},
  rev: 1,
  saved: 0,
};
const version = {
  text: [
    '# The ferry <Marigold> & "co."',
    'Bram ran to the <b>dock</b>.',
    '',
    '- rope',
    '- nets & bags',
    '## At night',
    'The lamp was lit.',
  ].join('\n'),
  storyWords: [
    { word: 'lantern', meaning: 'a lamp you can carry' },
    { word: 'quay', meaning: '' },
  ],
};
const sheet = makeSheet(passage, version, plainContent, null);
const source = 'Source: Wilma Falk, https://tarn-quay.example/a?b=1&c=2, 3 May';

describe('a sheet', () => {
  test('has the title once, even if the text begins with the title', () => {
    expect(sheet.lines.map(({ kind, level, runs }) => [kind, level, textOfRuns(runs)])).toEqual([
      ['paragraph', 0, 'Bram ran to the <b>dock</b>.'],
      ['item', 0, 'rope'],
      ['item', 0, 'nets & bags'],
      ['heading', 1, 'At night'],
      ['paragraph', 0, 'The lamp was lit.'],
    ]);
    const other = makeSheet({ ...passage, title: 'News' }, version, plainContent, null);
    expect(textOfRuns(other.lines[0]!.runs)).toBe('The ferry <Marigold> & "co."');
  });

  test('marks words on request, and still drops a heading that repeats the title', () => {
    const words: SheetWords = {
      shade: (line) => ({
        words: [...line.matchAll(/[a-z]+/gi)].map(({ index, 0: word }) => ({
          start: index,
          end: index + word.length,
          key: word.toLowerCase(),
          standing: word === 'lamp' ? 'fresh' : 'reads',
        })),
        skipped: 0,
      }),
      engine: {
        analyze: (word) => ({
          word,
          readings: [
            {
              pronunciation: '',
              source: 'dictionary',
              units: [],
              base: null,
              affixes: [],
              requires: [],
              syllables: [word.slice(0, 2), word.slice(2)].map((text) => ({ text, type: 'open' })),
            },
          ],
          homograph: false,
          usage: null,
        }),
      },
    };
    const all = { ...plainContent, dots: true, fresh: true };
    const marked = makeSheet(
      { ...passage, title: 'The lamp' },
      { text: '# The lamp\n- The lamp, lit!', storyWords: [] },
      all,
      words,
    );
    expect(marked.lines).toEqual([
      {
        kind: 'item',
        level: 0,
        runs: [
          { text: 'Th·e ', fresh: false },
          { text: 'la·mp', fresh: true },
          { text: ', li·t!', fresh: false },
        ],
      },
    ]);
    expect(writeHtml(marked, usualChoices)).toContain('<li>Th·e <u>la·mp</u>, li·t!</li>');
  });

  test('has no source line if no source is known, and no story words if they are not wanted', () => {
    const bare = makeSheet(
      { ...passage, source: { url: null, byline: null, date: null } },
      version,
      { ...plainContent, storyWords: false },
      null,
    );
    expect([bare.source, bare.storyWords]).toEqual([null, []]);
  });
});

test('plain text has all parts of a sheet, with the source last', () => {
  expect(writeText(sheet)).toBe(
    [
      'The Ferry <Marigold> & "Co."',
      'Words to pre-teach\nlantern: a lamp you can carry\nquay',
      'Bram ran to the <b>dock</b>.',
      '- rope\n- nets & bags',
      'At night',
      'The lamp was lit.',
      `${source}\n`,
    ].join('\n\n'),
  );
});

test('a web page has markup for its structure, and escapes the markup in the text', () => {
  const html = writeHtml(sheet, usualChoices);
  const body = html.slice(html.indexOf('<body>'));
  expect(body).toContain('<h1>The Ferry &lt;Marigold&gt; &amp; &quot;Co.&quot;</h1>');
  expect(body).toContain('<ul><li>rope</li><li>nets &amp; bags</li></ul>');
  expect(body).toContain('<h2>At night</h2>');
  expect(body).toContain('<dt>lantern</dt><dd>a lamp you can carry</dd><dt>quay</dt>');
  expect(body).toContain('<p>Bram ran to the &lt;b&gt;dock&lt;/b&gt;.</p>');
  expect(body).toContain(`<footer>${source.replaceAll('&', '&amp;')}</footer>`);
});

async function open(written: Sheet, choices = usualChoices) {
  const bytes = new Uint8Array(await (await writeDocx(written, choices)).arrayBuffer());
  const files = unzipSync(bytes);
  const part = (path: string): string => strFromU8(files[path] ?? new Uint8Array());
  const buffer = Buffer.from(bytes);
  const paragraphs = (await mammoth.extractRawText({ buffer })).value.replace(/\n\n$/, '').split('\n\n');
  return { part, paragraphs, html: (await mammoth.convertToHtml({ buffer })).value };
}

describe('a document', () => {
  test('has the same text, headings, list and box when it is opened again', async () => {
    const { paragraphs, html } = await open(sheet);
    expect(paragraphs.filter((text) => text !== '')).toEqual([
      'The Ferry <Marigold> & "Co."',
      'Words to pre-teach',
      'lantern: a lamp you can carry',
      'quay',
      'Bram ran to the <b>dock</b>.',
      'rope',
      'nets & bags',
      'At night',
      'The lamp was lit.',
    ]);
    expect(html).toContain('<h1>At night</h1>');
    expect(html).toMatch(/<ul><li>rope<\/li><li>nets &amp; bags<\/li><\/ul>/);
    expect(html).toMatch(/<table>.*<strong>lantern<\/strong>: a lamp you can carry.*<\/table>/);
  });

  test('has the source in its footer, and the size, font and spacing that were chosen', async () => {
    const { part } = await open(sheet, {
      ...usualChoices,
      size: 22,
      font: 'plain',
      lineSpacing: 2.4,
      margin: 'numbers',
      paper: 'letter',
    });
    expect(part('word/footer1.xml')).toContain(source.replaceAll('&', '&amp;'));
    const styles = part('word/styles.xml');
    expect(styles).toContain('w:ascii="Arial"');
    expect(styles).toContain('<w:sz w:val="44"/>');
    expect(styles).toContain('w:line="480"');
    const document = part('word/document.xml');
    expect(document).toMatch(/<w:lnNumType [^>]*w:countBy="1"/);
    expect(document).toMatch(/<w:pgSz w:w="12240" w:h="15840"/);
    expect((await open(sheet)).part('word/document.xml')).not.toContain('lnNumType');
  });
});

test('a document contains any text exactly as it was after cleaning', { timeout: 60_000 }, async () => {
  const many = fc.array(nastyText, { minLength: 40, maxLength: 40 });
  await fc.assert(
    fc.asyncProperty(many, nastyText, async (texts, byline) => {
      const written = makeSheet(
        { ...passage, title: texts[0]!, source: { url: null, byline, date: null } },
        { text: texts.slice(1).join('\n'), storyWords: [{ word: 'net', meaning: byline }] },
        plainContent,
        null,
      );
      const { paragraphs, part } = await open(written);
      expect(paragraphs.filter((text) => text !== '')).toEqual([
        cleanText(texts[0]!),
        'Words to pre-teach',
        `net: ${cleanText(byline)}`,
        ...texts.slice(1).map(cleanText),
      ]);
      expect(readXml(part('word/footer1.xml'))).toBe(`Source: ${cleanText(byline)}`);
    }),
    { seed: 20261125, numRuns: 8 },
  );
});

/** Returns the text of an XML part, with its entities decoded. */
function readXml(xml: string): string {
  return [...xml.matchAll(/<w:t(?: [^>]*)?>([^<]*)<\/w:t>/g)]
    .map(([, text]) => text)
    .join('')
    .replace(/&(lt|gt|quot|apos|amp);/g, (_, name: string) => NAMED[name]!);
}
const NAMED: Readonly<Record<string, string>> = { lt: '<', gt: '>', quot: '"', apos: "'", amp: '&' };

test('cleaned text is one line of whole characters, and cleaning it again changes nothing', () => {
  fc.assert(
    fc.property(nastyText, (text) => {
      const clean = cleanText(text);
      expect(clean).not.toMatch(/[\p{Cc}\p{Cs}\u2028\u2029]/u);
      expect(cleanText(clean)).toBe(clean);
    }),
    { seed: 20261125, numRuns: 500 },
  );
  expect(cleanText('a\tb\u0007c\uD83D\uDE00\uD83D')).toBe('a bc\uD83D\uDE00');
});

test('saved choices are used only if they are valid', () => {
  expect(parseChoices({ size: 26, font: 'toString', dots: true, paper: 4, extra: 1 })).toEqual({
    ...usualChoices,
    size: 26,
    dots: true,
  });
  for (const odd of [null, 7, 'x', []]) expect(parseChoices(odd)).toEqual(usualChoices);
});

// From memory of CLDR's supplemental data, `paperSize`.
test.each([
  ['en-US', 'letter'],
  ['es-MX', 'letter'],
  ['fr-CA', 'letter'],
  ['en', 'letter'],
  ['en-GB', 'a4'],
  ['es', 'a4'],
  ['es-ES', 'a4'],
  ['fr', 'a4'],
  ['', 'a4'],
  ['no language', 'a4'],
])('a browser with the language "%s" gets %s paper', (language, paper) => {
  expect(paperOf(language)).toBe(paper);
});

test('saved choices replace the usual choices, and all others stay as the browser suggests', () => {
  const usual = { ...usualChoices, paper: 'letter' } as const;
  expect(parseChoices({ size: 26 }, usual)).toEqual({ ...usual, size: 26 });
  expect(parseChoices({ paper: 'a4', font: 'round' }, usual)).toMatchObject({ paper: 'a4', font: 'round' });
  expect(usual.font).toBe('beginner');
});
