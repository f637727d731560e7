/** A spelling with its place in the word; `end` takes in a silent e that closes a split vowel. */
export interface PlacedSpelling {
  readonly letters: string;
  readonly sound: string;
  readonly spells: string;
  readonly start: number;
  readonly end: number;
  /** Belongs to an ending that is no syllable: the s of hats. */
  readonly ending: boolean;
}

const SHORT = new Set(['AE', 'EH', 'AH', 'IH', 'UH']);
const STAYS_LEFT = /^(x|ck|tch|dge|dg|ng)$/;
const DIGRAPH = /^(th|ch|sh|ph|wh|gh|kn|wr|gn|rh|gu|qu|su|tch)$/;
/** Beginnings a syllable may have with l, r or w second: a.pron, re.ply, be.tween. */
const LIQUID_ONSET = /^([bcfgkp]l|[bcdfgkpt]r|phr|thr|shr|chr|tw|chl|phl)$/;
const ONSET = /^(s[ckmnptw]|sph|sch|squ|s[cpt]r|spl|[bcfgkps]l|[bcdfgkpt]r|thr|shr|chr|phr|tw|qu|chl|phl)$/;

/**
 * Where the syllable of `vowel` ends when `consonants` stand before the vowel `next`, as an offset into the word.
 *
 * - no consonant: between the vowels (po.em)
 * - a double letter is split (muf.fin), and so is st with a silent t (lis.ten) and pb with a silent p (cup.board, rasp.ber.ry)
 * - consonant-le takes one consonant with it (ta.ble, can.dle; after ck none: tack.le); so does a final -re (a.cre)
 * - a final syllable like -tion starts with its first letter (lo.tion)
 * - one consonant goes left after a short vowel (riv.er, mon.ey) and right after any other (spi.der, po.ta.to)
 * - of two one goes each way (nap.kin), but after a long or weak vowel a pair that can begin a word goes right
 *   (a.pron, se.cret; not fab.ric)
 * - of more (and after the e of de.stroy) the longest that can begin a word goes right (mon.ster, pump.kin)
 * - an i said like y goes right with the consonant after a long vowel (ju.nior, con.ve.nient; not on.ion), a u said like w with the g
 *   or s before it (lan.guage, per.suade)
 * - s closes a first e or dis before it (es.cape, dis.ap.point); not the e of de.stroy
 * - s goes right with p, t or c after an r-controlled vowel (per.spire; not pars.nip), and begins scope and sphere (mi.cro.scope,
 *   at.mo.sphere; not phos.phor)
 * - trans- stays whole before a consonant (trans.mit; not tran.sit)
 *
 * Common practice, no source; dictionaries differ in details.
 */
export function cutBetween(
  vowel: PlacedSpelling,
  between: readonly PlacedSpelling[],
  next: PlacedSpelling,
  firstInWord: boolean,
  onset = '',
): number {
  const heard = between.length > 1 && between[0]!.sound === '-' ? between.slice(1) : between;
  const consonants = joinGlide(heard);
  const first = consonants[0];
  const last = consonants.at(-1);
  if (next.spells === 'le' || (next.letters === 're' && next.sound === 'ER')) {
    if (!last || STAYS_LEFT.test(last.letters)) return next.start;
    return isSplittable(last.letters) ? last.start + 1 : last.start;
  }
  if (/^[tf]y$/.test(next.letters)) return next.start;
  if (isFinalSyllable(next)) return /^ss/.test(next.letters) ? next.start + 1 : next.start;
  if (vowel.letters[1] === '_' && consonants.length > 0) return closingE(vowel, consonants);
  if (!first || !last) return sharesR(vowel, next) ? vowel.end - 1 : next.start;
  if (isDouble(first.letters)) return first.start + 1;
  if (/^(xc|xh|dj|cqu)$/.test(first.letters)) return first.start + 1;
  if (/^xi?$/.test(last.letters)) return last.start + 1;
  if (/^p[bt]$/.test(last.letters)) return last.start + 1;
  const short =
    keepsConsonant(vowel, first) ||
    isQuAl(onset, vowel) ||
    (firstInWord && isStressedBeforeWeak(vowel, first, next));
  if (consonants.length === 1) {
    if (isDis(vowel, first)) return first.end;
    if (STAYS_LEFT.test(first.letters)) return first.end;
    if (!short) return first.start;
    if (/^[gs]u$/.test(first.letters)) return vowel.start === 0 ? first.start : first.start + 1;
    if (/^qu$/.test(first.letters)) return first.start;
    return isSplittable(first.letters) ? first.start + 1 : first.end;
  }
  if (consonants.length === 2) {
    if (STAYS_LEFT.test(first.letters)) return first.end;
    const pair = first.letters + last.letters;
    if (isKeptPair(pair, vowel, next) || (!short && last.letters === 'i' && last.sound === 'Y'))
      return first.start;
    if (
      !short &&
      (LIQUID_ONSET.test(pair) ||
        (pair === 'sl' && vowel.start === 0) ||
        (firstInWord && vowel.letters === 'e' && vowel.start > 0 && ONSET.test(pair)))
    ) {
      return first.start;
    }
    return last.start;
  }
  if (
    vowel.start === 2 &&
    /^a n s$/.test([vowel, ...consonants.slice(0, 2)].map(({ letters }) => letters).join(' '))
  )
    return consonants[1]!.end;
  const mayStart = firstInWord && vowel.letters === 'e' && vowel.start > 0 && !short ? 0 : 1;
  for (let i = mayStart; i < consonants.length; i++) {
    const onset = consonants
      .slice(i)
      .map((one) => one.letters)
      .join('');
    if (i === consonants.length - 1 || ONSET.test(onset)) return consonants[i]!.start;
  }
  return last.start;
}

/** A pair with s that begins a syllable whatever is before it: per.spire, tele.scope, bio.sphere. */
function isKeptPair(pair: string, vowel: PlacedSpelling, next: PlacedSpelling): boolean {
  if (/^s[cpt]$/.test(pair) && /r$/.test(vowel.letters)) return true;
  return (pair === 'sc' && next.letters === 'o_e') || (pair === 'sph' && /^er/.test(next.letters));
}

/** Units of a last syllable that begin with a consonant: tion, ture, cian; not ous. */
function isFinalSyllable({ letters, sound }: PlacedSpelling): boolean {
  return /^[bcdfgst]+[aeiou]/.test(letters) && /^(SH|CH|ZH|JH|S)\.|^(CH|ZH|SH)\.ER$/.test(sound);
}

function closingE(vowel: PlacedSpelling, consonants: readonly PlacedSpelling[]): number {
  const width = (one: PlacedSpelling): number => one.end - one.start - one.letters.length;
  const closed = consonants.find((one) => width(one) > 0);
  return (closed ?? consonants[0] ?? vowel).end;
}

/** The ff of muffin, the cch of zucchini. */
function isDouble(letters: string): boolean {
  return /^(.)\1(e|h)?$/.test(letters);
}

/** Two letters that are no digraph: the st of castle, the bt of subtle. */
function isSplittable(letters: string): boolean {
  return letters.length > 1 && !DIGRAPH.test(letters) && !STAYS_LEFT.test(letters);
}

/** The u of lan.guage and per.suade belongs to the consonant before it, and so does the i of ju.nior after a long vowel; not of on.ion. */
function joinGlide(consonants: readonly PlacedSpelling[]): readonly PlacedSpelling[] {
  const [before, glide] = consonants.slice(-2);
  if (!before || glide?.letters !== 'u' || glide.sound !== 'W' || !/^[gs]$/.test(before.letters))
    return consonants;
  return [...consonants.slice(0, -2), { ...before, letters: `${before.letters}u`, end: glide.end }];
}

/** The dis of dis.ap.point and dis.ease, at the start of a word. */
function isDis(vowel: PlacedSpelling, next: PlacedSpelling): boolean {
  return vowel.start === 1 && vowel.letters === 'i' && next.letters === 's' && /^I[HX]$/.test(vowel.sound);
}

/** The a of qual.i.ty is as short as that of a closed syllable; not that of fa.ther. */
function isQuAl(onset: string, { letters, sound }: PlacedSpelling): boolean {
  return onset === 'qu' && letters === 'a' && sound === 'AA';
}

/** Of two weak vowels that begin a word the first is said with some stress: stim.u.la.tion, sit.u.a.tion; not di.rect. */
function isStressedBeforeWeak(vowel: PlacedSpelling, first: PlacedSpelling, next: PlacedSpelling): boolean {
  if (vowel.letters !== 'i' || vowel.sound !== 'IX') return false;
  return first.sound === 'CH' || /^(Y\.)?(AX|IX|ER)$/.test(next.sound);
}

/** The r goes over to the next vowel: mir.ror, his.to.ry, sto.ries, nat.u.ral; not gen.er.al. */
function sharesR(vowel: PlacedSpelling, next: PlacedSpelling): boolean {
  return /rr$|^ur$/.test(vowel.letters) || (vowel.letters === 'or' && next.spells === 'y');
}

/** A short vowel holds the consonant after it; e, u before r are taken as long (he.ro, ju.ry), and so is the a of fa.ther. */
function keepsConsonant(vowel: PlacedSpelling, next: PlacedSpelling): boolean {
  const { letters, sound } = vowel;
  if (next.letters === 'r' && ((letters === 'e' && sound === 'IH') || letters === 'u')) return false;
  if (SHORT.has(sound)) return true;
  if (letters === 'o' || letters === 'ho') return sound === 'AA' || sound === 'AO' || sound === 'UW';
  return false;
}
