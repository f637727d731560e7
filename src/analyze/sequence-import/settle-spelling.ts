import { coarseRows as catalogue } from '../catalogue/catalogue.ts';
import type { PatternId } from '../types.ts';
import type { Spelled } from './clause-chunk.ts';
import { patternsInExample } from './example-shapes.ts';
import { fits, isWithin } from './fits.ts';
import type { Phrase } from './phrases.ts';
import { composites, rimes } from './spellings.ts';

/** What letters teach; `sure` when the text says so or they have no other usual meaning. */
export interface Settled {
  readonly ids: readonly PatternId[];
  readonly sure: boolean;
  /** What they might be instead; a neighbour may decide between them. */
  readonly left: readonly PatternId[];
}

/** The same, with the letters themselves. */
interface SettledLetters extends Settled {
  readonly letters: string;
}

/** Words sequences often give beside letters of several sounds, besides those of the catalogue. */
const keyWords: Readonly<Record<PatternId, string>> = {
  'long-a': 'apron acorn baby paper table lady',
  'long-u-yoo': 'music unicorn human unit pupil uniform',
  'long-o': 'open over hotel robot no so',
  'long-i': 'tiger spider silent',
  'long-e': 'even zebra be we he me she',
  'short-a': 'apple ant at am alligator alphabet',
  'short-e': 'elephant egg elbow end',
  'short-i': 'igloo insect itch in ill',
  'short-o': 'octopus ostrich olive',
  'short-u': 'umbrella up under uncle',
  'o-oo': 'do to who',
  'ea-long-e': 'eat sea tea team leaf read dream meat each bead beach pea clean',
  'ea-short-e': 'bread head ready meant instead dead heavy weather health feather',
  'ea-long-a': 'great steak break',
  'ow-long-o': 'snow blow show grow low slow yellow window row bow crow throw own',
  'ow-ow': 'cow now how brown down town owl clown crown flower',
  'oo-moon': 'food pool moon zoo soon boot spoon too room',
  'oo-book': 'book took foot wood good look cook hook wool stood hood soot',
  'ou-oo': 'soup group you',
  'ou-short-u': 'touch young double trouble country cousin',
  'ie-long-i': 'pie tie lie die cried tried',
  'ie-long-e': 'chief field thief piece shield believe',
  'ey-long-e': 'key money honey donkey valley monkey chimney',
  'ey-long-a': 'they grey prey obey hey',
  'ei-long-a': 'vein veil reindeer rein',
  'ei-long-e': 'ceiling receive either seize',
  'ear-eer': 'ear near hear dear year fear beard',
  'ear-air': 'bear pear wear tear',
  'ear-er': 'earth learn heard early pearl',
  'ere-air': 'there where',
  'ere-eer': 'here',
  th: 'thin think moth bath thumb thing three',
  'th-voiced': 'this that then them feather mother with',
  'u_e-oo': 'rule rude june flute tube',
  'u_e-yoo': 'cube use cute mule',
  'y-long-i': 'fly cry sky my by try dry',
  'y-long-e': 'happy funny baby pony candy very family puppy lady',
  'suffix-y': 'sunny rainy windy sandy rocky',
  y: 'yes yam yell yellow yo-yo',
  'y-short-i': 'gym myth egypt pyramid',
  'ch-k': 'school chorus chemist echo character anchor',
  'ch-sh': 'chef machine brochure parachute',
  ch: 'chip chin chop much chest',
  's-z': 'is his has nose rose',
  s: 'sun sat sit',
  'soft-c': 'city ice cell face race',
  'soft-g': 'gem giant cage age',
  'ou-ow': 'out cloud shout mouth house',
  'ough-aw': 'thought bought ought',
  'ough-long-o': 'though dough',
  'ough-oo': 'through',
  'suffix-er': 'helper teacher hunter faster',
  er: 'her fern term verb',
  'u-put': 'put bush pull push full',
  'o-short-u': 'mother other son month nothing monday brother',
  'wh-h': 'who whole whose',
  'gh-f': 'laugh rough enough cough',
  'a-after-w': 'was want watch wash swan',
  'start-st': 'stop step star stone stamp',
  'end-st': 'nest fast best lost must',
  'start-sk': 'skip skin sky',
  'end-sk': 'desk mask ask',
  'start-sp': 'spot spin spade',
  'end-sp': 'wasp crisp clasp',
  st: 'castle listen whistle',
  sc: 'scissors scene science',
};

const patterns = new Map(catalogue.map((row) => [row.id, row]));
const wordsOf = new Map(
  catalogue.map(({ id, keyWord, examples }) => [
    id,
    new Set([keyWord, ...examples, ...(keyWords[id] ?? '').split(' ')].map((word) => word.toLowerCase())),
  ]),
);

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

/** Examples and sounds beyond these say nothing more of what letters mean. */
const MOST_EXAMPLES = 24;

/** What stands in other cells of a row. */
export interface Beside {
  readonly examples: readonly string[];
  /** Headings that these letters may be a list of: "Long e", beside `ee, ea`. */
  readonly headings: readonly Phrase[];
}

/** Reads what stands beside letters: a heading, a sound, an example, in their own cell or another of the row. */
export function settleSpelling(
  spelled: Spelled,
  beside: Beside,
  others: readonly Spelled[] = [],
): SettledLetters {
  return { ...settle(spelled, beside, others), letters: spelled.spelling.letters };
}

function settle(spelled: Spelled, beside: Beside, others: readonly Spelled[]): Settled {
  const { spelling } = spelled;
  const sounds = spelled.sounds.slice(0, MOST_EXAMPLES);
  const headings = [
    ...spelled.headings,
    ...beside.headings.filter(({ within }) => spelling.candidates.some((id) => within?.has(id))),
  ];
  let left = spelling.candidates;
  const said = new Set(sounds.flatMap(({ within }) => [...within!]));
  const limits = [...headings.map(({ within }) => within!), ...(said.size > 0 ? [said] : [])];
  for (const limit of limits) {
    const fitting = left.filter((id) => limit.has(id));
    if (fitting.length > 0) left = fitting;
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
  // boxes is no example of -s beside -es, nor rain of a beside ai.
  const longer = others.filter((other) => isWithin(spelling.letters, other.spelling.letters));
  const shown = (spelled.examples.length > 0 ? spelled.examples : beside.examples)
    .slice(0, MOST_EXAMPLES)
    .filter((word) => !longer.some((other) => fits(word, other.spelling.letters)));
  const shownIds = new Set(
    shown.flatMap((word) => {
      const listed = left.filter((id) => wordsOf.get(id)!.has(word));
      return listed.length > 0 ? listed : patternsInExample(spelling.letters, word);
    }),
  );
  const byExample = left.filter((id) => shownIds.has(id));
  if (byExample.length > 0 && !(spelling.letters in composites)) {
    const usual = spelling.usual.filter((id) => byExample.includes(id));
    // "th (this)" still teaches both sounds of th; "ch (chip, school)" two of ch.
    const meant = spelling.sure && usual.length > 0 ? spelling.usual.filter((id) => left.includes(id)) : [];
    const ids = [...new Set([...meant, ...byExample])];
    return { ids, sure: true, left: ids };
  }
  const usual = spelling.usual.filter((id) => left.includes(id));
  if (sounds.length > 0 && left.length < spelling.candidates.length) {
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
  if (usual.length === spelling.usual.length && spelling.sure) return { ids: usual, sure: true, left: usual };
  if (left.length === 1) return { ids: left, sure: true, left };
  if (usual.length === 0)
    return { ids: named.length > 0 ? [...new Set(named)] : left.slice(0, 1), sure: narrowed, left };
  return { ids: usual, sure: narrowed && usual.length < spelling.usual.length, left };
}

/** Weak and foreign senses, which no count of sounds includes: "u_e, both sounds". */
const counted = (id: PatternId) =>
  !rare.has(id) && !/-weak$|^x-gz$/.test(id) && patterns.get(id)!.family !== 'schwa';

/** All sounds of letters, or the first of them; null where there are fewer than the text says. */
function everySound({ spelling, every }: Spelled, left: readonly PatternId[]): readonly PatternId[] | null {
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
    if (isRimeAmong(settled, i)) return { ids: rimes.ing!, sure: true, left: rimes.ing! };
    if (one.sure) return one;
    for (const step of [1, 2, 3]) {
      for (const near of [settled[i - step], settled[i + step]]) {
        const same = near?.sure === true ? one.left.filter((id) => !rare.has(id) && alike(id, near.ids)) : [];
        if (same.length === 1) return { ids: same, sure: true, left: same };
      }
    }
    return one;
  });
}

/** Whether ing stands beside ang, ong or ung, which are no endings. */
function isRimeAmong(settled: readonly SettledLetters[], i: number): boolean {
  const near = [settled[i - 1], settled[i + 1], settled[i - 2], settled[i + 2]];
  return settled[i]!.letters === 'ing' && near.some((one) => /^[aou]n[gk]$/.test(one?.letters ?? ''));
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
