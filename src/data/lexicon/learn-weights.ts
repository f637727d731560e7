import { createAligner, type WeighedUnit } from '../../analyze/alignment/align.ts';
import { inventory } from '../../analyze/alignment/inventory.ts';

/** The number of learning rounds. The alignments no longer change after the third (engine study, part 1). */
const ROUNDS = 4;
/** Matches units that are used only as a last choice: engine is i_e n rather than i ne, talk is al k rather than a lk. */
const LAST_CHOICE = /^([bdlmnpt]e|l[kfm])$/;

/**
 * Learns how common each unit is from words and their sounds: aligns with the current weights, counts, and repeats
 * (Viterbi training). Irregular units start a thousand times rarer, and silent letters rarer still, so that they are
 * used only if nothing else fits.
 */
export function learnWeights(
  words: readonly (readonly [spelling: string, sounds: readonly string[]])[],
): WeighedUnit[] {
  let units = inventory.map(
    (form): WeighedUnit => ({ ...form, cost: startCost(form.irregular, form.sound) }),
  );
  for (let round = 0; round < ROUNDS; round++) {
    const aligner = createAligner(units);
    const counts = new Map<string, number>();
    let total = 0;
    for (const [spelling, sounds] of words) {
      for (const { letters, sound } of aligner.align(spelling, sounds)?.units ?? []) {
        const key = `${letters}:${sound}`;
        counts.set(key, (counts.get(key) ?? 0) + 1);
        total++;
      }
    }
    units = units.map((unit) => {
      const seen = (counts.get(`${unit.letters}:${unit.sound}`) ?? 0) + 0.2;
      const learnt = -Math.log(seen / total);
      const rare = Math.max(learnt, 6) + 4 + (unit.sound === '-' ? 3 : 0);
      const usual = LAST_CHOICE.test(unit.letters) ? learnt + 4 : learnt;
      return { ...unit, cost: unit.irregular ? rare : usual };
    });
  }
  return units;
}

function startCost(irregular: boolean, sound: string): number {
  return (irregular ? 13 : 6) + (sound === '-' ? 3 : 0);
}
