// @vitest-environment happy-dom
import { expect, test } from 'vitest';
import { putBack } from './put-back.ts';

/** Returns the resulting lines of a story in which the elements with attribute `k` were kept. */
function linesOf(html: string): string[] {
  document.body.innerHTML = `<main>${html}</main>`;
  const texts = [...document.querySelectorAll('[k]')].map(({ firstChild }) => firstChild as Text);
  return putBack(texts).map(({ data }) => data);
}
const kept = (says: string): string => `<p k>${says}</p>`;

test.each([
  ['a sentence like the lines beside it', '<p>The fog came in at ten.</p>', ['The fog came in at ten.']],
  ['a heading that is a button', '<h3><button>Nets</button></h3>', ['Nets']],
])('%s is put back between kept lines', (_what, line, back) => {
  expect(linesOf(kept('A.') + line + kept('B.'))).toEqual(['A.', ...back, 'B.']);
});

test.each([
  ['fewer words than a sentence has', '<p>More fog here.</p>'],
  ['no end of a sentence', '<p>Read more news of the fog</p>'],
  ['a sentence that is a link as a whole', '<p><a href="#">The fog came in at ten.</a></p>'],
  ['a sentence in an element of another kind', '<div>The fog came in at ten.</div>'],
  ['a sentence in an element of another class', '<p class="ad">The fog came in at ten.</p>'],
  ['a heading that is no button', '<h3>Nets</h3>'],
])('%s stays left out', (_what, line) => {
  expect(linesOf(kept('A.') + line + kept('B.'))).toEqual(['A.', 'B.']);
});

test.each([
  ['before', '<p>The fog came in at ten.</p>', ''],
  ['behind', '', '<p>The fog came in at ten.</p>'],
])('a sentence %s all kept lines stays left out', (_where, before, behind) => {
  expect(linesOf(before + kept('A.') + kept('B.') + behind)).toEqual(['A.', 'B.']);
});
