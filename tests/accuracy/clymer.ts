import type { Unit } from '../../src/analyze/types.ts';
import { type UnitLists, utility } from './spelling-shares.ts';

export interface Generalisation {
  readonly says: string;
  /**
   * The percentage in T. Clymer, "The utility of phonic generalizations in the primary grades", The Reading Teacher 16
   * (1963), from memory.
   */
  readonly clymer: number;
  /** How far our figure may differ from Clymer's. `why` gives the reason. */
  readonly within: number;
  readonly why: string;
  readonly measure: (lists: UnitLists) => number;
}

const first = (units: readonly Unit[], test: (unit: Unit) => boolean): Unit | undefined =>
  units.find((unit) => !unit.affix && test(unit));
const letters =
  (...wanted: string[]) =>
  (_word: string, units: readonly Unit[]) =>
    first(units, (unit) => wanted.includes(unit.letters));
const isLong = (sound: string): boolean => /^(EY|IY|AY|OW|UW|Y\.UW)$/.test(sound);
const oneBeat = (units: readonly Unit[]): boolean =>
  units.filter(({ sound }) => /[AEIOU]/.test(sound)).length === 1;
const before = (units: readonly Unit[], unit: Unit): string => units[units.indexOf(unit) + 1]?.letters ?? '';

/**
 * Our figures count distinct words among the commonest 3,000, including inflected forms. Clymer's figures count words
 * of four primers.
 */
export const generalisations: readonly Generalisation[] = [
  {
    says: 'ay says long a',
    clymer: 78,
    within: 22,
    why: 'the -day of weekdays ended in a weak i in the dictionaries of his day (from memory)',
    measure: (lists) => utility(lists, letters('ay'), ({ sound }) => sound === 'EY'),
  },
  {
    says: 'c before o, a is hard',
    clymer: 100,
    within: 1,
    why: '',
    measure: (lists) =>
      utility(
        lists,
        (_word, units) => first(units, (unit) => unit.letters === 'c' && /^[ao]/.test(before(units, unit))),
        ({ sound }) => sound === 'K',
      ),
  },
  {
    says: 'c before e, i is soft',
    clymer: 96,
    within: 6,
    why: 'ci and ti of special are no soft c here',
    measure: (lists) =>
      utility(
        lists,
        (_word, units) => first(units, (unit) => unit.letters === 'c' && /^[ei]/.test(before(units, unit))),
        ({ sound }) => sound === 'S',
      ),
  },
  {
    says: 'ch says CH',
    clymer: 95,
    within: 10,
    why: 'our list has more words from Greek and French',
    measure: (lists) => utility(lists, letters('ch'), ({ sound }) => sound === 'CH'),
  },
  {
    says: 'ck says K',
    clymer: 100,
    within: 0,
    why: '',
    measure: (lists) => utility(lists, letters('ck'), ({ sound }) => sound === 'K'),
  },
  {
    says: 'kn says N',
    clymer: 100,
    within: 0,
    why: '',
    measure: (lists) => utility(lists, letters('kn'), ({ sound }) => sound === 'N'),
  },
  {
    says: 'g before e, i is soft',
    clymer: 64,
    within: 15,
    why: 'get, give and girl weigh more in primers',
    measure: (lists) =>
      utility(
        lists,
        (_word, units) =>
          first(
            units,
            (unit) => unit.letters === 'ge' || (unit.letters === 'g' && /^[ei]/.test(before(units, unit))),
          ),
        ({ sound }) => sound === 'JH',
      ),
  },
  {
    says: 'ow says long o',
    clymer: 59,
    within: 12,
    why: 'a small class in both lists',
    measure: (lists) => utility(lists, letters('ow'), ({ sound }) => sound === 'OW'),
  },
  {
    says: 'a vowel in the middle of a one-beat word is short',
    clymer: 62,
    within: 22,
    why: 'his primers have more of old, find, all and the like; ours counts ar, er, ir, or, ur as failing too',
    measure: (lists) =>
      utility(
        lists,
        (_word, units) =>
          oneBeat(units)
            ? first(
                units,
                (unit) =>
                  /^[aeiou]r?$/.test(unit.letters) &&
                  units.indexOf(unit) > 0 &&
                  units.indexOf(unit) < units.length - 1,
              )
            : undefined,
        ({ sound }) => !isLong(sound) && !/R$/.test(sound),
      ),
  },
  {
    says: 'of two vowels, one a final e, the first is long',
    clymer: 63,
    within: 30,
    why: 'have, come and give are told apart as ve, o_e; both lists agree that it often fails',
    measure: (lists) =>
      utility(
        lists,
        (_word, units) => first(units, (unit) => unit.letters[1] === '_'),
        ({ sound }) => isLong(sound),
      ),
  },
];
