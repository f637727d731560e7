import { catalogue } from '../catalogue/catalogue.ts';
import type { PatternId } from '../types.ts';
import type { Spelled } from './clause-chunk.ts';
import type { Phrase } from './phrases.ts';
import { composites, findSpelling, rimes } from './spellings.ts';
import { type Beside, explains, patternsShown } from './weigh-examples.ts';
import type { WordNeeds } from './word-needs.ts';

/** The patterns that letters teach. They are `sure` if the text says so or if the letters have no other usual meaning. */
export interface Settled {
  readonly ids: readonly PatternId[];
  readonly sure: boolean;
  /** Other possible patterns. A neighbour may decide between them. */
  readonly left: readonly PatternId[];
  /**
   * Whether the letters' own examples need the pattern, according to the engine. The pattern is then sure, whatever
   * else the clause says.
   */
  readonly confirmed: boolean;
}

/** A settled meaning together with its letters. */
interface SettledLetters extends Settled {
  readonly contradicted: boolean;
  readonly letters: string;
}

const patterns = new Map(catalogue.map((row) => [row.id, row]));

/** Rare senses that a neighbour must not suggest: ea beside ai is not yet the ea of steak. */
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

/** The most sounds that are considered. Further sounds tell nothing more about the letters. */
const MOST_SOUNDS = 24;

/** Settles letters by their context: a heading, a sound or an example, in their own cell or in another one of the row. */
export function settleSpelling(
  spelled: Spelled,
  beside: Beside,
  others: readonly Spelled[] = [],
): SettledLetters {
  const weakVowel = vowelOfWeakEnding(spelled, beside);
  const settled: Meant =
    weakVowel === null
      ? soundOfS(settle(spelled, beside, others), spelled)
      : { ids: [weakVowel], sure: true, left: [weakVowel] };
  const weight = explains(spelled, settled.ids, others, beside.needs);
  const unheard = spelled.sounds.some(({ within }) => within?.size === 0);
  return {
    ...settled,
    // If an example does not need the pattern that was read, another meaning or a further one is meant.
    sure: settled.sure && !spelled.odd && !unheard && weight !== 'contradicts',
    confirmed: weight === 'confirms',
    contradicted: weight === 'contradicts',
    letters: spelled.spelling.letters,
  };
}

/** Selects one of the two sounds of the ending: "-s /z/", and "s that sounds like /z/" under "Plural -s". */
function soundOfS(settled: Meant, { sounds }: Spelled): Meant {
  if (settled.ids.length !== 1 || settled.ids[0] !== 'suffix-s' || sounds.length === 0) return settled;
  const heard = ['s', 'z'].filter((id) => sounds.some(({ within }) => within!.has(id)));
  return heard.length === 1 ? { ...settled, ids: [`suffix-s-${heard[0]}`] } : settled;
}

type Meant = Omit<Settled, 'confirmed'>;

/** Letters with the facts known about them, and the meanings that remain. */
interface Known {
  readonly spelled: Spelled;
  readonly beside: Beside;
  readonly others: readonly Spelled[];
  /** Sounds of the letters themselves, or of the whole row if the row lists several sounds. */
  readonly sounds: readonly Phrase[];
  readonly headings: readonly Phrase[];
  /** Patterns that any of the sounds can mean. */
  readonly said: ReadonlySet<PatternId>;
  readonly left: readonly PatternId[];
  /** The usual meanings of the letters in `left`. */
  readonly usual: readonly PatternId[];
  /** The patterns in `left` that a heading or sound teaches by itself. */
  readonly named: readonly PatternId[];
}

function settle(spelled: Spelled, beside: Beside, others: readonly Spelled[]): Meant {
  const known = weigh(spelled, beside, others);
  for (const { means } of meanings) {
    const meant = means(known);
    if (meant !== null) return meant;
  }
  const { left, usual } = known;
  const narrowed = left.length < spelled.spelling.candidates.length;
  return { ids: usual, sure: narrowed && usual.length < spelled.spelling.usual.length, left };
}

/** Returns the meanings of letters that remain after headings, sounds and neighbours are considered. */
function weigh(spelled: Spelled, beside: Beside, others: readonly Spelled[]): Known {
  const { spelling } = spelled;
  const fitting = beside.headings.filter(
    ({ within }) =>
      spelling.candidates.some((id) => within?.has(id) === true && mayBe(spelling.letters, id, within)) &&
      !isElsewhere(spelled, within!, beside.needs),
  );
  // If `ch` is in one cell and `/k/ and /sh/` in another, both sounds are meant.
  const several = fitting.filter(({ sound }) => sound).length > 1;
  const sounding = fitting.filter(({ sound }) => several && sound);
  const sounds = [...spelled.sounds, ...withoutTheirs(sounding, spelled, others)].slice(0, MOST_SOUNDS);
  const headings = [...spelled.headings, ...fitting.filter((heading) => !sounding.includes(heading))];
  const said = new Set(sounds.flatMap(({ within }) => [...within!]));
  // Statements about the letters themselves come before any heading above them.
  const limits = [...(said.size > 0 ? [said] : []), ...headings.map(({ within }) => within!)];
  const left = within(spelled, limits, sounds.length > 0);
  const first = [...headings, ...sounds].flatMap(({ ids }) => ids.filter((id) => left.includes(id)));
  // "plural s" means -s, not es, which may also be written as s.
  const own = first.filter((id) => patterns.get(id)!.letters.split(' ')[0] === spelling.letters);
  return {
    spelled,
    beside,
    others,
    sounds,
    headings,
    said,
    left,
    usual: spelling.usual.filter((id) => left.includes(id)),
    named: own.length > 0 ? own : first,
  };
}

/**
 * Whether the examples of letters need a pattern that the heading does not include: "i in find" beside "open
 * syllables".
 */
function isElsewhere(
  { spelling, examples }: Spelled,
  within: ReadonlySet<PatternId>,
  needs: WordNeeds,
): boolean {
  const shown = spelling.candidates.filter((id) => examples.some((word) => needs(word).has(id)));
  return shown.length > 0 && !shown.some((id) => within.has(id));
}

/**
 * Whether a heading can give letters this meaning. Blends include the n of bank, and digraphs include kn, but a bare n
 * beside them is the letter n. Only "silent letters" turns a bare k into kn.
 */
function mayBe(letters: string, id: PatternId, within: ReadonlySet<PatternId>): boolean {
  if (letters.length > 1) return true;
  return !(letters === 'n' && id === 'n-ng') && (!/^(?:kn|wr|gn|mb)$/.test(id) || !within.has('sh'));
}

/**
 * Leaves out the sounds that only other letters can have: "/ʃ/ /tʃ/" beside `sh ch`. If each sound belongs to other
 * letters, all are returned.
 */
function withoutTheirs(
  sounding: readonly Phrase[],
  spelled: Spelled,
  others: readonly Spelled[],
): readonly Phrase[] {
  const own = sounding.filter(
    ({ within }) =>
      !others.some((other) => {
        if (other === spelled) return false;
        const said = sounding.filter((one) => other.spelling.candidates.some((id) => one.within!.has(id)));
        return said.length === 1 && said[0]!.within === within;
      }),
  );
  return own.length > 0 ? own : sounding;
}

/** Returns the meanings within every limit. A limit that allows no meaning is ignored. */
function within(
  { spelling, headings }: Spelled,
  limits: readonly ReadonlySet<PatternId>[],
  sounds: boolean,
): readonly PatternId[] {
  // If no sense fits both headings, the senses that fit one heading are kept: "Long a and long e teams" beside `ee,
  // ea`.
  const inOne = spelling.candidates.filter((id) => limits.some((limit) => limit.has(id)));
  const apart =
    headings.length === 0 &&
    !sounds &&
    limits.length > 1 &&
    inOne.length > 0 &&
    !inOne.some((id) => limits.every((limit) => limit.has(id)));
  if (apart) return inOne;
  let left = spelling.candidates;
  for (const limit of limits) {
    const inside = left.filter((id) => limit.has(id));
    if (inside.length > 0) left = inside;
  }
  return left;
}

/** Rules for the meaning of letters. The first rule that gives a meaning is used. */
const meanings: readonly { readonly name: string; readonly means: (known: Known) => Meant | null }[] = [
  {
    name: 'all their sounds, or as many as the text says',
    means: ({ spelled, left }) => {
      const all = spelled.every > 0 ? everySound(spelled, left) : null;
      return all === null ? null : { ids: all, sure: true, left: all };
    },
  },
  {
    name: 'a rime that a heading names',
    means: ({ spelled: { spelling }, left }) => {
      const rime = rimes[spelling.letters];
      const narrowed = left.length < spelling.candidates.length;
      const named = rime !== undefined && narrowed && rime.every((id) => left.includes(id));
      return named ? { ids: rime, sure: true, left: rime } : null;
    },
  },
  { name: 'what their examples show', means: byExamples },
  {
    name: 'what has the sounds that are said',
    means: ({ spelled, sounds, headings, left: all, usual, named }) => {
      const narrowed = all.length < spelled.spelling.candidates.length;
      if (sounds.length === 0 || !(narrowed || sounds.length > 1)) return null;
      // A sound of y refers to words such as pony and sky. In windy y is the ending.
      const pony = all.includes('y-long-e') && headings.length === 0;
      const left = pony ? all.filter((id) => id !== 'suffix-y') : all;
      const pick = (among: readonly PatternId[]): readonly PatternId[] => {
        const known = [usual, named].map((ids) => ids.filter((id) => among.includes(id)));
        return known.find((ids) => ids.length > 0) ?? among.slice(0, 1);
      };
      // One pattern is taken for each sound: "ch as /k/ and /sh/".
      const each = sounds.flatMap(({ within }) => pick(left.filter((id) => within!.has(id))));
      return { ids: [...new Set(each)], sure: true, left: [...new Set(each)] };
    },
  },
  {
    name: 'the usual thing, against what is said of them',
    means: ({ spelled: { spelling, examples }, said, left }) => {
      // "ai /z/" is impossible, so the teacher is asked.
      const contradicted = said.size > 0 && !spelling.candidates.some((id) => said.has(id));
      // Examples that show none of the known sounds of a vowel leave its meaning open: "a as in village".
      const unlike = /^[aeiou]$/.test(spelling.letters) && examples.length > 0;
      return contradicted || unlike ? { ids: spelling.usual, sure: false, left } : null;
    },
  },
  {
    name: 'the usual thing',
    means: ({ spelled: { spelling }, left, usual }) =>
      usual.length === spelling.usual.length && spelling.sure
        ? { ids: usual, sure: true, left: spelling.letters === 'y' ? left : usual }
        : null,
  },
  {
    name: 'the only thing that is left',
    means: ({ left }) => (left.length === 1 ? { ids: left, sure: true, left } : null),
  },
  {
    name: 'what a heading names, where nothing is usual',
    means: ({ spelled: { spelling }, left, usual, named }) => {
      if (usual.length > 0) return null;
      const narrowed = left.length < spelling.candidates.length;
      if (named.length > 0) return { ids: [...new Set(named)], sure: narrowed, left };
      // The teacher is asked about an ending that its examples do not explain.
      const asked = spelling.usual.length === 0 && isLoose(spelling.letters);
      return { ids: asked ? [] : firstOf(left), sure: false, left };
    },
  },
];

function byExamples(known: Known): Meant | null {
  const { spelled, left } = known;
  const { spelling, examples } = spelled;
  const ids = shownBy(known);
  if (ids.length === 0 || spelling.letters in composites || rimes[spelling.letters] !== undefined)
    return null;
  const usual = spelling.usual.filter((id) => ids.includes(id));
  const possible = spelling.usual.filter((id) => left.includes(id));
  const apart = isShownApart(known);
  // "ch (chip, school)" teaches two sounds of ch. "-ed (jumped)" teaches all of -ed.
  // "th (thin)" is one of the two sounds. In "th, wh (thin, when)" the examples belong to a list.
  const spread = spelling.letters === 'ed' || spelled.spread;
  const together = examples.length === 0 || (bothTaught.test(spelling.letters) && spread && !apart);
  const all = together ? possible : usual;
  const meant = [...new Set([...(spelling.sure && usual.length > 0 ? all : []), ...ids])];
  // Only part of the usual meanings is shown. The other meanings may or may not be taught.
  const some = usual.length > 0 && usual.length < possible.length;
  return { ids: meant, sure: !(spelling.sure && !apart && examples.length > 0 && some), left: meant };
}

/** Returns the remaining patterns that the examples of letters show. */
function shownBy({ spelled, beside, others, left }: Known): readonly PatternId[] {
  const { spelling, examples } = spelled;
  const shown = patternsShown(spelled, left, beside, others);
  const weakEnd = left.filter((id) => id === `final-${spelling.letters}` && shown.has(id));
  const all = weakEnd.length > 0 ? weakEnd : left.filter((id) => shown.has(id));
  // In "er, ir, ur" beside faster, the list does not mean the ending of faster.
  const stems = all.filter((id) => !isSuffix(id));
  // In "-s" beside maps and dishes, another cell teaches the -es of dishes.
  if (examples.length === 0 && spelling.letters === 's' && all.includes('suffix-s'))
    return all.filter((id) => id !== 'suffix-es');
  return examples.length === 0 && spelling.sure && stems.length > 0 ? stems : all;
}

const isSuffix = (id: PatternId) => id.startsWith('suffix-');

/** Whether the plan or the clause contains the same letters again, with examples of their own. */
function isShownApart({ spelled, beside, others }: Known): boolean {
  const { letters } = spelled.spelling;
  return (
    beside.apart?.has(letters) === true ||
    others.some((one) => one !== spelled && one.spelling.letters === letters && one.examples.length > 0)
  );
}

/**
 * Returns the weak vowel of an ending that is not a suffix: "-on" under "Schwa", "-en (seven)". Returns null for other
 * letters.
 */
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

/** Chooses between senses of which none is usual: the long vowels (u has two), or else the first sense. */
function firstOf(left: readonly PatternId[]): readonly PatternId[] {
  const long = left.filter((id) => /^long-[a-u]/.test(id));
  return long.length > 0 ? long : left.slice(0, 1);
}

/** Whether a sense is included in a count of sounds such as "u_e, both sounds". Weak and foreign senses are not counted. */
const counted = (id: PatternId) =>
  !rare.has(id) && !/-weak$|^x-gz$/.test(id) && patterns.get(id)!.family !== 'schwa';

/** Returns all sounds of letters, or as many as the text says. Returns null if there are fewer. */
function everySound({ spelling, every }: Spelled, left: readonly PatternId[]): readonly PatternId[] | null {
  // "three sounds of y" means its sounds as a vowel.
  if (spelling.letters === 'y' && every < 4) return ['y-long-i', 'y-long-e', 'y-short-i'].slice(0, every);
  // Both sounds of the ending are meant: "-s, both sounds".
  if (spelling.usual.includes('suffix-s')) return ['suffix-s-s', 'suffix-s-z'];
  const open = [...new Set([...spelling.usual, ...left])];
  const families = new Set(spelling.usual.map((id) => patterns.get(id)!.family === 'suffix'));
  const all = open.filter((id) => counted(id) && families.has(patterns.get(id)!.family === 'suffix'));
  const sounds = all.length >= every || every === Number.POSITIVE_INFINITY ? all : open;
  if (every !== Number.POSITIVE_INFINITY && sounds.length < every) return all.length === 1 ? all : null;
  return every === Number.POSITIVE_INFINITY ? sounds : sounds.slice(0, every);
}

/**
 * Letters that mean something different in a list than alone. For example, the list "-er, -ir, -ur" stands for the
 * vowel of fern.
 */
const inLists: readonly {
  readonly letters: string;
  /** The meaning of the letters alone. It is left out where it does not matter. */
  readonly alone?: PatternId;
  readonly beside: RegExp;
  readonly means: readonly PatternId[];
}[] = [
  // The end of metal, not of coastal.
  { letters: 'al', alone: 'suffix-al', beside: /^(?:el|il|le)$/, means: ['final-al'] },
  // The vowel of cure, not the ending of failure.
  { letters: 'ure', beside: /^(?:ire|are|ore|ere|eer|air|oar)$/, means: ['ure'] },
  { letters: 'er', alone: 'suffix-er', beside: /^(?:ir|ur)$/, means: ['er'] },
  { letters: 'ent', beside: /^(?:ant|ance|ence)$/, means: ['suffix-ent'] },
  { letters: "'s", beside: /^(?:n't|'(?:ll|re|ve|d|m))$/, means: ['contraction-is'] },
];

/** Lets the nearest neighbour with the same sound decide. After oa, ow is the ow of snow. After ou, it is the ow of cow. */
export function leanOnNeighbours(settled: readonly SettledLetters[]): readonly Settled[] {
  return settled.map((one, i) => {
    const { confirmed } = one;
    const listed = isRimeAmong(settled, i) ? rimes.ing! : meansInList(settled, i);
    if (listed !== null) return { ids: listed, sure: true, left: listed, confirmed };
    if (one.letters === 'y' && one.ids[0] === 'y' && isAmongVowels(settled, i)) {
      const open = { ...one, sure: false };
      return leanOn(open, settled, i) ?? open;
    }
    // In "ei and ie (eight, piece)" piece tells nothing about ei.
    if (one.sure || one.contradicted) return one;
    return leanOn(one, settled, i) ?? one;
  });
}

function meansInList(settled: readonly SettledLetters[], i: number): readonly PatternId[] | null {
  const { letters, ids } = settled[i]!;
  const rule = inLists.find(
    (one) =>
      one.letters === letters &&
      (one.alone === undefined || one.alone === ids[0]) &&
      isBeside(settled, i, one.beside),
  );
  return rule?.means ?? null;
}

/** Returns the meaning that the nearest neighbour with the same sound leaves. Returns null if no neighbour decides. */
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

/** Whether ing is beside ang, ong or ung, which are not endings. */
function isRimeAmong(settled: readonly SettledLetters[], i: number): boolean {
  const near = [settled[i - 1], settled[i + 1], settled[i - 2], settled[i + 2]];
  return settled[i]!.letters === 'ing' && near.some((one) => /^[aou]n[gk]$/.test(one?.letters ?? ''));
}

function isBeside(settled: readonly SettledLetters[], i: number, letters: RegExp): boolean {
  return [-2, -1, 1, 2].some((step) => letters.test(settled[i + step]?.letters ?? ''));
}

/** Whether patterns have the same sound, or are blends at the same end of the word. */
function alike(id: PatternId, others: readonly PatternId[]): boolean {
  const { family, sounds } = patterns.get(id)!;
  return others.some((other) => {
    // "air, ear" usually lists two sounds, not one.
    if (other === 'air') return false;
    const beside = patterns.get(other)!;
    return (
      (family.endsWith('blend') && family === beside.family) ||
      beside.sounds.some((sound) => sounds.includes(sound))
    );
  });
}
