import { describeError } from '../analyze/index.ts';
import type { FrameWords } from '../contract/page-contract.ts';
import type { PageChange } from './watch-page.ts';

/** The troubles with the shading of a page. */
type Troubles = Pick<FrameWords, 'restless' | 'takenAway' | 'fault'>;

/** The order of the overlay's works, the changes of the page that wait for theirs, and what went wrong. */
export interface OverlayState {
  /** Runs tasks one after the other. A task that fails is noted as a fault, and the next tasks still run. No task begins after an abort. */
  inTurn(work: () => Promise<void>): Promise<void>;
  /** Keeps a change of the page for later; true for the first that waits. */
  add(change: PageChange): boolean;
  /** All changes that wait, as one; a part that rewrites itself for ever is noted as restless. None waits afterwards. */
  take(): JoinedChange;
  /** The page has taken marks away. */
  noteTakenAway(): void;
  forgetFault(): void;
  readonly troubles: () => Troubles;
}

export interface JoinedChange {
  /** Parts to be read again. */
  readonly touched: ReadonlySet<Node>;
  /** Nodes that are in the page no more, or are not followed any more. */
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
