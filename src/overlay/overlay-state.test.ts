import { describe, expect, test, vi } from 'vitest';
import { createOverlayState } from './overlay-state.ts';
import type { PageChange } from './watch-page.ts';

const node = (isConnected: boolean) => ({ isConnected }) as Node;
const change = (parts: Node[], gone: Node[] = [], restless: Node[] = []): PageChange => ({
  parts: new Set(parts),
  gone: new Set(gone),
  restless: new Set(restless),
});
function start() {
  const controller = new AbortController();
  const onFault = vi.fn();
  return { state: createOverlayState(onFault, controller.signal), onFault, controller };
}

describe('tasks of an overlay', () => {
  test('run one after the other', async () => {
    const { state } = start();
    const order: string[] = [];
    const first = state.inTurn(async () => {
      await Promise.resolve();
      order.push('first');
    });
    const second = state.inTurn(async () => void order.push('second'));
    await Promise.all([first, second]);
    expect(order).toEqual(['first', 'second']);
  });

  test('continue after a task that fails, and its fault is kept until it is forgotten', async () => {
    const { state, onFault } = start();
    const failed = state.inTurn(async () => {
      throw new Error('no text node');
    });
    await expect(failed).rejects.toThrow('no text node');
    const behind = vi.fn(async () => undefined);
    await state.inTurn(behind);
    expect(behind).toHaveBeenCalledOnce();
    expect(onFault).toHaveBeenCalledOnce();
    expect(state.troubles().fault).toContain('no text node');
    state.forgetFault();
    expect(state.troubles()).toEqual({ restless: false, takenAway: false, fault: null });
  });

  test('do not start after an abort, and an error after the abort is not kept as a fault', async () => {
    const { state, onFault, controller } = start();
    const stopped = state.inTurn(async () => {
      controller.abort();
      throw new Error('the page is gone');
    });
    await expect(stopped).rejects.toThrow();
    const late = vi.fn(async () => undefined);
    await state.inTurn(late);
    expect(late).not.toHaveBeenCalled();
    expect(onFault).not.toHaveBeenCalled();
    expect(state.troubles().fault).toBeNull();
  });
});

describe('changes of the page', () => {
  test('request a task only for the first change in the queue, until the queue is emptied', () => {
    const { state } = start();
    expect([change([]), change([])].map(state.add)).toEqual([true, false]);
    state.take();
    expect(state.add(change([]))).toBe(true);
  });

  test('are joined into one, and a node that was only moved does not count as gone', () => {
    const { state } = start();
    const [part, other, moved, left] = [node(true), node(true), node(true), node(false)];
    state.add(change([part], [moved]));
    state.add(change([part, other], [left]));
    expect(state.take()).toEqual({
      touched: new Set([part, other]),
      gone: new Set([left]),
      isGivenUp: false,
    });
    expect(state.take()).toEqual({ touched: new Set(), gone: new Set(), isGivenUp: false });
  });

  test('report a part that is given up as gone although it is in the page, and keep that note', () => {
    const { state } = start();
    const ticker = node(true);
    state.add(change([], [], [ticker]));
    const taken = state.take();
    expect([...taken.gone][0]).toBe(ticker);
    expect(taken.isGivenUp).toBe(true);
    state.add(change([]));
    expect(state.take().isGivenUp).toBe(false);
    expect(state.troubles().restless).toBe(true);
  });
});

test('the note that the page removed marks stays when a fault is forgotten', () => {
  const { state } = start();
  state.noteTakenAway();
  state.forgetFault();
  expect(state.troubles().takenAway).toBe(true);
});
