import type { Arbitrary } from 'fast-check';

/** A reader or a step of the analysis, and what it is fed. */
export interface FuzzTarget<T = unknown> {
  readonly name: string;
  readonly input: Arbitrary<T>;
  /** Share of the cases of a long run; slow readers get less. */
  readonly share: number;
  /** Throws where the target throws anything but a fault of its own, or breaks a law. */
  readonly check: (input: T) => void | Promise<void>;
}

/** Keeps the type of the input between a target's two halves. */
export function target<T>(made: FuzzTarget<T>): FuzzTarget {
  return made as FuzzTarget;
}

/** What may be thrown; rethrows the rest. */
export function expectFault(error: unknown, ...kinds: readonly (new (...args: never[]) => Error)[]): void {
  if (!kinds.some((kind) => error instanceof kind)) throw error;
}

/** Throws with the broken property. */
export function hold(law: boolean, says: string): void {
  if (!law) throw new Error(`broken: ${says}`);
}
