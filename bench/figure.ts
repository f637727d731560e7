import { median } from './median.ts';

/** One line of the bench. */
export interface Figure {
  readonly what: string;
  readonly ratio: number;
  /** The figures behind the ratio. */
  readonly note: string;
  /** The most the ratio may be, or the least where it says how many times as fast we are; none where there is no bar. */
  readonly most?: number;
  readonly least?: number;
}

/** Figures that are taken together, since they need the same browser or the same tables. */
export interface Section {
  readonly name: string;
  measure(): Promise<Figure[]>;
}

/** A figure over several runs: the run in the middle, and how far the others are from it. */
export interface Spread {
  readonly figure: Figure;
  readonly least: number;
  readonly most: number;
}

/** The runs of a section, line by line; a line that a run does not have is left out of it. */
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

/** Whether a figure keeps to its bar; null where it has none. */
export function keepsBar({ ratio, most, least }: Figure): boolean | null {
  if (most === undefined && least === undefined) return null;
  return ratio <= (most ?? Infinity) && ratio >= (least ?? -Infinity);
}
