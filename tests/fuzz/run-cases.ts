import fc from 'fast-check';
import type { FuzzTarget } from './fuzz-target.ts';

/** Cases made from one seed. */
const BATCH = 500;
/** A case that takes longer is a failure, in milliseconds; a case alone on a machine takes a hundredth of it. */
export const SLOW = 1000;

/** What came of a target's cases. */
export interface FuzzResult {
  readonly cases: number;
  /** The longest case, in milliseconds. */
  readonly slowest: number;
  /** What went wrong and with which input; null when nothing did. */
  readonly failure: string | null;
}

/**
 * Runs cases of a target until the first that fails; the same seed gives the same cases. `now` is a clock in milliseconds, `tell` hears
 * of each case before it runs, so that one that never ends can be named from outside.
 */
export async function runCases(
  { input, check }: FuzzTarget,
  cases: number,
  seed: number,
  { now = () => 0, tell = () => {} }: { now?: () => number; tell?: (seed: number, n: number) => void } = {},
): Promise<FuzzResult> {
  let slowest = 0;
  let done = 0;
  for (let batch = seed; done < cases; batch++) {
    const inputs = fc.sample(input, { seed: batch, numRuns: Math.min(BATCH, cases - done) });
    for (const [n, value] of inputs.entries()) {
      tell(batch, n);
      const from = now();
      try {
        await check(value);
      } catch (error) {
        const why = error instanceof Error ? (error.stack ?? error.message) : String(error);
        return { cases: done, slowest, failure: `${describe(value)}\n${why}` };
      }
      // The first loads what a library needs.
      const took = done === 0 ? 0 : now() - from;
      done++;
      slowest = Math.max(slowest, took);
      if (took > SLOW)
        return { cases: done, slowest, failure: `${describe(value)}\ntook ${Math.round(took)} ms` };
    }
  }
  return { cases: done, slowest, failure: null };
}

/** The case of a target by the seed and number that were told of it. */
export function describeCase({ input }: FuzzTarget, seed: number, n: number): string {
  return describe(fc.sample(input, { seed, numRuns: BATCH })[n]);
}

function describe(value: unknown): string {
  return value instanceof Uint8Array
    ? `bytes, base64: ${Buffer.from(value).toString('base64')}`
    : `input: ${fc.stringify(value)}`;
}
