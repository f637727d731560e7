import { catalogue } from '../catalogue/catalogue.ts';
import type { PatternId } from '../types.ts';
import type { Spelled } from './clause-chunk.ts';

/** What letters teach; `sure` when the text says so or they have no other usual meaning. */
export interface Settled {
  readonly ids: readonly PatternId[];
  readonly sure: boolean;
  /** What they might be instead; a neighbour may decide between them. */
  readonly left: readonly PatternId[];
}

/** Words sequences often give beside letters of several sounds, besides those of the catalogue. */
const keyWords: Readonly<Record<PatternId, string>> = {
  'ea-long-e': 'eat sea tea team leaf read dream meat each bead beach pea clean',
  'ea-short-e': 'bread head ready meant instead dead heavy weather health feather',
  'ea-long-a': 'great steak break',
  'ow-long-o': 'snow blow show grow low slow yellow window row bow crow throw own',
  'ow-ow': 'cow now how brown down town owl clown crown flower',
  'oo-moon': 'food pool moon zoo soon boot spoon too room',
  'oo-book': 'book took foot wood good look cook hook wool',
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

/** Reads what stands beside letters: a heading, a sound, an example. `hints` are examples given elsewhere in the row. */
export function settleSpelling(spelled: Spelled, hints: readonly string[]): Settled {
  const { spelling, headings, sounds } = spelled;
  let left = spelling.candidates;
  const said = new Set(sounds.flatMap(({ within }) => [...within!]));
  const limits = [...headings.map(({ within }) => within!), ...(said.size > 0 ? [said] : [])];
  for (const limit of limits) {
    const fitting = left.filter((id) => limit.has(id));
    if (fitting.length > 0) left = fitting;
  }
  const named = [...headings, ...sounds].flatMap(({ ids }) => ids.filter((id) => left.includes(id)));
  const shown = spelled.examples.length > 0 ? spelled.examples : hints;
  const byExample = left.filter((id) => shown.some((word) => wordsOf.get(id)!.has(word)));
  if (byExample.length > 0 && byExample.length < left.length) {
    const usual = spelling.usual.filter((id) => byExample.includes(id));
    const ids =
      spelling.sure && usual.length > 0 ? spelling.usual.filter((id) => left.includes(id)) : byExample;
    return { ids, sure: true, left: ids };
  }
  const usual = spelling.usual.filter((id) => left.includes(id));
  if (sounds.length > 0 && left.length < spelling.candidates.length) {
    const ids = usual.length > 0 ? usual : left.slice(0, 1);
    return { ids, sure: true, left: ids };
  }
  const narrowed = left.length < spelling.candidates.length;
  if (usual.length === spelling.usual.length && spelling.sure) return { ids: usual, sure: true, left: usual };
  if (left.length === 1) return { ids: left, sure: true, left };
  if (usual.length === 0)
    return { ids: named.length > 0 ? [...new Set(named)] : left.slice(0, 1), sure: narrowed, left };
  return { ids: usual, sure: narrowed && usual.length < spelling.usual.length, left };
}

/** Lets the nearest neighbour with the same sound decide: ow after oa is that of snow, after ou that of cow. */
export function leanOnNeighbours(settled: readonly Settled[]): readonly Settled[] {
  return settled.map((one, i) => {
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
