import { own } from './own.ts';

/** A part that changes more than `OFTEN` times within `WITHIN` milliseconds is no longer followed. */
const OFTEN = 40;
const WITHIN = 10_000;

/**
 * The time in milliseconds after an action of the reader. A change within this time counts as the page's answer to the
 * action.
 */
const ANSWER = 1000;

const INPUT = ['scroll', 'wheel', 'keydown', 'pointerdown', 'touchmove'] as const;

/** Separates changes worth following from changes of parts that rewrite themselves forever: a ticker, a clock. */
export interface Patience {
  /** Returns the records to follow, and the parts whose text is no longer followed from this batch on. */
  sort(records: readonly MutationRecord[]): {
    readonly followed: readonly MutationRecord[];
    readonly restless: ReadonlySet<Node>;
  };
}

/**
 * Counts changes by the element in which they happen. Text that never stops changing is given up. Styles that never
 * stop changing are only ignored, since they leave the words as they are.
 */
export function createPatience(signal: AbortSignal): Patience {
  let acted = Number.NEGATIVE_INFINITY;
  const act = (): void => {
    acted = performance.now();
  };
  for (const type of INPUT) addEventListener(type, act, { capture: true, passive: true, signal });

  const texts = new WeakMap<Node, Count>();
  const styles = new WeakMap<Node, Count>();
  const givenUp = new WeakSet<Node>();
  let any = false;

  function isGivenUp(node: Node): boolean {
    if (!any) return false;
    for (let at: Node | undefined = node; at; at = own(at).parentNode ?? (at as Partial<ShadowRoot>).host)
      if (givenUp.has(at)) return true;
    return false;
  }

  return {
    sort(records) {
      const now = performance.now();
      const counts = now - acted > ANSWER;
      const open = records.filter((record) => !isGivenUp(placeOf(record)));
      const seen = new Set<Count>();
      const restless = new Set<Node>();
      const followed = open.filter((record) => {
        const place = placeOf(record);
        const count = countOf(record.type === 'attributes' ? styles : texts, place, now);
        if (counts && !seen.has(count)) count.times++;
        seen.add(count);
        if (count.times <= OFTEN) return true;
        if (record.type === 'attributes') return false;
        givenUp.add(place);
        any = true;
        // The nodes removed in this turn were read before, and are no longer inside the part.
        for (const node of [place, ...record.removedNodes]) restless.add(node);
        return false;
      });
      return { followed, restless };
    },
  };
}

function placeOf({ type, target }: MutationRecord): Node {
  return type === 'characterData' ? (target.parentNode ?? target) : target;
}

interface Count {
  times: number;
  since: number;
}

function countOf(counts: WeakMap<Node, Count>, place: Node, now: number): Count {
  let count = counts.get(place);
  if (!count || (now - count.since > WITHIN && count.times <= OFTEN)) {
    count = { times: 0, since: now };
    counts.set(place, count);
  }
  return count;
}
