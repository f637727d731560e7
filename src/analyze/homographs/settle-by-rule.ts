import { governor } from './context-features.ts';
import { partsOf } from './word-parts.ts';

/** Where a word has one reading for certain; all that is given must hold. */
interface Rule {
  readonly reading: number;
  /** Classes of the governing word. */
  readonly slot?: string;
  /** Words directly before or behind. */
  readonly before?: string;
  readonly behind?: string;
  /** The second word behind. */
  readonly second?: string;
  /** True where the second word behind may be a verb. */
  readonly verbSecond?: boolean;
  /** Words anywhere before. */
  readonly earlier?: string;
  /** Words anywhere near; of `also` one must be there too. */
  readonly near?: string;
  readonly also?: string;
  readonly capital?: boolean;
}

const BOW: readonly Rule[] = [
  { reading: 1, near: 'took take takes taken' },
  { reading: 1, slot: 'to modal modal? does does?' },
  {
    reading: 0,
    near: 'hair arrow arrows ribbon ribbons violin fiddle cello string strings lace laces archer dress',
  },
  { reading: 1, near: 'ship boat ferry deck waves wave stern sail sails anchor hull captain crew' },
  { reading: 0, near: 'tie ties tying knot' },
];
const VERBAL = 'to modal modal? does does?';

/**
 * The rules of each word, the first that holds counts. For places of children's texts that the learnt weights know
 * too little of, because an encyclopedia seldom has them (pig, tears, `have you read`), and for words they do not
 * have. Readings are numbered as in homographs.tsv.
 */
const ruled: Readonly<Record<string, readonly Rule[]>> = {
  bass: [
    { reading: 0, near: 'guitar drum drums band play plays played sing sings sang song music' },
    {
      reading: 1,
      near: 'fish fishing caught catch river lake trout grilled fried net hook pier rod bait striped',
    },
  ],
  bow: BOW,
  bows: [
    // He bows low; not her bows are red.
    { reading: 1, before: 'he she it who', behind: 'low deeply down to his her and before politely .' },
    { reading: 1, behind: 'low deeply down politely' },
    ...BOW,
  ],
  // The club: at Celtic, joined Celtic; not a Celtic cross.
  celtic: [
    { reading: 1, capital: false },
    { reading: 0, before: 'at joined left beat beating' },
  ],
  // The close of the day; not a close race.
  close: [
    { reading: 0, before: 'the a its', behind: 'of . , ;' },
    // Stay close; not stay to close the gate.
    { reading: 1, before: 'stay stays stayed keep keeps kept come came so too very' },
  ],
  content: [
    {
      reading: 1,
      before:
        'was were is are am be been feel feels felt lay sat stood look looks looked perfectly seem seems seemed quite',
      behind: 'to with by in . , and',
    },
    // Warm and content; not form and content.
    { reading: 1, before: 'and', near: 'calm glad happy safe sleepy warm', behind: '. , ; !' },
  ],
  dove: [{ reading: 1, behind: 'into under off overboard beneath deep down headfirst' }],
  // An invalid father; not an invalid ticket.
  invalid: [
    {
      reading: 1,
      behind: 'wife mother husband father sister brother son daughter aunt uncle soldier soldiers',
    },
  ],
  lead: [
    { reading: 0, slot: VERBAL },
    {
      reading: 1,
      near: 'pipe pipes paint metal heavy zinc copper tin iron weight weights pencil poison melt melted',
    },
  ],
  // A learned man; not a learned habit.
  learned: [
    {
      reading: 1,
      before: 'the a an most very',
      behind:
        'man men woman women lady gentleman doctor judge monk professor scholar scholars friend friends',
    },
  ],
  // Live music, live happily; not live in music.
  live: [
    { reading: 0, behind: 'happily' },
    {
      reading: 1,
      behind: 'music band show shows concert concerts album broadcast animals crab crabs match matches',
    },
  ],
  // Their own lives; not who lives here.
  lives: [{ reading: 1, before: 'whole own daily everyday private many nine our your their' }],
  minute: [
    // In a minute; not a minute speck.
    {
      reading: 0,
      before: 'a one each every this last another any per',
      behind: '. , ! ? ; to and or before after later ago',
    },
    { reading: 1, before: 'were are such most so very', behind: 'grains' },
    { reading: 1, behind: 'detail details amount amounts particle particles grain grains speck specks' },
  ],
  object: [{ reading: 1, slot: 's subject doer', behind: 'to' }],
  polish: [
    { reading: 0, capital: false },
    { reading: 0, slot: VERBAL },
  ],
  read: [
    { reading: 0, slot: VERBAL },
    // I heard Otto read; not Otto read.
    { reading: 0, slot: 'name', near: 'hear heard saw watched let made make help helped suggested' },
    // A good read; not the notes were good, read out by her.
    {
      reading: 0,
      before: 'a an good great fun easy quick fast long fine nice best',
      behind: '. , ! ? that and but for',
    },
    { reading: 1, slot: 'has has? is' },
    { reading: 1, near: 'yesterday ago' },
    { reading: 1, near: 'last', also: 'night week weekend month year summer winter' },
    { reading: 0, slot: 'subject s', near: 'every often always usually sometimes' },
    { reading: 1, before: 'he she it' },
    { reading: 1, slot: 'name' },
  ],
  // The town: a train from Reading; not better marks in Reading.
  reading: [
    { reading: 0, capital: false },
    { reading: 1, before: 'at from near' },
  ],
  row: [{ reading: 1, before: 'a big terrible blazing', behind: 'about over' }],
  sewer: [
    {
      reading: 1,
      near: 'needle thread cloth clothes coat dress quilt shirt skirt skirts sew sews sewing stitch',
    },
    { reading: 0 },
  ],
  sow: [
    { reading: 0, slot: VERBAL },
    { reading: 1, near: 'pig pigs piglet piglets boar litter straw sty farrow' },
  ],
  tear: [
    // To tear gas; not to tear paper.
    { reading: 1, behind: 'gas gland glands duct ducts drop drops' },
    // They tear out a page; not a tear out of her eye.
    { reading: 0, slot: 'subject name s', behind: 'out off up down apart at into' },
    { reading: 0, slot: VERBAL },
    { reading: 1, near: 'eye eyes cheek cheeks cry cried weep wept sob sobbed rolled wipe wiped wiping' },
  ],
  tears: [
    { reading: 0, before: 'he she it who', behind: 'a the up down off it them his her its at into' },
    { reading: 1, before: 'in of with to her his my their your and' },
    // The puppy tears up the rug; not tears ran down.
    { reading: 0, behind: 'a an the up it them apart off open' },
    {
      reading: 1,
      near: 'eye eyes blink blinked cheek cheeks cry cried crying weep wept burst face sob sobbed wiped joy laughter shed',
    },
  ],
  // She is supposed to help; not she supposed it was late.
  supposed: [{ reading: 1, behind: 'to' }, { reading: 0 }],
  // Put to use; not put to use it.
  use: [{ reading: 1, before: 'to', near: 'put', behind: '. , ; and' }],
  used: [
    // Got used to the cold; not got used.
    { reading: 1, before: 'get gets getting got become becomes became grow grew grown', behind: 'to' },
    // It used to be red; not it was used to tie a knot.
    { reading: 1, behind: 'to', second: 'be have know like live love think' },
    // The net is used to catch crabs; not I am used to crabs.
    { reading: 0, slot: 'is', behind: 'to', verbSecond: true },
    // This is a tool used to cut rope; not the shop used to sell rope.
    { reading: 0, slot: 'other s doer noun', earlier: 'is are was were', behind: 'to', verbSecond: true },
    { reading: 1, behind: 'to' },
    { reading: 0 },
  ],
  wind: [{ reading: 1, slot: VERBAL, near: 'clock rope wool watch bobbin string thread up round around' }],
  wound: [
    { reading: 1, before: 'he she they it', behind: 'a the up down round around through along his her its' },
    { reading: 1, slot: 'other name', behind: 'round around through along up down' },
  ],
};

const rules: ReadonlyMap<string, readonly Rule[]> = new Map(Object.entries(ruled));

/** Words that have rules. */
export const RULED: readonly string[] = [...rules.keys()];

/** The reading of a word by the first of its rules that holds in its place; null where none does. */
export function settleByRule(
  word: string,
  before: readonly string[],
  after: readonly string[],
): number | null {
  const own = rules.get(word.toLowerCase());
  if (!own) return null;
  const near = new Set([...before, ...after].map((piece) => piece.toLowerCase()));
  const slot = governor(before);
  const capital = /^\p{Lu}/u.test(word);
  const rule = own.find(
    (one) =>
      (one.capital === undefined || one.capital === capital) &&
      (one.slot === undefined || holds(one.slot, slot)) &&
      (one.before === undefined || holds(one.before, before.at(-1)?.toLowerCase())) &&
      (one.behind === undefined || holds(one.behind, after[0]?.toLowerCase())) &&
      (one.second === undefined || holds(one.second, after[1]?.toLowerCase())) &&
      (one.verbSecond === undefined || /^[na]*v/.test(partsOf(after[1], false)) === one.verbSecond) &&
      (one.earlier === undefined || before.some((piece) => holds(one.earlier!, piece.toLowerCase()))) &&
      [one.near, one.also].every(
        (cues) => cues === undefined || cues.split(' ').some((cue) => near.has(cue)),
      ),
  );
  return rule?.reading ?? null;
}

function holds(list: string, piece: string | undefined): boolean {
  return piece !== undefined && list.split(' ').includes(piece);
}
