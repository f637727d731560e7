const WEAK = new Set(['AX', 'IX']);
const ALIKE = new Set(['AA AO', 'AO AA', 'ER R', 'R ER']);
const MAY_BE_WEAK = new Set(['AX', 'IX', 'IH', 'AH', 'EH']);

/** The strict measure: a weak vowel equals only another and short i, so refused is not the refuse that is thrown out. */
export const ONLY_WEAK: ReadonlySet<string> = new Set(['AX', 'IX', 'IH']);

/**
 * True when two pronunciations are one for a reader: a weak vowel equals another and a short i, e or u (CMUdict
 * wavers: IH Z, AH0 Z in boxes), AA equals AO, ER equals R (every, everyday). `hope` + `ing` equals hoping; not `hop` + `ing`.
 */
export function sameSounds(
  one: readonly string[],
  other: readonly string[],
  mayBeWeak: ReadonlySet<string> = MAY_BE_WEAK,
): boolean {
  if (one.length !== other.length) return false;
  return one.every((sound, i) => {
    const against = other[i]!;
    if (sound === against) return true;
    if (WEAK.has(sound)) return mayBeWeak.has(against);
    if (WEAK.has(against)) return mayBeWeak.has(sound);
    return ALIKE.has(`${sound} ${against}`);
  });
}
