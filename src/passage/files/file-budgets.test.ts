import { zlibSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { expectFewTags } from './expect-few-tags.ts';
import { expectShallow } from './expect-shallow.ts';
import { expectSmallStreams } from './expect-small-streams.ts';
import { FileFault } from './file-fault.ts';

describe('the check of how deep a page is', () => {
  test.each([
    ['a thousand elements in each other', `${'<div>'.repeat(1000)}The tide.`],
    ['many beside each other', '<div><b>The</b> tide.</div>'.repeat(20_000)],
    ['paragraphs and entries left open', '<ul><li>a<p>b'.concat('<li>The tide.<p>It is in.'.repeat(20_000))],
    [
      'markup in a script and a remark',
      `<script>${'"<div>"'.repeat(5000)}</script><!--${'<b>'.repeat(5000)}-->`,
    ],
    ['drawings of many parts', `<svg>${'<path d="M0 0"/><g><use href="#a"/></g>'.repeat(5000)}</svg>`],
    ['markup in an attribute', '<i title="<b><b><b>">The tide.</i>'.repeat(5000)],
    [
      'bold and slanted words',
      '<p><b class="a">The</b> <i>tide</i> is <font color="red">in</font>.'.repeat(5000),
    ],
    ['marks left open, all alike', '<p><b>The <font size="2">tide'.repeat(400)],
    ['tables in bold', '<b><table><tr><td><i id="a">The</i> tide</table></b>'.repeat(5000)],
    ['lines and pictures', '<br><img src="a.png"/><hr/>The tide.'.repeat(5000)],
  ])('%s: the page is let through', (_name, html) => expect(() => expectShallow(html)).not.toThrow());

  test.each(['div', 'SPAN', 'b class="x"', 'table', 'font', 'tide-table', 'div/', 'ul><li', 'svg/><div/'])(
    '<%s> nested without end is refused',
    (tag) => {
      expect(() => expectShallow(`<${tag}>`.repeat(200_000))).toThrow(FileFault);
    },
  );

  const left = Array.from({ length: 500 }, (_, n) => `<b id="${n}">`).join('');
  test.each([
    ['each paragraph', `<div>${left}</div>${'<p>a'.repeat(20_000)}`],
    [
      'each paragraph, after ends that end nothing',
      `<div>${left}<table><td>${'</b>'.repeat(500)}</table></div>${'<p>a'.repeat(20_000)}`,
    ],
    ['each other', `<table>${left.repeat(4)}`],
  ])('a page whose formatting elements are left open and opened again in %s is refused', (_what, html) => {
    expect(() => expectShallow(html)).toThrow(/million tags|levels deep/);
  });

  test('in XML every element counts, and an element may end itself', () => {
    expect(() => expectShallow('<item/>'.repeat(5000), true)).not.toThrow();
    expect(() => expectShallow('<p>'.repeat(5000), true)).toThrow(FileFault);
  });

  test('a < that begins no finished tag takes no time', () => {
    for (const html of [
      '<a '.repeat(200_000),
      '<a "'.repeat(200_000),
      "<a '".repeat(200_000),
      '<!--'.repeat(200_000),
      '<script>'.repeat(100_000),
    ])
      expect(() => expectShallow(html)).not.toThrow();
  });
});

test('a document of more than a million tags is refused', () => {
  const paragraphs = (count: number) => [Buffer.from('<w:p><w:t>The tide.</w:t></w:p>'.repeat(count))];
  expect(() => expectFewTags(paragraphs(250_000))).not.toThrow();
  expect(() => expectFewTags(paragraphs(250_001))).toThrow(FileFault);
});

describe('the check of how much a PDF unpacks to', () => {
  const pdf = (filters: string, bytes: Uint8Array): Uint8Array =>
    Buffer.concat([
      Buffer.from(`%PDF-1.7\n1 0 obj\n<< /Filter ${filters} /Length ${bytes.length} >>\nstream\n`),
      bytes,
      Buffer.from('\nendstream\nendobj\n'),
    ]);
  const zeros = new Uint8Array(70_000_000);

  test('a page of text is let through', () => {
    const bytes = zlibSync(Buffer.from('BT (The tide is in.) Tj ET'.repeat(1000)));
    expect(() => expectSmallStreams(pdf('/FlateDecode', bytes))).not.toThrow();
  });

  test('more than 64 MB is refused, whether packed once or more often', () => {
    const once = zlibSync(zeros);
    const twice = zlibSync(once);
    expect(twice.length).toBeLessThan(2000);
    expect(() => expectSmallStreams(pdf('/FlateDecode', once))).toThrow(FileFault);
    expect(() => expectSmallStreams(pdf('[/FlateDecode /FlateDecode]', twice))).toThrow(FileFault);
    expect(() => expectSmallStreams(pdf('[ /Fl /Fl ]', twice))).toThrow(FileFault);
    expect(() => expectSmallStreams(pdf('7 0 R', twice))).toThrow(FileFault);
    expect(() => expectSmallStreams(pdf('[/Fl#61teDecode /Fl#61teDecode]', zlibSync(twice)))).toThrow(
      FileFault,
    );
    const runs = zlibSync(new Uint8Array(2_000_000).fill(129));
    expect(() => expectSmallStreams(pdf('[/FlateDecode /RunLengthDecode]', runs))).toThrow(FileFault);
  });

  test('a stream that is not packed is left to the PDF reader', () => {
    for (const bytes of [
      Buffer.from('stream'),
      Buffer.from('/FlateDecode stream\nendstream'),
      Buffer.alloc(0),
    ])
      expect(() => expectSmallStreams(bytes)).not.toThrow();
  });
});
