import type { PartChoice } from './lesson-part.ts';

/** Returns a choice of a number. */
export function numberChoice(
  id: string,
  label: string,
  values: readonly number[],
  usual: number,
): PartChoice {
  return {
    id,
    label,
    options: values.map((value) => ({ value: String(value), label: String(value) })),
    usual: String(usual),
  };
}
