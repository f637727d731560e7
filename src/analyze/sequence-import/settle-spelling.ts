import { catalogue } from '../catalogue/catalogue.ts';
import type { PatternId } from '../types.ts';
import type { Spelled } from './clause-chunk.ts';
import { composites, findSpelling, rimes } from './spellings.ts';
import { type Beside, explains, patternsShown } from './weigh-examples.ts';

/** What letters teach; `sure` when the text says so or they have no other usual meaning. */
export interface Settled {
  readonly ids: readonly PatternId[];
  readonly sure: boolean;
  /** What they might be instead; a neighbour may decide between them. */
  readonly left: readonly PatternId[];
  /** Their own examples need it, as the engine reads them: it is sure whatever else the clause says. */
  readonly confirmed: boolean;
}

/** The same, with the letters themselves. */
interface SettledLetters extends Settled {
  readonly contradicted: boolean;
  readonly letters: string;
}

const patterns = new Map(catalogue.map((row) => [row.id, row]));

/** Rarer senses a neighbour must not suggest: ea beside ai is not yet the ea of steak. */
const rare = new Set<PatternId>([
  'ea-long-a',
  'ear-er',
  'i_e-long-e',
  'schwa-ai',
  'schwa-ou',
  'i-long-e',
  'silent-e',
]);

/** Letters whose sounds are taught together, whatever the examples are. */
const bothTaught = /^(?:th|ed)$/;

/** Sounds beyond these say nothing more of what letters mean. */
const MOST_SOUNDS = 24;

/** Reads what stands beside letters: a heading, a sound, an example, in their own cell or another of the row. */
export function settleSpelling(
  spelled: Spelled,
  beside: Beside,
  others: readonly Spelled[] = [],
): SettledLetters {
  const settled = soundOfS(settle(spelled, beside, others), spelled);
  const weight = explains(spelled, settled.ids, others, beside.needs);
  const unheard = spelled.sounds.some(({ within }) => within?.size === 0);
  return {
    ...settled,
    // An example that does not need what was read says that something else is meant, or more.
    sure: settled.sure && !spelled.odd && !unheard && weight !== 'contradicts',
    confirmed: weight === 'confirms',
    contradicted: weight === 'contradicts',
    letters: spelled.spelling.letters,
  };
}

/** "-s /z/", and "s that sounds like /z/" under "Plural -s": one of the two sounds that the ending has. */
function soundOfS(settled: Omit<Settled, 'confirmed'>, { sounds }: Spelled): Omit<Settled, 'confirmed'> {
  if (settled.ids.length !== 1 || settled.ids[0] !== 'suffix-s' || sounds.length === 0) return settled;
  const heard = ['s', 'z'].filter((id) => sounds.some(({ within }) => within!.has(id)));
  return heard.length === 1 ? { ...settled, ids: [`suffix-s-${heard[0]}`] } : settled;
}

function settle(spelled: Spelled, beside: Beside, others: readonly Spelled[]): Omit<Settled, 'confirmed'> {
  const { spelling } = spelled;
  const weakVowel = vowelOfWeakEnding(spelled, beside);
  if (weakVowel !== null) return { ids: [weakVowel], sure: true, left: [weakVowel] };
  // Blends have the n of bank, but a bare n beside them is the letter.
  // So has "digraphs" kn; only "silent letters" makes one of a bare k.
  const mayBe = (id: PatternId, within: ReadonlySet<PatternId>) =>
    spelling.letters.length > 1 || (id !== 'n-ng' && (!/^(?:kn|wr|gn|mb)$/.test(id) || !within.has('sh')));
  const fitting = beside.headings.filter(({ within }) =>
    spelling.candidates.some((id) => within?.has(id) === true && mayBe(id, within)),
  );
  // `ch` in one cell, `/k/ and /sh/` in another: both are meant.
  const several = fitting.filter(({ sound }) => sound).length > 1;
  const sounding = fitting.filter(({ sound }) => several && sound);
  // "/ʃ/ /tʃ/" beside `sh ch`: what other letters alone can say is theirs.
  const theirs = sounding.filter(({ within }) =>
    others.some((other) => {
      if (other === spelled) return false;
      const said = sounding.filter((one) => other.spelling.candidates.some((id) => one.within!.has(id)));
      return said.length === 1 && said[0]!.within === within;
    }),
  );
  const told = theirs.length < sounding.length ? sounding.filter((one) => !theirs.includes(one)) : sounding;
  const sounds = [...spelled.sounds, ...told].slice(0, MOST_SOUNDS);
  const headings = [...spelled.headings, ...fitting.filter((heading) => !sounding.includes(heading))];
  let left = spelling.candidates;
  const said = new Set(sounds.flatMap(({ within }) => [...within!]));
  // What is said of the letters themselves comes before any heading above them.
  const limits = [...(said.size > 0 ? [said] : []), ...headings.map(({ within }) => within!)];
  // "Long a and long e teams" beside `ee, ea`: headings of which no sense has both leave those that have one.
  const inOne = left.filter((id) => limits.some((limit) => limit.has(id)));
  const apart =
    spelled.headings.length === 0 &&
    sounds.length === 0 &&
    limits.length > 1 &&
    inOne.length > 0 &&
    !inOne.some((id) => limits.every((limit) => limit.has(id)));
  if (apart) left = inOne;
  for (const limit of apart ? [] : limits) {
    const inside = left.filter((id) => limit.has(id));
    if (inside.length > 0) left = inside;
  }
  if (spelled.every > 0) {
    const all = everySound(spelled, left);
    if (all !== null) return { ids: all, sure: true, left: all };
  }
  // "ai /z/" says something that cannot be: the teacher is asked.
  const contradicted = said.size > 0 && !spelling.candidates.some((id) => said.has(id));
  const rime = rimes[spelling.letters];
  if (rime !== undefined && left.length < spelling.candidates.length && rime.every((id) => left.includes(id)))
    return { ids: rime, sure: true, left: rime };
  const first = [...headings, ...sounds].flatMap(({ ids }) => ids.filter((id) => left.includes(id)));
  // "plural s" is -s, not the es that may be written so.
  const own = first.filter((id) => patterns.get(id)!.letters.split(' ')[0] === spelling.letters);
  const named = own.length > 0 ? own : first;
  const shownIds = patternsShown(spelled, left, beside, others);
  const weakEnd = left.filter((id) => id === `final-${spelling.letters}` && shownIds.has(id));
  const all = weakEnd.length > 0 ? weakEnd : left.filter((id) => shownIds.has(id));
  // "er, ir, ur" beside faster: its ending is not what the list is about.
  const stems = all.filter((id) => !id.startsWith('suffix-'));
  const byExample = spelled.examples.length === 0 && spelling.sure && stems.length > 0 ? stems : all;
  if (byExample.length > 0 && !(spelling.letters in composites) && rime === undefined) {
    const usual = spelling.usual.filter((id) => byExample.includes(id));
    const possible = spelling.usual.filter((id) => left.includes(id));
    // "ch (chip, school)" teaches two sounds of ch; "-ed (jumped)" all of -ed.
    // "th (thin)" is one of the two, "th, wh (thin, when)" shows a list.
    const apart =
      beside.apart?.has(spelling.letters) === true ||
      others.some(
        (one) => one !== spelled && one.spelling.letters === spelling.letters && one.examples.length > 0,
      );
    const spread = spelling.letters === 'ed' || spelled.spread;
    const together = spelled.examples.length === 0 || (bothTaught.test(spelling.letters) && spread && !apart);
    const both = together ? possible : usual;
    const meant = spelling.sure && usual.length > 0 ? both : [];
    const ids = [...new Set([...meant, ...byExample])];
    // Part of what they usually mean: that may be all that is meant, or not.
    const part =
      spelling.sure &&
      !apart &&
      spelled.examples.length > 0 &&
      usual.length > 0 &&
      usual.length < possible.length;
    return { ids, sure: !part, left: ids };
  }
  const usual = spelling.usual.filter((id) => left.includes(id));
  if (sounds.length > 0 && (left.length < spelling.candidates.length || sounds.length > 1)) {
    // The sound of y is told of pony and sky; windy is the ending.
    if (left.includes('y-long-e') && headings.length === 0) left = left.filter((id) => id !== 'suffix-y');
    const pick = (among: readonly PatternId[]): readonly PatternId[] => {
      const known = [usual, named].map((ids) => ids.filter((id) => among.includes(id)));
      return known.find((ids) => ids.length > 0) ?? among.slice(0, 1);
    };
    // "ch as /k/ and /sh/": one of each sound.
    const each = sounds.flatMap(({ within }) => pick(left.filter((id) => within!.has(id))));
    const ids = [...new Set(each)];
    return { ids, sure: true, left: ids };
  }
  // "a as in village": examples that show none of the known sounds of a vowel leave its meaning open.
  const unlike = /^[aeiou]$/.test(spelling.letters) && spelled.examples.length > 0 && byExample.length === 0;
  if (contradicted || unlike) return { ids: spelling.usual, sure: false, left };
  const narrowed = left.length < spelling.candidates.length;
  if (usual.length === spelling.usual.length && spelling.sure)
    return { ids: usual, sure: true, left: spelling.letters === 'y' ? left : usual };
  if (left.length === 1) return { ids: left, sure: true, left };
  // An ending that its examples do not explain is asked.
  if (usual.length === 0 && spelling.usual.length === 0 && named.length === 0 && isLoose(spelling.letters))
    return { ids: [], sure: false, left };
  if (usual.length === 0)
    return named.length > 0
      ? { ids: [...new Set(named)], sure: narrowed, left }
      : { ids: firstOf(left), sure: false, left };
  return { ids: usual, sure: narrowed && usual.length < spelling.usual.length, left };
}

/** "-on" under "Schwa", "-en (seven)": the weak vowel of an ending that is no suffix; null for other letters. */
function vowelOfWeakEnding({ spelling, examples, headings }: Spelled, beside: Beside): PatternId | null {
  const [, vowel = ''] = /^([aeiou])[nmt]$/.exec(spelling.letters) ?? [];
  const schwa = `schwa-${vowel}`;
  const ending = spelling.usual.includes(`short-${vowel}`) || spelling.letters === 'en';
  if (vowel === '' || !ending || headings.length > 0) return null;
  const shows = (word: string) => {
    const needs = beside.needs(word);
    return word.endsWith(spelling.letters) && needs.has(schwa) && !needs.has(`suffix-${spelling.letters}`);
  };
  const shown = examples.length > 0 && examples.every(shows);
  const named = examples.length === 0 && beside.headings.some(({ within }) => within?.has('schwa-a'));
  return shown || named ? schwa : null;
}

const isLoose = (letters: string) => findSpelling(letters, 'none') === null;

/** Of senses of which none is usual, the long vowels (u has two), or else the first. */
function firstOf(left: readonly PatternId[]): readonly PatternId[] {
  const long = left.filter((id) => /^long-[a-u]/.test(id));
  return long.length > 0 ? long : left.slice(0, 1);
}

/** Weak and foreign senses, which no count of sounds includes: "u_e, both sounds". */
const counted = (id: PatternId) =>
  !rare.has(id) && !/-weak$|^x-gz$/.test(id) && patterns.get(id)!.family !== 'schwa';

/** All sounds of letters, or the first of them; null where there are fewer than the text says. */
function everySound({ spelling, every }: Spelled, left: readonly PatternId[]): readonly PatternId[] | null {
  // "three sounds of y": those of a vowel.
  if (spelling.letters === 'y' && every < 4) return ['y-long-i', 'y-long-e', 'y-short-i'].slice(0, every);
  // "-s, both sounds"
  if (spelling.usual.includes('suffix-s')) return ['suffix-s-s', 'suffix-s-z'];
  const open = [...new Set([...spelling.usual, ...left])];
  const families = new Set(spelling.usual.map((id) => patterns.get(id)!.family === 'suffix'));
  const all = open.filter((id) => counted(id) && families.has(patterns.get(id)!.family === 'suffix'));
  const sounds = all.length >= every || every === Number.POSITIVE_INFINITY ? all : open;
  if (every !== Number.POSITIVE_INFINITY && sounds.length < every) return all.length === 1 ? all : null;
  return every === Number.POSITIVE_INFINITY ? sounds : sounds.slice(0, every);
}

/** Lets the nearest neighbour with the same sound decide: ow after oa is that of snow, after ou that of cow. */
export function leanOnNeighbours(settled: readonly SettledLetters[]): readonly Settled[] {
  return settled.map((one, i) => {
    if (isRimeAmong(settled, i))
      return { ids: rimes.ing!, sure: true, left: rimes.ing!, confirmed: one.confirmed };
    // "-le, -el, -al": the end of metal, not of coastal.
    if (one.letters === 'al' && one.ids[0] === 'suffix-al' && isBeside(settled, i, /^(?:el|il|le)$/))
      return { ids: ['final-al'], sure: true, left: ['final-al'], confirmed: one.confirmed };
    // "-ire, -ure": the vowel of cure, not the ending of failure.
    if (one.letters === 'ure' && isBeside(settled, i, /^(?:ire|are|ore|ere|eer|air|oar)$/))
      return { ids: ['ure'], sure: true, left: ['ure'], confirmed: one.confirmed };
    // "-er, -ir, -ur": the vowel of fern, not the ending of helper.
    if (one.letters === 'er' && one.ids[0] === 'suffix-er' && isBeside(settled, i, /^(?:ir|ur|ar)$/))
      return { ids: ['er'], sure: true, left: ['er'], confirmed: one.confirmed };
    if (one.letters === 'ent' && isBeside(settled, i, /^(?:ant|ance|ence)$/))
      return { ids: ['suffix-ent'], sure: true, left: ['suffix-ent'], confirmed: one.confirmed };
    if (one.letters === "'s" && isBeside(settled, i, /^(?:n't|'(?:ll|re|ve|d|m))$/))
      return { ids: ['contraction-is'], sure: true, left: ['contraction-is'], confirmed: one.confirmed };
    if (one.letters === 'y' && one.ids[0] === 'y' && isAmongVowels(settled, i)) {
      const said = leanOn({ ...one, sure: false }, settled, i);
      return said ?? { ...one, sure: false };
    }
    // "ei and ie (eight, piece)": piece says nothing of ei.
    if (one.sure || one.contradicted) return one;
    return leanOn(one, settled, i) ?? one;
  });
}

/** What the nearest neighbour with the same sound leaves of letters; null where none decides. */
function leanOn(one: SettledLetters, settled: readonly SettledLetters[], i: number): Settled | null {
  for (const step of [1, 2, 3]) {
    for (const near of [settled[i - step], settled[i + step]]) {
      const same = near?.sure === true ? one.left.filter((id) => !rare.has(id) && alike(id, near.ids)) : [];
      if (same.length === 1) return { ids: same, sure: true, left: same, confirmed: one.confirmed };
    }
  }
  return null;
}

/** Whether all letters near a y are spellings of vowels: igh, y. */
function isAmongVowels(settled: readonly SettledLetters[], i: number): boolean {
  const near = [settled[i - 1], settled[i + 1]].filter((one) => one !== undefined);
  const vowel = /^(?:vowel|long vowel|other vowel)/;
  return near.length > 0 && near.every(({ ids }) => ids.every((id) => vowel.test(patterns.get(id)!.family)));
}

/** Whether ing stands beside ang, ong or ung, which are no endings. */
function isRimeAmong(settled: readonly SettledLetters[], i: number): boolean {
  const near = [settled[i - 1], settled[i + 1], settled[i - 2], settled[i + 2]];
  return settled[i]!.letters === 'ing' && near.some((one) => /^[aou]n[gk]$/.test(one?.letters ?? ''));
}

function isBeside(settled: readonly SettledLetters[], i: number, letters: RegExp): boolean {
  return [-2, -1, 1, 2].some((step) => letters.test(settled[i + step]?.letters ?? ''));
}

/** The same sound, or a blend at the same end of the word. */
function alike(id: PatternId, others: readonly PatternId[]): boolean {
  const { family, sounds } = patterns.get(id)!;
  return others.some((other) => {
    // "air, ear" lists two sounds more often than one.
    if (other === 'air') return false;
    const beside = patterns.get(other)!;
    return (
      (family.endsWith('blend') && family === beside.family) ||
      beside.sounds.some((sound) => sounds.includes(sound))
    );
  });
}
