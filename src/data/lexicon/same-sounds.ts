const WEAK = new Set(['AX', 'IX']);
const ALIKE = new Set(['AA AO', 'AO AA', 'ER R', 'R ER']);
const MAY_BE_WEAK = new Set(['AX', 'IX', 'IH', 'AH', 'EH']);

/**
 * The strict comparison: a weak vowel equals only another weak vowel and short i. So refused does not match the refuse
 * that means rubbish.
 */
export const ONLY_WEAK: ReadonlySet<string> = new Set(['AX', 'IX', 'IH']);

/**
 * Whether two pronunciations are the same for a reader. A weak vowel equals another weak vowel and a short i, e or u,
 * since CMUdict is inconsistent (IH Z, AH0 Z in boxes). AA equals AO, and ER equals R (every, everyday). `hope` + `ing`
 * equals hoping; `hop` + `ing` does not.
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
