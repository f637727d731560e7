/** Longer ones are no help on a sheet, in letters. */
const LONGEST = 70;
/** A cut-off end leaves at least so many words: `reproducer in` says nothing. */
const FEWEST_WORDS = 4;

/** Where a long definition may end. */
const BREAKS = /,| (?:that|which|who|used|having|with|by|in order|for example|such as|as in|as by)\b/g;
/** What no definition ends in. */
const DANGLING =
  /[\s,]+(?:usually|especially|particularly|mostly|often|sometimes|typically|etc|e\.g\.|i\.e\.|or|and|as|of|to|for|from|in|on|at|a|an|the|is|are|be|formed|that|which|who|not|its|their)$/;
/** An adult's turns of phrase, in plainer words. */
const PLAINER: readonly (readonly [RegExp, string])[] = [
  [/^(?:of or )?(?:relating|pertaining) to\b/, 'to do with'],
  [/^of or (?:characteristic of|resembling) /, 'like '],
  [/^(?:having or showing|characterized by|marked by) /, 'showing '],
  [/^any of (?:various|numerous|several) /, 'one of many '],
  [/^be (?=[a-z]+ing\b)/, 'to be '],
  [/ in order to /, ' to '],
];

/**
 * A dictionary's definition cut down for a lesson: `a large natural stream of water; "the river was navigable"` to what
 * stands before the first semicolon, without brackets and examples, ended at a comma or a which or that where it is long still;
 * empty where nothing whole and short is left.
 */
export function shortenMeaning(definition: string): string {
  const first = PLAINER.reduce(
    (text, [from, to]) => text.replace(from, to),
    definition
      .replace(/\([^)]*\)/g, ' ')
      .split(/[;:]|,? (?:e\.g\.|i\.e\.|such as|for example)/)[0]!
      .replace(/\s+/g, ' ')
      .replace(/ ([,.])/g, '$1')
      .replace(/^[\s,.]+|[\s,.]+$/g, ''),
  );
  if (first.length <= LONGEST) return trim(first);
  const ends = [...first.matchAll(BREAKS)].map(({ index }) => index).filter((end) => end <= LONGEST);
  const cut = trim(first.slice(0, ends.at(-1) ?? 0));
  return cut.split(' ').length >= FEWEST_WORDS ? cut : '';
}

function trim(text: string): string {
  const shorter = text.replace(DANGLING, '');
  return shorter === text ? text : trim(shorter);
}
