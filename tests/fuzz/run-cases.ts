import fc from 'fast-check';
import type { FuzzTarget } from './fuzz-target.ts';

/** The number of cases made from one seed. */
const BATCH = 500;
/**
 * The time in milliseconds after which a case counts as failed. A case that runs alone on a machine takes a hundredth
 * of this time.
 */
export const SLOW = 1000;

/** The result of running a target's cases. */
export interface FuzzResult {
  readonly cases: number;
  /** The time of the longest case, in milliseconds. */
  readonly slowest: number;
  /** The error and the input that caused it; null when no case failed. */
  readonly failure: string | null;
}

/**
 * Runs cases of a target until the first failure. The same seed gives the same cases. `now` is a clock in milliseconds.
 * `tell` is called before each case, so that a case that never ends can be named from outside.
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
      // The time of the first case is left out, since that case loads what a library needs.
      const took = done === 0 ? 0 : now() - from;
      done++;
      slowest = Math.max(slowest, took);
      if (took > SLOW)
        return { cases: done, slowest, failure: `${describe(value)}\ntook ${Math.round(took)} ms` };
    }
  }
  return { cases: done, slowest, failure: null };
}

/** Describes the case of a target with a given seed and number, as passed to `tell`. */
export function describeCase({ input }: FuzzTarget, seed: number, n: number): string {
  return describe(fc.sample(input, { seed, numRuns: BATCH })[n]);
}

function describe(value: unknown): string {
  return value instanceof Uint8Array
    ? `bytes, base64: ${Buffer.from(value).toString('base64')}`
    : `input: ${fc.stringify(value)}`;
}
