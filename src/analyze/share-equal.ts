/**
 * Returns a function that returns the first of equal values in place of each later one. Values with the same name are
 * equal. The function keeps every value that it has met, so it is for values of which there are some hundreds.
 */
export function shareEqual<T>(nameOf: (value: T) => string): (value: T) => T {
  const met = new Map<string, T>();
  return (value) => {
    const name = nameOf(value);
    const known = met.get(name);
    if (known !== undefined) return known;
    met.set(name, value);
    return value;
  };
}
