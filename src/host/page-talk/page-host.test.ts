// @vitest-environment happy-dom
import { setImmediate } from 'node:timers/promises';
import { afterEach, expect, test, vi } from 'vitest';
import '../../../tests/fakes/extension.ts';
import type { PagePart, ShadedPage } from '../../contract/page-contract.ts';
import { browser } from '../browser.ts';
import { hearMessages } from './hear-messages.ts';
import { isQuestion } from './messages.ts';
import { hostPage } from './page-host.ts';

/** The names of the questions that the background receives. */
const asked: string[] = [];
hearMessages((message) => {
  if (!isQuestion(message, 'background')) return undefined;
  asked.push(message.ask);
  return Promise.resolve(null);
});

/** Hosts a page that counts as read once `read` is called. `hides` returns how often the page's marks were hidden. */
function host(): { readonly read: () => void; readonly hides: () => number } {
  let read = (): void => undefined;
  const ready = new Promise<void>((resolve) => {
    read = resolve;
  });
  const hideMarks = vi.fn();
  hostPage<Record<PagePart, unknown>>(
    () => ({ ready, setLook: () => undefined, hideMarks }) as unknown as ShadedPage,
  );
  return { read, hides: () => hideMarks.mock.calls.length };
}

const stop = (): Promise<unknown> => browser.runtime.sendMessage({ to: 'page', ask: 'stop', given: null });

/** Adds a frame of an old kind, which does not load by itself without a browser. */
function loadFrame(): void {
  const frame = document.createElement('frame');
  document.body.append(frame);
  frame.dispatchEvent(new Event('load'));
}

afterEach(async () => {
  await stop().catch(() => undefined);
  asked.length = 0;
});

test('a page asks for its frames once its own words have been read, and again when a frame loads later', async () => {
  const { read, hides } = host();
  await setImmediate();
  expect(asked).toEqual([]);
  read();
  await expect.poll(() => asked).toEqual(['shadeFrames']);
  loadFrame();
  await expect.poll(() => asked).toEqual(['shadeFrames', 'shadeFrames']);
  expect(hides()).toBe(0);
});

test('a frame of another site asks only for the frames inside it, and hides its marks', async () => {
  const { top } = globalThis;
  vi.stubGlobal('top', {});
  vi.stubGlobal('frameElement', null);
  const { read, hides } = host();
  vi.stubGlobal('top', top);
  read();
  await setImmediate();
  expect(asked).toEqual([]);
  expect(hides()).toBe(1);
  loadFrame();
  await expect.poll(() => asked).toEqual(['shadeFrames']);
});

test('a stopped page asks for no frames', async () => {
  const { read } = host();
  await stop();
  read();
  loadFrame();
  await setImmediate();
  expect(asked).toEqual([]);
});
