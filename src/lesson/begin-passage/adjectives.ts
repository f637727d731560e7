/** Sets of adjectives of which a thing has at most one: no `big, tiny dog`. */
const EXCLUSIVE = [
  'big small little huge tiny plump tall wide narrow long thick thin grand deep',
  'old new young fresh',
  'red blue green pink black white brown grey tan yellow orange purple ginger gold silver speckled spotted striped',
  'wet dry clean dusty muddy shiny',
  'happy proud sleepy hungry shy quick slow quiet noisy playful tame gentle loyal curious',
  'hot warm cold cosy',
  'best good fine lovely splendid useful nice pretty smart beautiful',
].map((words) => new Set(words.split(' ')));

/** Adjectives that come only before a noun: `A plum cake`, but no `the cake was plum`. */
const BEFORE_ONLY = new Set(
  'plum apple fish jam currant lemon log mud stone tin oak wooden brass ship rowing fishing steam gold silver clean dusty best chocolate good nice useful fine'.split(
    ' ',
  ),
);

/** Whether a thing that has one adjective may have another. */
export function mayAlsoBe(adjective: string, other: string): boolean {
  return adjective !== other && !EXCLUSIVE.some((set) => set.has(adjective) && set.has(other));
}

/** Whether an adjective may follow `it was`. */
export function canStandAlone(adjective: string): boolean {
  return !BEFORE_ONLY.has(adjective);
}
