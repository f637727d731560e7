import { describeError } from '../analyze/index.ts';
import type { FrameWords } from '../contract/page-contract.ts';
import type { PageChange } from './watch-page.ts';

/** The troubles with the shading of a page. */
type Troubles = Pick<FrameWords, 'restless' | 'takenAway' | 'fault'>;

/** Keeps the order of the overlay's tasks, the page changes that wait for their task, and the problems. */
export interface OverlayState {
  /** Runs tasks one after the other. A task that fails is noted as a fault, and the next tasks still run. No task begins after an abort. */
  inTurn(work: () => Promise<void>): Promise<void>;
  /** Keeps a change of the page for later. Returns true for the first change in the queue. */
  add(change: PageChange): boolean;
  /**
   * Returns all waiting changes as one, and empties the queue. A part that rewrites itself forever is noted as
   * restless.
   */
  take(): JoinedChange;
  /** Notes that the page has removed marks. */
  noteTakenAway(): void;
  forgetFault(): void;
  readonly troubles: () => Troubles;
}

export interface JoinedChange {
  /** Parts to be read again. */
  readonly touched: ReadonlySet<Node>;
  /** Nodes that are no longer in the page, or are no longer followed. */
  readonly gone: ReadonlySet<Node>;
  readonly isGivenUp: boolean;
}

export function createOverlayState(onFault: () => void, signal: AbortSignal): OverlayState {
  let busy: Promise<void> = Promise.resolve();
  let waiting: PageChange[] = [];
  let troubles: Troubles = { restless: false, takenAway: false, fault: null };
  const note = (found: Partial<Troubles>): void => {
    troubles = { ...troubles, ...found };
  };
  return {
    inTurn(work) {
      const done = busy.then(() => (signal.aborted ? undefined : work()));
      busy = done.catch((error: unknown) => {
        if (signal.aborted) return;
        note({ fault: describeError(error) });
        onFault();
      });
      return done;
    },
    add: (change) => waiting.push(change) === 1,
    take() {
      const touched = new Set<Node>();
      const gone = new Set<Node>();
      let isGivenUp = false;
      for (const change of waiting) {
        for (const node of change.gone) if (!node.isConnected) gone.add(node);
        for (const node of change.restless) gone.add(node);
        for (const part of change.parts) touched.add(part);
        isGivenUp ||= change.restless.size > 0;
      }
      waiting = [];
      if (isGivenUp) note({ restless: true });
      return { touched, gone, isGivenUp };
    },
    noteTakenAway: () => note({ takenAway: true }),
    forgetFault: () => note({ fault: null }),
    troubles: () => troubles,
  };
}
