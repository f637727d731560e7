import { median } from './median.ts';

/** One line of the bench. */
export interface Figure {
  readonly what: string;
  readonly ratio: number;
  /** The figures behind the ratio. */
  readonly note: string;
  /**
   * The highest ratio allowed, or the lowest if the ratio says how many times as fast we are. Absent if there is no
   * bar.
   */
  readonly most?: number;
  readonly least?: number;
}

/** Figures that are measured together, since they need the same browser or the same tables. */
export interface Section {
  readonly name: string;
  measure(): Promise<Figure[]>;
}

/** A figure over several runs: the run in the middle, and the lowest and highest ratio of all runs. */
export interface Spread {
  readonly figure: Figure;
  readonly least: number;
  readonly most: number;
}

/** Combines the runs of a section line by line. A run that does not have a line is left out of that line. */
export function spreadOf(runs: readonly (readonly Figure[])[]): Spread[] {
  return (runs[0] ?? []).map(({ what }) => {
    const all = runs.flatMap((run) => run.filter((figure) => figure.what === what));
    const ratios = all.map(({ ratio }) => ratio);
    const middle = median(ratios);
    return {
      figure: all.find(({ ratio }) => ratio === middle)!,
      least: Math.min(...ratios),
      most: Math.max(...ratios),
    };
  });
}

/** Returns whether a figure keeps to its bar, or null if the figure has no bar. */
export function keepsBar({ ratio, most, least }: Figure): boolean | null {
  if (most === undefined && least === undefined) return null;
  return ratio <= (most ?? Infinity) && ratio >= (least ?? -Infinity);
}
