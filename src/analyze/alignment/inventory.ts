import { coarseRows } from '../catalogue/catalogue.ts';
import { pairSpellings } from '../catalogue/pair-spellings.ts';
import irregularUnits from './irregular-units.json' with { type: 'json' };

/** One way in which letters may spell a sound, independent of any word. */
export interface UnitForm {
  /** The letters, such as `ai`, or `a_e` for a vowel whose silent e comes after the next consonant. */
  readonly letters: string;
  /** Sounds joined by dots; `-` for silent letters. */
  readonly sound: string;
  readonly irregular: boolean;
}

const NOT_SPELLINGS = new Set(['suffix', 'prefix', 'initial blend', 'final blend']);

/** All units that the catalogue names, followed by the irregular ones. Each pair of letters and sound occurs once. */
export const inventory: readonly UnitForm[] = listUnits();

function listUnits(): UnitForm[] {
  const forms = new Map<string, UnitForm>();
  const add = (letters: string, sound: string, irregular: boolean): void => {
    const key = `${letters}:${sound}`;
    if (!forms.has(key)) forms.set(key, { letters, sound, irregular });
  };
  for (const row of coarseRows) {
    if (NOT_SPELLINGS.has(row.family)) continue;
    for (const [letters, sound] of pairSpellings(row.letters, row.sounds)) add(letters, sound, false);
  }
  for (const [letters, sounds] of Object.entries(irregularUnits)) {
    for (const sound of sounds) add(letters, sound, true);
  }
  return [...forms.values()];
}
