import { type Feature, TOPIC } from './feature-weights.ts';
import { topicFeatures } from './topic-words.ts';
import { classOf } from './word-classes.ts';
import { partsOf } from './word-parts.ts';

const PAST = new Set('was were had did said went came took made saw got began'.split(' '));
const ADVERBS = new Set(['ly', 'often']);
const BETWEEN = new Set(['subject', 'object', 'owner', 'name', 'other']);
const ASKING = new Set(['does', 'modal', 'has']);

/** Parts of speech of words that are, or may be, the verb of a clause. `to` also ends the search. */
const VERBS = new Set('d de ed z zN Nz v vn nv va av is has modal does vd dv ve ev anv av to'.split(' '));
const CERTAIN_VERBS = new Set('d z is has modal does'.split(' '));
const CLAUSE_START = new Set(['when', 'but']);
const DETERMINERS = new Set(['article', 'owner', 'pointer']);
/** Parts of speech of words that come between a determiner and its noun: the `small red fishing` boat. */
const INSIDE_PHRASE = new Set(
  'a n an na r x name u number e g nv vn va av N ra ar en ne ae ea ng gn'.split(' '),
);
const LIST_HEADS = new Set('to modal does subject z d'.split(' '));
/** Range of the search for verbs, determiners and the head of a list, in pieces. */
const FAR = { verb: 13, determiner: 5, head: 10 };

/**
 * The pieces around a place, in lower case and by their parts of speech. They are numbered from -1 backwards and from 1
 * forwards.
 */
interface Around {
  readonly word: (n: number) => string;
  readonly part: (n: number) => string;
  readonly before: number;
  readonly after: number;
}

/**
 * Returns the features of a homograph's place:
 * - the words and parts of speech around the homograph, alone (`-1=the`, `a1=article`) and together (`ab=article is`:
 * one before, one after)
 * - the word that governs the homograph (`s=modal`)
 * - whether the clause has a verb before or after the homograph (`LR=0 1`), a determiner before it (`np=article2`) or a
 * list around it (`co=and v`)
 * - the capital of the homograph
 * - words of its topic (`topic+2`)
 * - all words of the context (`~word`) with their tense
 */
export function contextFeatures(
  word: string,
  before: readonly string[],
  after: readonly string[],
  near: ReadonlySet<string> = piecesNear(before, after),
): Feature[] {
  const around = lookAround(before, after);
  const features = [...neighbours(around), ...clause(around), ...list(around)];
  if (/^[A-Z]/.test(word)) features.push([before.length > 0 ? 'capital' : 'capital first', '']);
  features.push(...topicFeatures(word, near));
  let past = false;
  for (const one of near) {
    if (one.length > 2) features.push([TOPIC, one]);
    past ||= PAST.has(one) || (one.endsWith('ed') && classOf(one) === 'ed');
  }
  features.push(past ? [TOPIC, ':past'] : [TOPIC, ':no', 'past']);
  return features;
}

/** Returns all pieces around a place, in lower case. */
export function piecesNear(before: readonly string[], after: readonly string[]): ReadonlySet<string> {
  const near = new Set<string>();
  for (const piece of before) near.add(piece.toLowerCase());
  for (const piece of after) near.add(piece.toLowerCase());
  return near;
}

function lookAround(before: readonly string[], after: readonly string[]): Around {
  const at = (n: number) => (n < 0 ? before.at(n) : after[n - 1]);
  const parts = new Map<number, string>();
  return {
    word: (n) => at(n)?.toLowerCase() ?? '',
    part: (n) => {
      const part = parts.get(n) ?? partsOf(at(n), n < 0 && before.length === -n);
      parts.set(n, part);
      return part;
    },
    before: before.length,
    after: after.length,
  };
}

function neighbours({ word, part, before }: Around): Feature[] {
  const [w1, w2, v1, v2] = [word(-1), word(-2), word(1), word(2)];
  const [a1, a2, a3, b1, b2, b3] = [part(-1), part(-2), part(-3), part(1), part(2), part(3)];
  let adverbs = 1;
  while (adverbs <= before && part(-adverbs) === 'r') adverbs++;
  const slot = part(-adverbs);
  const features: Feature[] = [
    ['-1=', w1],
    ['-2=', w2],
    ['+1=', v1],
    ['+2=', v2],
    ['-1-', w1.slice(-2)],
    ['+1-', v1.slice(-2)],
    ['a1=', a1],
    ['a2=', a2],
    ['a3=', a3],
    ['b1=', b1],
    ['b2=', b2],
    ['b3=', b3],
    ['a21=', a2, a1],
    ['a321=', a3, a2, a1],
    ['ab=', a1, b1],
    ['b12=', b1, b2],
    ['aab=', a2, a1, b1],
    ['abb=', a1, b1, b2],
    ['wb=', w1, b1],
    ['av=', a1, v1],
    ['ww=', w2, w1],
    ['aw=', a2, w1],
    ['wa=', w2, a1],
    ['vv=', v1, v2],
    ['wv=', w1, v1],
    ['s=', slot],
    ['sb=', slot, b1],
    ['sbb=', slot, b1, b2],
    ['sw=', word(-adverbs)],
  ];
  if (adverbs > 1) features.push(['sr=', part(-adverbs - 1), slot]);
  return features;
}

/** Finds the other verbs in the clause and the start of the noun phrase before the place. */
function clause({ word, part, before, after }: Around): Feature[] {
  const [a1, a2, b1] = [part(-1), part(-2), part(1)];
  let left = 'no';
  for (let i = 1; i <= Math.min(before, FAR.verb); i++) {
    const one = part(-i);
    if ((one === 'mark' && word(-i) !== ',') || CLAUSE_START.has(one)) break;
    if (!VERBS.has(one)) continue;
    left = one;
    break;
  }
  let right = 'no';
  for (let i = 1; i <= Math.min(after, FAR.verb); i++) {
    const one = part(i);
    if (one === 'mark' || one === 'when' || one === 'edge') break;
    if (!VERBS.has(one)) continue;
    right = one;
    break;
  }
  let phrase = 'no';
  for (let i = 1; i <= Math.min(before, FAR.determiner); i++) {
    const one = part(-i);
    if (INSIDE_PHRASE.has(one)) continue;
    phrase = DETERMINERS.has(one) ? one + i : one;
    break;
  }
  const [l, r] = [kindOfVerb(left), kindOfVerb(right)];
  return [
    ['L=', left],
    ['R=', right],
    ['LR=', l, r],
    ['La=', l, a1],
    ['Rb=', r, b1],
    ['LRa=', l, r, a1],
    ['LRs=', l, r, a2, a1],
    ['LRab=', l, r, a1, b1],
    ['np=', phrase],
    ['npb=', phrase, b1],
    ['npr=', phrase, r],
    ['npab=', phrase, a1, b1],
  ];
}

/** Returns 0 for no verb, 1 for the certain verb of a clause, 2 for `to` and 3 for a possible verb. */
function kindOfVerb(part: string): string {
  if (part === 'no') return '0';
  if (part === 'to') return '2';
  return CERTAIN_VERBS.has(part) ? '1' : '3';
}

/** Finds the word joined to the place by `and` or a comma, and the word that governs the list: to `mend` and —. */
function list({ word, part, before }: Around): Feature[] {
  const [a1, a2, a3, b1, b2, b3] = [part(-1), part(-2), part(-3), part(1), part(2), part(3)];
  const [w1, v1] = [word(-1), word(1)];
  const features: Feature[] = [];
  if (a1 === 'and' || w1 === ',') {
    features.push(['co=', w1, a2], ['co=', w1, a3, a2], ['cob=', w1, a2, b1], ['cob=', w1, a3, a2, b1]);
    for (let i = 2; i <= Math.min(before, FAR.head); i++) {
      const head = part(-i);
      if (!LIST_HEADS.has(head)) continue;
      features.push(['head=', head], ['heada=', head, a2], ['headb=', head, b1], ['headab=', head, a2, b1]);
      break;
    }
  }
  if (b1 === 'and' || v1 === ',')
    features.push(['ro=', v1, b2], ['ro=', v1, b2, b3], ['aro=', a1, b2], ['aro=', a2, a1, b2]);
  return features;
}

/**
 * Returns the class of the word that governs a place. Adverbs are skipped, and so is a subject that comes after its
 * verb: `modal` in `can often —`, `modal?` in `can the crew —`. In `the crew can see the —` the governor is not `can`.
 */
export function governor(before: readonly string[]): string {
  const at = (i: number) => classOf(before[i], i === 0);
  let i = before.length - 1;
  while (i >= 0 && ADVERBS.has(at(i))) i--;
  const here = at(i);
  if (!BETWEEN.has(here)) return here;
  if (ASKING.has(at(i - 1))) return `${at(i - 1)}?`;
  return here === 'other' && ASKING.has(at(i - 2)) ? `${at(i - 2)}?` : here;
}
