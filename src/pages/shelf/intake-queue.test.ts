import { expect, test, vi } from 'vitest';
import { createIntakeQueue, type IntakeSource, type IntakeView } from './intake-queue.ts';

function start() {
  let view: IntakeView<string> = { items: [], running: false };
  const controller = new AbortController();
  const queue = createIntakeQueue<string>({
    onChange: (now) => {
      view = now;
    },
    sayWhy: (error) => `Because: ${(error as Error).message}.`,
    signal: controller.signal,
  });
  const states = () => view.items.map(({ name, state }) => `${name} ${state.kind}`);
  return { queue, controller, states, view: () => view };
}

/** Returns a source whose reading ends when the test says so. */
function held(name: string): IntakeSource<string> & { end: () => void; reads: () => number } {
  let reads = 0;
  let end = (): void => undefined;
  return {
    name,
    reads: () => reads,
    end: () => end(),
    read: (signal) =>
      new Promise((resolve, reject) => {
        reads++;
        end = () => resolve(name);
        signal.addEventListener('abort', () => reject(signal.reason));
      }),
  };
}

const good = (name: string): IntakeSource<string> => ({ name, read: async () => name });
const bad: IntakeSource<string> = { name: 'bad', read: () => Promise.reject(new Error('torn')) };

test('texts are read one after the other, and a failed text gives its reason without stopping the others', async () => {
  const { queue, states, view } = start();
  queue.add([good('a'), bad, good('b')]);
  expect(view().running).toBe(true);
  await vi.waitFor(() => expect(view().running).toBe(false));
  expect(states()).toEqual(['a done', 'bad failed', 'b done']);
  expect(view().items[1]!.state).toEqual({ kind: 'failed', why: 'Because: torn.' });
  queue.clear();
  expect(view().items).toEqual([]);
});

test('a stopped queue keeps its results, and reads only the rest when it is resumed', async () => {
  const { queue, states, view } = start();
  const [first, second, third] = [held('first'), held('second'), held('third')];
  queue.add([first, second, third]);
  await vi.waitFor(() => expect(first.reads()).toBe(1));
  first.end();
  await vi.waitFor(() => expect(second.reads()).toBe(1));
  queue.stop();
  await vi.waitFor(() => expect(states()).toEqual(['first done', 'second waiting', 'third waiting']));
  expect(view().running).toBe(false);
  queue.resume();
  await vi.waitFor(() => expect(second.reads()).toBe(2));
  second.end();
  await vi.waitFor(() => expect(third.reads()).toBe(1));
  third.end();
  await vi.waitFor(() => expect(states()).toEqual(['first done', 'second done', 'third done']));
  expect(first.reads()).toBe(1);
  expect(view().running).toBe(false);
});

test('a queue that is resumed at once waits for the text whose reading was stopped', async () => {
  const { queue, states, view } = start();
  const slow = held('slow');
  queue.add([slow, good('next')]);
  await vi.waitFor(() => expect(slow.reads()).toBe(1));
  queue.stop();
  queue.resume();
  expect(view().running).toBe(true);
  await vi.waitFor(() => expect(slow.reads()).toBe(2));
  slow.end();
  await vi.waitFor(() => expect(states()).toEqual(['slow done', 'next done']));
});

test('texts added to a running queue are read too, and failed texts can be retried', async () => {
  const { queue, states, view } = start();
  let works = false;
  queue.add([{ name: 'flaky', read: async () => (works ? 'now' : Promise.reject(new Error('not yet'))) }]);
  queue.add([good('late')]);
  await vi.waitFor(() => expect(states()).toEqual(['flaky failed', 'late done']));
  await vi.waitFor(() => expect(view().running).toBe(false));
  works = true;
  queue.retry();
  await vi.waitFor(() => expect(states()).toEqual(['flaky done', 'late done']));
});

test('after an abort no more texts are read and no more changes are reported', async () => {
  const { queue, controller, view } = start();
  const [first, second] = [held('first'), held('second')];
  queue.add([first, second]);
  await vi.waitFor(() => expect(first.reads()).toBe(1));
  const before = view();
  controller.abort();
  queue.resume();
  await new Promise((resolve) => setTimeout(resolve));
  expect(second.reads()).toBe(0);
  expect(view()).toBe(before);
});

test('a queue to which nothing was added is not running, even when it is cleared', () => {
  const onChange = vi.fn();
  const { signal } = new AbortController();
  createIntakeQueue({ onChange, sayWhy: String, signal }).clear();
  expect(onChange.mock.calls).toEqual([[{ items: [], running: false }]]);
});
