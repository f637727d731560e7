const VOWEL = /^[AEIOU]/;

/**
 * CMUdict phones with stress to the engine's sounds (see analyze/alignment/sounds.ts).
 *
 * Beyond dropping stress: AH0 is schwa and IH0 a weak i, but in a last -en, where CMUdict writes either (even, seven); `wh` loses the HH that only some speakers say
 * (whale); ER before a vowel is taken apart where the spelling shows vowel and r apart (hurry, gorilla;
 * not operate, whose er stays whole); IY before r is one sound with IH (hear); fire and flour end in a plain R; the u of usual and
 * genuine is heard as UW, where CMUdict writes AH0 W; carry has the vowel of care, which CMUdict mostly writes.
 */
export function cleanPronunciation(spelling: string, phones: readonly string[]): string[] {
  const sounds: string[] = [];
  for (const [i, phone] of phones.entries()) {
    const next = phones[i + 1] ?? '';
    const bare = phone.replace(/[012]$/, '');
    const weak = phone.endsWith('0');
    if (phone === 'AH0' && next === 'W' && /u[aeio]/.test(spelling) && !/w|qu|gu/.test(spelling))
      sounds.push('UW');
    else if (bare === 'W' && sounds.at(-1) === 'UW' && phones[i - 1] === 'AH0') continue;
    else if (phone === 'AH0' || isWeakEn(spelling, phones, i)) sounds.push('AX');
    else if (phone === 'IH0' && next !== 'R') sounds.push('IX');
    else if (phone === 'IH2' && isWeak(phones, i)) sounds.push('IX');
    else if (bare === 'UW' && next === 'R' && /oor|our/.test(spelling)) sounds.push('UH');
    else if (bare === 'HH' && next === 'W' && spelling.includes('wh')) continue;
    else if (bare === 'IY' && next === 'R' && !/^(re|pre|de|e)w?r/.test(spelling)) sounds.push('IH');
    else if (bare === 'AE' && next === 'R') sounds.push('EH');
    else if (
      bare === 'ER' &&
      /^(AY|AW)/.test(phones[i - 1] ?? '') &&
      /[iy]re|ir([^aeiouy]|$)|our|owr/.test(spelling)
    )
      sounds.push('R');
    else if (bare === 'ER' && VOWEL.test(next) && splitsR(spelling, weak, next)) {
      sounds.push(weak ? 'AX' : 'AH', 'R');
    } else sounds.push(bare);
  }
  return sounds;
}

function isWeakEn(spelling: string, phones: readonly string[], i: number): boolean {
  return phones[i] === 'IH0' && i === phones.length - 2 && phones[i + 1] === 'N' && spelling.endsWith('en');
}

/** hurry: rr, but not that of stirring, which is ir, nor a doubled r as in blurring; gorilla, around, giraffe: a, o or i, r, then the stressed vowel. Not gallery (er) or memory (weak vowel after). */
function splitsR(spelling: string, weak: boolean, next: string): boolean {
  // The ending of blur, occur and abhor has doubled their r, which no word with an rr of its own has before -ing.
  if (/[ou]rr(?:ings?|ingly|ed|ers?)$|currences?$/.test(spelling)) return false;
  if (/[aou]rr/.test(spelling) || (weak && /[ei]rr/.test(spelling))) return true;
  return weak && /[12]$/.test(next) && /[aoi]r[aeiouy]/.test(spelling) && !/[eu]r[aeiouy]/.test(spelling);
}

/** CMUdict's secondary stress on a short i is none to a reader, save at the end: hospital, decide; not township. */
function isWeak(phones: readonly string[], i: number): boolean {
  const after = phones.slice(i + 1);
  return after.some((phone) => VOWEL.test(phone));
}
