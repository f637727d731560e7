// @vitest-environment happy-dom
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { computeStyles } from '../../tests/fakes/computed-style.ts';
import { findPlaces } from './find-places.ts';
import { PageText } from './page-text.ts';
import { findTextBlocks } from './text-blocks.ts';

computeStyles();

/** Reads all lines of an element as the text of a page. */
function read(text: PageText, root: Node): void {
  for (const block of findTextBlocks(root, () => undefined)) text.read(block, findPlaces(block, text.words));
}

function pageOf(html: string): PageText {
  document.body.innerHTML = html;
  const text = new PageText();
  read(text, document.body);
  return text;
}

/** Returns words and their counts in alphabetical order. */
const counted = (text: PageText) => {
  const { words, skipped } = text.count();
  return { words: [...words].sort(([a], [b]) => (a < b ? -1 : 1)), skipped };
};

const lines = ['The fog is in.', 'Bram saw 12 gulls.', 'A net, a net!', ''] as const;

describe('the text of a page', () => {
  test('has the same counts after any changes as when it is read anew', () => {
    const change = fc.tuple(fc.nat(2), fc.constantFrom(...lines));
    fc.assert(
      fc.property(fc.array(change, { maxLength: 12 }), (changes) => {
        const text = pageOf('<p>One tide.</p><p>Two <b>tides</b>.</p><div><p>Three.</p></div>');
        const paragraphs = [...document.querySelectorAll('p')];
        for (const [n, line] of changes) {
          const paragraph = paragraphs[n]!;
          text.forget([paragraph]);
          paragraph.textContent = line;
          read(text, paragraph);
        }
        expect(counted(text)).toEqual(counted(pageOf(document.body.innerHTML)));
      }),
      { numRuns: 25 },
    );
  });

  test('knows the nodes that were read, until they are forgotten', () => {
    const text = pageOf('<p>The <b>fog</b>.</p><p>A net.</p>');
    const [first, second] = [...document.querySelectorAll('p')];
    const fog = document.querySelector('b')!.firstChild as Text;
    expect([text.has(fog), text.has(new Text('fog'))]).toEqual([true, false]);
    expect(text.blockOf(fog)?.nodes).toHaveLength(3);
    expect(text.forget([first!])).toHaveLength(1);
    expect([text.has(fog), text.has(second!.firstChild as Text)]).toEqual([false, true]);
    expect(text.forget([first!])).toEqual([]);
  });

  test('keeps the blocks that it is told to keep', () => {
    const text = pageOf('<p>The fog.</p><p>A net.</p>');
    const [kept] = text.blocks();
    expect(text.forget([document.body], new Set([kept!]))).toHaveLength(1);
    expect([...text.blocks()]).toEqual([kept]);
  });

  test('returns the earlier block of a line that is read again', () => {
    const text = pageOf('<p>The fog.</p>');
    const [before] = text.blocks();
    const [block] = findTextBlocks(document.body, () => undefined);
    expect(text.read(block!, findPlaces(block!, text.words)).replaced).toEqual([before]);
    expect(counted(text)).toEqual(counted(pageOf('<p>The fog.</p>')));
  });

  test('finds all places of a word in page order, in any case and across element boundaries', () => {
    const text = pageOf('<p>Nets dry. The n<b>et</b>s and ropes.</p><p>NETS</p>');
    const places = text.places('nets');
    expect(
      places.map(({ ranges }) =>
        ranges.map(({ startContainer, startOffset, endOffset }) =>
          (startContainer as Text).data.slice(startOffset, endOffset),
        ),
      ),
    ).toEqual([['Nets'], ['n', 'et', 's'], ['NETS']]);
    expect(text.places('gulls')).toEqual([]);
  });

  test('returns the language of its first words, or an empty string', () => {
    expect(pageOf('<p>The fog.</p>').language()).toBe('');
    expect(pageOf('<div lang="cy"><p>Niwl.</p></div><p lang="en">Fog.</p>').language()).toBe('cy');
    expect(new PageText().language()).toBe('');
  });
});
