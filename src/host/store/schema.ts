import * as v from 'valibot';

/** A whole number from 0 up. */
export const countSchema = v.pipe(v.number(), v.safeInteger(), v.minValue(0));

export const textOrNull = v.nullable(v.string());

/**
 * Returns a schema for an object with any names. Each value fits `item`, or the whole object is refused. Valibot's
 * `record` drops `constructor` and `__proto__`, which are allowed as ids here.
 */
export function recordOf<T>(item: v.GenericSchema<unknown, T>) {
  return v.pipe(
    v.custom<object>((value) => typeof value === 'object' && value !== null && !Array.isArray(value)),
    v.transform<object, [string, unknown][]>(Object.entries),
    v.array(v.tuple([v.string(), item])),
    v.transform((entries): Record<string, T> => Object.fromEntries(entries)),
  );
}
