// @vitest-environment happy-dom
import { describe, expect, test } from 'vitest';
import { computeStyles } from '../../tests/fakes/computed-style.ts';
import { findTextBlocks } from './text-blocks.ts';

/**
 * Tests the rules for the text that is read from a page, one by one. Tests with whole pages in a browser are in
 * tests/pages/kinds.
 */

computeStyles();

/** Returns the lines that are read, with a bar where a word ends between two nodes of a line. */
function linesOf(html: string): string[] {
  document.body.innerHTML = html;
  return [...findTextBlocks(document.body, () => undefined)].map(({ nodes, parted }) =>
    nodes
      .map((node, i) => `${i > 0 && parted.has(node) ? '|' : ''}${node.data}`)
      .join('')
      .trim(),
  );
}

const placed = (left: number, width: number, text: string, top = 10): string =>
  `<span style="display: block; position: absolute; left: ${left}px; top: ${top}px; width: ${width}px">${text}</span>`;

describe('a line of text', () => {
  test.each<[string, string, string[]]>([
    ['runs on through what only styles it', '<p>The <b>fog</b> is i<i>n</i>.', ['The fog is in.']],
    ['ends at a block', 'The fog<div>is in.</div>at last', ['The fog', 'is in.', 'at last']],
    ['ends at a break', '<p>The fog<br>is in.', ['The fog', 'is in.']],
    ['runs on over a break behind a hyphen', '<p>chil-<br>dren', ['chil-dren']],
    ['ends at a break behind the hyphen of a name', '<p>Jeanne-<br>Bay', ['Jeanne-', 'Bay']],
    ['is parted by the mark of a footnote', '<p>fog<sup>3</sup> is', ['fog|3| is']],
    ['is not parted by a raised ending', '<p>the 5<sup>th</sup> tide', ['the 5th tide']],
    [
      'ends between buttons of a menu',
      '<div><button>Nets</button><button>Ropes</button></div>',
      ['Nets', 'Ropes'],
    ],
    ['is parted by a picture in a sentence', '<p>the<img>fog', ['the|fog']],
    ['ends at each entry of a list', '<ul><li>a net</li> <li>a rope</li></ul>', ['a net', 'a rope']],
    [
      'goes on through placed pieces that touch',
      placed(0, 30, 'Mar') + placed(31, 40, 'igold'),
      ['Marigold'],
    ],
    [
      'is parted between placed pieces with a gap',
      placed(0, 30, 'the') + placed(36, 40, 'gulls'),
      ['the|gulls'],
    ],
    [
      'goes on where blanks are between the placed pieces in the source',
      `${placed(0, 30, 'Mar')}\n  ${placed(31, 40, 'igold')}`,
      ['Marigold'],
    ],
    ['ends between placed columns', placed(0, 30, 'nets') + placed(60, 40, 'ropes'), ['nets', 'ropes']],
    ['ends between placed rows', placed(0, 30, 'nets') + placed(0, 40, 'ropes', 40), ['nets', 'ropes']],
    ['ends at letters behind a placed piece', `${placed(0, 30, 'nets')}ropes`, ['nets', 'ropes']],
  ])('%s', (_what, html, lines) => expect(linesOf(html)).toEqual(lines));
});

describe('the text read from a page leaves out', () => {
  test.each([
    ['a formula of MathJax', '<mjx-container>x</mjx-container>'],
    ['a formula in an element of TeX', '<tex-math>x</tex-math>'],
    ['a formula drawn by a script', '<span class="katex">x</span>'],
    ['the source of a formula', '<span class="tex">\\frac{a}{b}</span>'],
    ['code', '<pre>npm run tide</pre>'],
    ['a program', '<script>var tide</script>'],
    ['a field', '<textarea>tide</textarea>'],
    ['text that is not drawn', '<span hidden style="display: none">tide</span>'],
    ['text that is see-through', '<span style="opacity: 0">tide</span>'],
    ['text far out of the page', '<div style="position: absolute; left: -9999px">tide</div>'],
    ['text cut to a pixel', '<div style="position: absolute; clip: rect(0px, 1px, 1px, 0px)">tide</div>'],
    ['text cut away', '<div style="position: fixed; clip-path: inset(50%)">tide</div>'],
    ['text in a box folded to nothing', '<div style="overflow-y: hidden">tide</div>'],
    ['a title set out for a picture', '<h1 style="text-indent: -9999px">tide</h1>'],
    ['text that is hidden', '<span style="visibility: hidden">tide</span>'],
    ['text of no size', '<span style="font-size: 0px">tide</span>'],
    ['the name of an icon', '<i class="icon" style="font-family: \'Icons\'">tide</i>'],
  ])('%s', (_what, html) => expect(linesOf(`<p>The fog is in.</p>${html}`)).toEqual(['The fog is in.']));
});

describe('the text read from a page includes', () => {
  test.each([
    [
      'a paragraph of class math',
      '<p class="math">The sum of the tides is low.</p>',
      'The sum of the tides is low.',
    ],
    ['a word of class mathless', '<span class="mathless">tide</span>', 'tide'],
    ['verse', '<pre>The tide is out, the boats lie still.</pre>', 'The tide is out, the boats lie still.'],
    ['text a little out of the view', '<div style="position: absolute; left: -200px">tide</div>', 'tide'],
    ['text that is half see-through', '<span style="opacity: 0.5">tide</span>', 'tide'],
    ['a paragraph set far out', '<p style="text-indent: -9999px">tide</p>', 'tide'],
    [
      'what is seen in a hidden box',
      '<p style="visibility: hidden"><b style="visibility: visible">tide</b></p>',
      'tide',
    ],
    [
      'what has a size in a box of none',
      '<p style="font-size: 0px"><b style="font-size: 9px">tide</b></p>',
      'tide',
    ],
    ['text in a font of letters', '<i class="icon" style="font-family: Arimo">tide</i>', 'tide'],
  ])('%s', (_what, html, line) => expect(linesOf(html)).toEqual([line]));

  test('the text of a page that hides itself completely', () => {
    document.body.style.visibility = 'hidden';
    expect(linesOf('<p style="visibility: hidden">tide')).toEqual(['tide']);
    document.body.removeAttribute('style');
  });

  test('the summary of a closed details element', () => {
    expect(linesOf('<details><summary>Tides</summary></details>')).toEqual(['Tides']);
  });
});
