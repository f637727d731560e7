import type { UnitForm } from './inventory.ts';
import { hasVowel, isLong } from './sounds.ts';

/** A unit with its cost, which is smaller for commoner units. */
export interface WeighedUnit extends UnitForm {
  /** Negative natural logarithm of the unit's probability. */
  readonly cost: number;
}

/**
 * State of the path between two units. A split vowel (`a_e`) is open until its silent e is found. After a long single
 * vowel, no unit that ends in a silent e may follow, so `face` is f-a_e-c.
 */
const FREE = 0;
const OPEN = 1;
const ONE_CONSONANT = 2;
const TWO_CONSONANTS = 3;
const AFTER_LONG = 4;
const STATES = 5;

/** Consonant pairs that may come before a silent e after a long vowel: taste, change, bathe. */
const PAIRS_BEFORE_E = new Set(['st', 'ng', 'gu', 'qu', 'th']);
/** After these consonants, the silent e belongs to the consonant unless the vowel is long: have, office, promise. */
const KEEPS_OWN_E = new Set(['c', 's', 'v', 'g', 'z']);
const ENDS_IN_SILENT_E = /^[^aeiou]+e$/;
/** Matches a spelling that ends in a silent e: the se of horse, the ore of shore, the que of unique. */
const CLOSES_WITH_E = /[^aeiou]e$|[gq]ue$/;

interface Prepared extends WeighedUnit {
  readonly sounds: readonly string[];
  readonly opens: boolean;
  readonly text: string;
  readonly vowel: boolean;
  readonly long: boolean;
  readonly ownE: boolean;
  readonly closesWithE: boolean;
}

/** An aligner with fixed unit costs. */
export interface Aligner {
  /**
   * Returns the cheapest units that give both the spelling and the sounds, with their cost. Returns null if there are
   * no such units.
   */
  align(spelling: string, sounds: readonly string[]): { units: WeighedUnit[]; cost: number } | null;
}

/**
 * Builds an aligner: a dynamic programme over letter, sound and state (engine study, part 1). The e of a split vowel
 * may be at the end of the word or before a consonant (safety). It is never before a vowel letter: ceiling is c-ei, not
 * c-e_i.
 */
export function createAligner(units: readonly WeighedUnit[]): Aligner {
  const byFirst = new Map<string, Prepared[]>();
  for (const unit of units) {
    const opens = unit.letters[1] === '_';
    const text = opens ? unit.letters[0]! : unit.letters;
    const prepared: Prepared = {
      ...unit,
      opens,
      text,
      sounds: unit.sound === '-' ? [] : unit.sound.split('.'),
      vowel: hasVowel(unit.sound),
      long: text.length === 1 && isLong(unit.sound),
      ownE: ENDS_IN_SILENT_E.test(unit.letters),
      closesWithE: CLOSES_WITH_E.test(unit.letters),
    };
    const list = byFirst.get(text[0]!);
    if (list) list.push(prepared);
    else byFirst.set(text[0]!, [prepared]);
  }
  return { align: (spelling, sounds) => alignWord(byFirst, spelling, sounds) };
}

function alignWord(
  byFirst: ReadonlyMap<string, readonly Prepared[]>,
  spelling: string,
  sounds: readonly string[],
): { units: WeighedUnit[]; cost: number } | null {
  const width = (sounds.length + 1) * STATES;
  const cost = new Float64Array((spelling.length + 1) * width).fill(Infinity);
  const from = new Int32Array(cost.length).fill(-1);
  const via: (Prepared | undefined)[] = new Array(cost.length);
  const relax = (at: number, next: number, price: number, unit: Prepared | undefined): void => {
    if (price < cost[next]!) {
      cost[next] = price;
      from[next] = at;
      via[next] = unit;
    }
  };
  cost[0] = 0;
  for (let i = 0; i < spelling.length; i++) {
    const candidates = byFirst.get(spelling[i]!) ?? [];
    for (let j = 0; j <= sounds.length; j++) {
      for (let state = 0; state < STATES; state++) {
        const at = i * width + j * STATES + state;
        const here = cost[at]!;
        if (here === Infinity) continue;
        relax(at, (i + 1) * width + j * STATES + FREE, here + costOfSilentE(state, spelling, i), undefined);
        for (const unit of candidates) {
          if (!spelling.startsWith(unit.text, i)) continue;
          if (!soundsMatch(sounds, j, unit.sounds)) continue;
          const next = follow(state, unit, via[at], spelling, i);
          if (next === -1) continue;
          const to = (i + unit.text.length) * width + (j + unit.sounds.length) * STATES + next;
          relax(at, to, here + unit.cost, unit);
        }
      }
    }
  }
  const end = spelling.length * width + sounds.length * STATES;
  const last = cost[end + AFTER_LONG]! < cost[end]! ? end + AFTER_LONG : end;
  if (cost[last] === Infinity) return null;
  const path: WeighedUnit[] = [];
  for (let at = last; from[at] !== -1; at = from[at]!) {
    const unit = via[at];
    if (unit) path.push(unit);
  }
  return { units: path.reverse(), cost: cost[last]! };
}

/**
 * Returns the cost of using a letter as the silent e that ends a split vowel (made, safety). Returns Infinity if the
 * letter cannot be that e.
 */
function costOfSilentE(state: number, spelling: string, i: number): number {
  if (spelling[i] !== 'e' || (state !== ONE_CONSONANT && state !== TWO_CONSONANTS)) return Infinity;
  if (/[aeiouy]/.test(spelling[i + 1] ?? '')) return Infinity;
  return i + 1 === spelling.length ? 0 : 3;
}

function soundsMatch(sounds: readonly string[], at: number, wanted: readonly string[]): boolean {
  if (at + wanted.length > sounds.length) return false;
  for (let k = 0; k < wanted.length; k++) if (sounds[at + k] !== wanted[k]) return false;
  return true;
}

/** Returns the state after a unit, or -1 where the unit is not allowed. */
function follow(
  state: number,
  unit: Prepared,
  before: Prepared | undefined,
  spelling: string,
  i: number,
): number {
  const end = i + unit.text.length;
  const next = spelling[end];
  if (unit.closesWithE && runsIntoVowel(unit.text, next)) return -1;
  if (isMisplaced(unit, before, next)) return -1;
  if (state !== FREE && state !== AFTER_LONG) return followInSplit(state, unit, before);
  if (state === AFTER_LONG && unit.ownE && end === spelling.length) return -1;
  if (unit.opens) return OPEN;
  return unit.long ? AFTER_LONG : FREE;
}

/**
 * Returns the state after a consonant between a split vowel and its silent e. Returns -1 if the unit is not allowed
 * there.
 */
function followInSplit(state: number, unit: Prepared, before: Prepared | undefined): number {
  if (unit.vowel || unit.opens || unit.sounds.length === 0 || unit.ownE) return -1;
  if (state === OPEN) return before && ownsSilentE(unit, before) ? -1 : ONE_CONSONANT;
  if (state === ONE_CONSONANT && before && PAIRS_BEFORE_E.has(before.text + unit.text)) return TWO_CONSONANTS;
  return -1;
}

/**
 * Returns whether a silent e belongs to the consonant before it, as after a short vowel: the v of have.
 * Counter-examples: the v of save and the v of move.
 */
function ownsSilentE(unit: Prepared, vowel: Prepared): boolean {
  return KEEPS_OWN_E.has(unit.text) && !isLong(vowel.sound) && vowel.sound !== 'UW';
}

/**
 * Returns whether a silent e would come before a vowel letter, which is not allowed (ceiling is c-ei). The exception is
 * an e that keeps c or g soft before a or o: pigeon, but not berceuse.
 */
function runsIntoVowel(text: string, next: string | undefined): boolean {
  if (next === undefined || !/[aeiouy]/.test(next)) return false;
  return !(/^(ce|ge)$/.test(text) && /[ao]/.test(next));
}

/**
 * Rejects spellings whose sounds fit but whose place in the word is wrong:
 *
 * - ous is an ending in famous and famously, but not in carousel.
 * - A silent i is not allowed before y, because the y has the sound of the i: sukiyaki. The i of family may be silent.
 * - A silent h is not allowed after c, because the two make one sound: zucchini. The h of exhibit may be silent.
 * - ci and ti are not allowed before an e pronounced IY, because the sound belongs to ie: species. They are allowed in
 * ancient.
 */
function isMisplaced(unit: Prepared, before: Prepared | undefined, next: string | undefined): boolean {
  switch (`${unit.letters}:${unit.sound}`) {
    case 'ous:AX.S':
      return next !== undefined && !/[lniy]/.test(next);
    case 'i:-':
      return next === 'y';
    case 'h:-':
      return /^cc?$/.test(before?.text ?? '');
    case 'e:IY':
      return before !== undefined && !before.vowel && before.text.endsWith('i');
    default:
      return false;
  }
}
