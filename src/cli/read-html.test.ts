import { expect, test } from 'vitest';
import { FileFault } from '../passage/files/file-fault.ts';
import { readHtml } from './read-html.ts';

test.each([
  [
    'blocks are apart',
    '<h1>The Ferry</h1><p>Ines waits.<p>Otto rows.',
    'The Ferry\n\nInes waits.\n\nOtto rows.',
  ],
  [
    'inline elements join',
    '<p><span>B</span>ram r<b>ow</b>ed to the light<wbr>house',
    'Bram rowed to the lighthouse',
  ],
  ['a link in mid word joins', '<p>the har<a href="/h">bor</a>s', 'the harbors'],
  [
    'entities and soft hyphens are letters',
    '<p>don&rsquo;t caf&eacute; mar&shy;ket',
    'don’t café mar\u00adket',
  ],
  ['space is one space', '<p>to  \n\t the   quay', 'to the quay'],
  ['a line break ends a line of thought', '<p>Tarn<br>Quay', 'Tarn\n\nQuay'],
  ['cells are apart', '<table><tr><td>tide<td>rope</table>', 'tide\n\nrope'],
  ['text beside a block is its own', '<div>one<p>two</p>three</div>', 'one\n\ntwo\n\nthree'],
  [
    'scripts, styles and what is in the head are left out',
    '<title>x</title><style>a{}</style><p>net<script>var gull</script>',
    'net',
  ],
  [
    'code and fields are left out',
    '<p>a <code>b</code> c</p><pre>d</pre><textarea>e</textarea><select><option>f</select>',
    'a\n\nc',
  ],
  [
    'hidden text is left out',
    '<p hidden>a<p style="display: none">b<p style="color:red;visibility:hidden">c<p>d',
    'd',
  ],
  [
    'text being edited is left out',
    '<div contenteditable>a</div><div contenteditable="true">b</div><div contenteditable="false">c</div>',
    'c',
  ],
  [
    'what never renders is left out',
    '<template><p>a</template><noscript>b</noscript><svg><text>c</text></svg><!-- d --><p>e',
    'e',
  ],
  [
    'formulas and their source are left out, a lesson about them is not',
    '<p>Speed <span class="katex">v</span> is <span class="math inline">\\frac{s}{t}</span> here.<div class="math">Add the boats.</div>',
    'Speed is here.\n\nAdd the boats.',
  ],
  ['a fragment is a page', 'just words', 'just words'],
  ['nothing is nothing', '', ''],
])('reads a page: %s', (_, html, expected) => {
  expect(readHtml(html).text).toBe(expected);
});

test('a page may be 1,000 elements deep and no deeper', () => {
  expect(readHtml(`${'<div>'.repeat(1000)}gull`).text).toBe('gull');
  expect(() => readHtml(`${'<div>'.repeat(1001)}gull`)).toThrow(FileFault);
});

test('scripts of the page do not run', () => {
  readHtml(
    '<script>globalThis.ranFromPage = true</script><img src="x" onerror="globalThis.ranFromPage = true">',
  );
  expect('ranFromPage' in globalThis).toBe(false);
});

test.each([
  ['<title>The Marigold\n is late</title><h1>News</h1>', 'The Marigold is late'],
  ['<title> </title><p>x<h1>The <i>storm</i></h1>', 'The storm'],
  ['<p>Wind', ''],
])('the title is read from %j', (html, title) => {
  expect(readHtml(html).title).toBe(title);
});
