import { hasVowel, isLong, mergeWeak } from '../alignment/sounds.ts';
import type { GuessToken } from './guess-token.ts';
import { DONE } from './model-format.ts';
import type { GuessModel } from './open-model.ts';

/** Number of ways kept at each letter. More ways did not improve the readings (measured on held-out words). */
const WAYS = 20;
/** Maximum number of readings returned. */
const MOST = 10;
/** The search drops a path that costs this much more than the cheapest path at the same letter (natural logarithms). */
const TOO_DEAR = 9;
/** Maximum length of a word. Longer words get no reading. */
export const LONGEST_WORD = 25;

/** The place of a way between a silent e and the vowel that the e belongs to. */
const FREE = 0;
const AFTER_E = 1;
const ONE_MORE = 2;
/**
 * The e at the end of the word belongs to its consonant, so the vowel before is not long (have, but not face, which has
 * a_e).
 */
const OWN_E = 3;

interface Choice {
  readonly token: number;
  readonly opens: boolean;
  readonly closes: boolean;
  readonly vowel: boolean;
  readonly longLetter: boolean;
  readonly ownE: boolean;
  /** A number for each sound, the last sound first. Weak vowels have the same numbers as full vowels. */
  readonly sounds: readonly number[];
}

/** One way to say the letters up to a certain letter. */
interface Way {
  readonly state: number;
  readonly place: number;
  readonly cost: number;
  readonly least: number;
  readonly said: number;
  readonly token: number;
  readonly origin: number;
}

/** One way to say a word. */
export interface FoundTokens {
  /** The likeliest tokens for this way, in the order of the letters. */
  readonly tokens: readonly number[];
  /** The improbability of the sounds, over all tokens they may come from (negative natural logarithm). */
  readonly cost: number;
}

/** Finds the likeliest ways to say a word. Each occurs once, and the best is first. The list is empty if nothing fits. */
export type FindTokens = (word: string) => FoundTokens[];

/**
 * Prepares a beam search over a model, from the last letter to the first. A split vowel (`a_e`) is allowed only if the
 * token of a consonant covers the silent e, as in alignment/align.ts.
 */
export function createFindTokens(model: GuessModel): FindTokens {
  const byText = new Map<string, Choice[]>();
  let longest = 0;
  for (const [token, told] of model.tokens.entries()) {
    if (told.text === '') continue;
    const choices = byText.get(told.text);
    if (choices) choices.push(choiceOf(token, told));
    else byText.set(told.text, [choiceOf(token, told)]);
    longest = Math.max(longest, told.text.length);
  }

  // The ways at each letter, the cheapest first. The row is letter * WAYS + rank.
  const rows = (LONGEST_WORD + 1) * WAYS;
  const filled = new Int32Array(LONGEST_WORD + 1);
  const costs = new Float64Array(rows);
  const states = new Int32Array(rows);
  const places = new Uint8Array(rows);
  const tokens = new Int32Array(rows);
  const origins = new Int32Array(rows);
  /** The sounds so far as a hash, and the cost of the likeliest tokens alone. */
  const heard = new Int32Array(rows);
  const leasts = new Float64Array(rows);

  /**
   * Adds a way to the ways at its letter. Two ways with the same sounds in the same state are merged, and their
   * probabilities are added.
   */
  function put(at: number, way: Way): void {
    const { state, place, said } = way;
    let { cost, least, token, origin } = way;
    const first = at * WAYS;
    const end = first + filled[at]!;
    let row = first;
    while (row < end && !(states[row] === state && places[row] === place && heard[row] === said)) row++;
    if (row < end) {
      cost = addChances(costs[row]!, cost);
      if (leasts[row]! <= least) {
        least = leasts[row]!;
        token = tokens[row]!;
        origin = origins[row]!;
      }
    } else if (filled[at] === WAYS) row--;
    else filled[at]!++;
    for (; row > first && costs[row - 1]! > cost; row--) {
      costs[row] = costs[row - 1]!;
      states[row] = states[row - 1]!;
      places[row] = places[row - 1]!;
      tokens[row] = tokens[row - 1]!;
      origins[row] = origins[row - 1]!;
      heard[row] = heard[row - 1]!;
      leasts[row] = leasts[row - 1]!;
    }
    costs[row] = cost;
    states[row] = state;
    places[row] = place;
    tokens[row] = token;
    origins[row] = origin;
    heard[row] = said;
    leasts[row] = least;
  }

  function isFull(at: number, cost: number): boolean {
    return filled[at] === WAYS && costs[at * WAYS + WAYS - 1]! <= cost;
  }

  function goOn(start: number, end: number, choices: readonly Choice[], atLast: boolean): void {
    const first = end * WAYS;
    const limit = costs[first]! + TOO_DEAR;
    for (let row = first; row < first + filled[end]!; row++) {
      const before = costs[row]!;
      if (before > limit || isFull(start, before)) return;
      for (const choice of choices) {
        const place = follow(places[row]!, choice, atLast);
        if (place === -1) continue;
        const state = model.step(states[row]!, choice.token);
        const cost = before + model.cost;
        if (isFull(start, cost)) continue;
        let said = heard[row]!;
        for (const sound of choice.sounds) said = Math.imul(said ^ sound, 0x01000193);
        const least = leasts[row]! + model.cost;
        put(start, { state, place, cost, least, said, token: choice.token, origin: row });
      }
    }
  }

  function goBack(last: number): number[] {
    const found: number[] = [];
    for (let row = last; origins[row] !== -1; row = origins[row]!) found.push(tokens[row]!);
    return found;
  }

  return function findTokens(word) {
    if (word.length > LONGEST_WORD) return [];
    filled.fill(0);
    put(word.length, { state: model.start, place: FREE, cost: 0, least: 0, said: 1, token: 0, origin: -1 });
    for (let end = word.length; end > 0; end--) {
      for (let start = end - 1; start >= Math.max(0, end - longest); start--) {
        const choices = byText.get(word.slice(start, end));
        if (choices) goOn(start, end, choices, end === word.length);
      }
    }
    const found = new Map<number, { cost: number; least: number; row: number }>();
    for (let row = 0; row < filled[0]!; row++) {
      if (places[row] === AFTER_E || places[row] === ONE_MORE) continue;
      model.step(states[row]!, DONE);
      const cost = costs[row]! + model.cost;
      const least = leasts[row]! + model.cost;
      const same = found.get(heard[row]!);
      if (!same) {
        found.set(heard[row]!, { cost, least, row });
        continue;
      }
      same.cost = addChances(same.cost, cost);
      if (least < same.least) Object.assign(same, { least, row });
    }
    const best = [...found.values()].sort((a, b) => a.cost - b.cost).slice(0, MOST);
    return best.map(({ cost, row }) => ({ tokens: goBack(row), cost }));
  };
}

/** Adds two probabilities. The arguments and the result are negative natural logarithms. */
function addChances(one: number, other: number): number {
  return Math.min(one, other) - Math.log1p(Math.exp(-Math.abs(one - other)));
}

function numberOf(sound: string): number {
  const merged = mergeWeak(sound);
  // The number is spread over all bits. Otherwise two sequences of sounds might have the same hash.
  return Math.imul(merged.charCodeAt(0) * 256 + (merged.charCodeAt(1) || 0), 0x9e3779b1);
}

function choiceOf(token: number, { text, letters, sound }: GuessToken): Choice {
  const opens = letters[1] === '_';
  const closes = !opens && text.length === letters.length + 1 && text.endsWith('e');
  return {
    token,
    opens,
    closes,
    vowel: hasVowel(sound),
    longLetter: letters.length === 1 && isLong(sound),
    ownE: /^[^aeiou]+e$/.test(letters),
    sounds: sound === '-' ? [] : sound.split('.').reverse().map(numberOf),
  };
}

/** Returns the place after one more token to the left, or -1 where that token is not allowed. */
function follow(place: number, { opens, closes, vowel, longLetter, ownE }: Choice, last: boolean): number {
  if (closes) return place === FREE || place === OWN_E ? AFTER_E : -1;
  if (place === AFTER_E || place === ONE_MORE) {
    if (opens) return FREE;
    return vowel || place === ONE_MORE ? -1 : ONE_MORE;
  }
  if (opens || (place === OWN_E && longLetter)) return -1;
  return last && ownE ? OWN_E : FREE;
}
