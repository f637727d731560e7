const WEAK = new Set(['AX', 'IX']);
const ALIKE = new Set(['AA AO', 'AO AA', 'ER R', 'R ER']);
const MAY_BE_WEAK = new Set(['AX', 'IX', 'IH', 'AH', 'EH']);

/**
 * True when two pronunciations are one for a reader: a weak vowel equals another and a short i, e or u (CMUdict
 * wavers: IH Z, AH0 Z in boxes), AA equals AO, ER equals R (every, everyday). `hope` + `ing` equals hoping; not `hop` + `ing`.
 */
export function sameSounds(one: readonly string[], other: readonly string[]): boolean {
  if (one.length !== other.length) return false;
  return one.every((sound, i) => {
    const against = other[i]!;
    if (sound === against) return true;
    if (WEAK.has(sound)) return MAY_BE_WEAK.has(against);
    if (WEAK.has(against)) return MAY_BE_WEAK.has(sound);
    return ALIKE.has(`${sound} ${against}`);
  });
}
