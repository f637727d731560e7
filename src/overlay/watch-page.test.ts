// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { computeStyles } from '../../tests/fakes/computed-style.ts';
import { type PageChange, watchPage } from './watch-page.ts';

computeStyles();

/** The records that a browser creates for one change. happy-dom does not fill in the siblings. */
type Records = readonly Partial<MutationRecord>[];
let tell: (records: Records) => void;
let stop: AbortController;
const disconnect = vi.fn();
beforeEach(() => {
  disconnect.mockClear();
  stop = new AbortController();
  vi.stubGlobal(
    'MutationObserver',
    class {
      observe = vi.fn();
      disconnect = disconnect;
      constructor(hear: (records: Records) => void) {
        tell = hear;
      }
    },
  );
});
afterEach(() => stop.abort());

type ById = (id: string) => HTMLElement;
const byId: ById = (id) => document.getElementById(id)!;

/** Returns the ids of the parts of a page that are read again after a change, and of the parts that are gone. */
function watch(html: string, change: (at: ById) => Records): { parts: string[]; gone: string[] } {
  document.body.innerHTML = html;
  const changes: PageChange[] = [];
  const onAny = vi.fn();
  watchPage((seen) => changes.push(seen), onAny, stop.signal)(document.body);
  const none = { addedNodes: [], removedNodes: [], previousSibling: null, nextSibling: null };
  tell(change(byId).map((record) => ({ ...none, ...record }) as unknown as MutationRecord));
  expect(onAny).toHaveBeenCalledOnce();
  const names = (of: (change: PageChange) => ReadonlySet<Node>): string[] =>
    changes.flatMap((seen) => [...of(seen)].map((node) => (node as Element).id || node.nodeName));
  return { parts: names(({ parts }) => parts), gone: names(({ gone }) => gone) };
}

/** Inserts HTML before an element, as one change. */
function put(before: Element, html: string): Records {
  const { parentNode: target, previousSibling } = before;
  const holder = document.createElement('template');
  holder.innerHTML = html;
  const added = [...holder.content.childNodes];
  before.before(...added);
  return [
    { type: 'childList', target: target!, addedNodes: listOf(added), previousSibling, nextSibling: before },
  ];
}

function takeOut(node: ChildNode): Records {
  const target = node.parentNode!;
  node.remove();
  return [{ type: 'childList', target, removedNodes: listOf([node]) }];
}

function write(element: Element, data: string): Records {
  const target = element.firstChild as Text;
  target.data = data;
  return [{ type: 'characterData', target }];
}

function style(target: HTMLElement, css: string): Records {
  target.style.cssText = css;
  return [{ type: 'attributes', target }];
}

const listOf = (nodes: Node[]): NodeList => nodes as unknown as NodeList;

describe('the page watcher reads again after a change', () => {
  test.each<[string, string, (at: ById) => Records, string[]]>([
    ['a new block', '<p>tide</p><p id="a">net</p>', (at) => put(at('a'), '<p id="new">fog</p>'), ['new']],
    [
      'the line that a new block cuts in two',
      '<div id="line">tide and<b id="a"> net</b></div>',
      (at) => put(at('a'), '<p id="new">fog</p>'),
      ['line'],
    ],
    [
      'a new block alone behind blanks',
      '<div id="line"> <b id="a">net</b></div>',
      (at) => put(at('a'), '<p id="new">fog</p>'),
      ['new'],
    ],
    [
      'a new block alone between blocks, though blanks come with it',
      '<div id="line"><p>tide</p><p id="a">net</p></div>',
      (at) => put(at('a'), ' <p id="new">fog</p> '),
      ['new'],
    ],
    [
      'the line of a new word',
      '<p id="line">tide<b id="a">net</b></p>',
      (at) => put(at('a'), '<i>fog</i>'),
      ['line'],
    ],
    [
      'the line of a new word and of a block that comes with it',
      '<div id="line"><b id="a">net</b></div>',
      (at) => put(at('a'), '<i>fog</i><p>tide</p>'),
      ['line'],
    ],
    [
      'the line of a text that is written anew',
      '<p id="line">a <b id="a">tide</b></p>',
      (at) => write(at('a'), 'fog'),
      ['line'],
    ],
    [
      'the line whose style changes',
      '<p id="line"><b id="a">tide</b></p>',
      (at) => style(at('a'), 'font-weight: bold'),
      ['line'],
    ],
    [
      'an element that is hidden',
      '<p id="line"><b id="a">tide</b></p>',
      (at) => style(at('a'), 'opacity: 0'),
      ['a'],
    ],
  ])('%s', (_what, html, change, parts) => expect(watch(html, change).parts).toEqual(parts));
});

describe('the page watcher does not read again after a change', () => {
  test.each<[string, string, (at: ById) => Records]>([
    ['a new field', '<p id="a">tide</p>', (at) => put(at('a'), '<textarea>fog</textarea>')],
    ['a text in a field', '<textarea id="a">tide</textarea>', (at) => write(at('a'), 'fog')],
    ['an element that was taken out', '<p id="line">tide <b id="a">net</b></p>', (at) => takeOut(at('a'))],
    [
      'an element that came and went',
      '<p id="a">tide</p>',
      (at) => {
        const records = put(at('a'), '<p id="new">fog</p>');
        at('new').remove();
        return records;
      },
    ],
  ])('%s', (_what, html, change) => {
    const { parts } = watch(html, change);
    expect(parts).not.toContain('new');
    expect(parts.filter((part) => part !== 'BODY')).toEqual([]);
  });
});

test('an element that is removed is reported as gone', () => {
  expect(watch('<p>tide</p><p id="a">net</p>', (at) => takeOut(at('a'))).gone).toEqual(['a']);
});

test('nothing is watched after an abort', () => {
  watchPage(vi.fn(), vi.fn(), stop.signal)(document.body);
  expect(disconnect).not.toHaveBeenCalled();
  stop.abort();
  expect(disconnect).toHaveBeenCalledOnce();
});
