/** Longer ones are no help on a sheet, in letters. */
const LONGEST = 70;

/**
 * A dictionary's definition cut down for a lesson: `a large natural stream of water; "the river was navigable"` to what
 * stands before the first semicolon, without brackets, ended at a comma or a which or that where it is long still; empty
 * where nothing short is left.
 */
export function shortenMeaning(definition: string): string {
  const first = definition
    .replace(/\([^)]*\)/g, ' ')
    .split(/[;:]/)[0]!
    .replace(/\s+/g, ' ')
    .replace(/ ([,.])/g, '$1')
    .trim();
  if (first.length <= LONGEST) return first;
  const cut = first
    .slice(0, LONGEST)
    .replace(
      /(?:,| (?:that|which|who|used|having|with|by|in order)\b)(?!.*(?:,| (?:that|which|who|used|having|with|by|in order)\b)).*$/,
      '',
    );
  return cut.length < LONGEST && cut.length > 12 ? cut : '';
}
