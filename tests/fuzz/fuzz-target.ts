import type { Arbitrary } from 'fast-check';

/** A parser or a step of the analysis, with its test input. */
export interface FuzzTarget<T = unknown> {
  readonly name: string;
  readonly input: Arbitrary<T>;
  /** The share of this target in the cases of a long run. Slow parsers get a smaller share. */
  readonly share: number;
  /** Throws if the target throws an error that is not its own kind of fault, or if the target breaks a law. */
  readonly check: (input: T) => void | Promise<void>;
}

/** Checks that the input and the check of a target have the same type. */
export function target<T>(made: FuzzTarget<T>): FuzzTarget {
  return made as FuzzTarget;
}

/** Accepts an error of the given kinds and rethrows any other error. */
export function expectFault(error: unknown, ...kinds: readonly (new (...args: never[]) => Error)[]): void {
  if (!kinds.some((kind) => error instanceof kind)) throw error;
}

/** Throws an error that names the property if the property does not hold. */
export function hold(law: boolean, says: string): void {
  if (!law) throw new Error(`broken: ${says}`);
}
