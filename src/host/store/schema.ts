import * as v from 'valibot';

/** A whole number from 0 up. */
export const countSchema = v.pipe(v.number(), v.safeInteger(), v.minValue(0));

export const textOrNull = v.nullable(v.string());

/**
 * Returns a schema for an object with any property names. The whole object is refused unless every value fits `item`.
 * Valibot's `record` is not used because it drops `constructor` and `__proto__`, which are valid ids.
 */
export function recordOf<T>(item: v.GenericSchema<unknown, T>) {
  return v.pipe(
    v.custom<object>((value) => typeof value === 'object' && value !== null && !Array.isArray(value)),
    v.transform<object, [string, unknown][]>(Object.entries),
    v.array(v.tuple([v.string(), item])),
    v.transform((entries): Record<string, T> => Object.fromEntries(entries)),
  );
}
