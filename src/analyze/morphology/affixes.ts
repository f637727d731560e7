/** What the base's last sound must be for a suffix to be said this way. */
export type Allomorph = 'any' | 'voiceless' | 'voiced' | 'sibilant' | 't-d';

export interface Sounding {
  /** ARPAbet without stress, `AX` for schwa. */
  readonly sounds: readonly string[];
  readonly after: Allomorph;
}

export interface Suffix {
  readonly text: string;
  /** All ways it is said; the usual one first. */
  readonly soundings: readonly Sounding[];
  /** Parts of speech it is added to: n(oun) v(erb) a(djective) adverb = r. */
  readonly joins: string;
  /** Parts of speech of the result. */
  readonly makes: string;
  /** Grammatical ending (-s, -ed …): every verb, noun or adjective takes it. */
  readonly inflection: boolean;
  /** The base may change its vowels or last consonant (electric, electricity; act, action). */
  readonly reshapes: boolean;
  /** Doubles a final consonant (hopping, sunny); Latin endings do not (robotic). */
  readonly doubles: boolean;
}

export interface Prefix {
  readonly text: string;
  readonly soundings: readonly (readonly string[])[];
  /** Parts of speech it is added to. */
  readonly joins: string;
  /** A word of a definition that shows the prefix means what it says (`re`: again). */
  readonly means: RegExp;
}

type Row = readonly [text: string, joins: string, makes: string, flags: string, sounds: string];

/**
 * flags: i inflection, r reshapes, d doubles. Sounds: variants parted by a comma, `voiceless:` and the
 * like before a variant that needs that ending of the base. Sounds of -s and -ed: any phonology primer;
 * the others as CMUdict says them.
 */
const SUFFIX_ROWS: readonly Row[] = [
  ['s', 'nv', '', 'i', 'voiceless:S, voiced:Z, sibilant:IH Z'],
  ['es', 'nv', '', 'i', 'sibilant:IH Z, voiced:Z'],
  ['ed', 'vn', 'a', 'id', 'voiceless:T, voiced:D, t-d:IH D'],
  ['ing', 'v', 'na', 'id', 'IH NG'],
  ['er', 'vanr', 'na', 'id', 'ER'],
  ['est', 'ar', 'a', 'id', 'AX S T'],
  ['y', 'nva', 'an', 'd', 'IY'],
  ['ly', 'an', 'ra', '', 'L IY'],
  ['ally', 'a', 'r', '', 'L IY, AX L IY'],
  ['ness', 'an', 'n', '', 'N AX S'],
  ['ful', 'nv', 'an', '', 'F AX L, F UH L'],
  ['less', 'nv', 'a', '', 'L AX S, L EH S'],
  ['ment', 'va', 'n', '', 'M AX N T'],
  ['able', 'vn', 'a', 'rd', 'AX B AX L'],
  ['ible', 'vn', 'a', 'r', 'AX B AX L'],
  ['ish', 'na', 'a', 'd', 'IH SH'],
  ['en', 'anv', 'va', 'd', 'AX N'],
  ['ous', 'nv', 'a', 'r', 'AX S, IY AX S'],
  ['ion', 'va', 'n', 'r', 'AX N, Y AX N'],
  ['ation', 'vn', 'n', 'r', 'EY SH AX N'],
  ['ative', 'vn', 'a', 'r', 'AX T IH V, EY T IH V'],
  ['ive', 'vna', 'an', 'r', 'IH V'],
  ['al', 'nva', 'an', 'r', 'AX L'],
  ['ial', 'n', 'a', 'r', 'IY AX L, AX L'],
  ['ity', 'a', 'n', 'r', 'AX T IY'],
  ['ty', 'an', 'n', '', 'T IY'],
  ['teen', 'na', 'na', '', 'T IY N'],
  ['th', 'nav', 'na', '', 'TH'],
  ['or', 'v', 'n', 'r', 'ER, AO R'],
  ['ist', 'nav', 'na', 'r', 'IH S T'],
  ['ism', 'na', 'n', 'r', 'IH Z AX M'],
  ['ize', 'na', 'v', 'r', 'AY Z'],
  ['ise', 'na', 'v', 'r', 'AY Z'],
  ['ify', 'na', 'v', 'r', 'AX F AY'],
  ['ic', 'n', 'an', 'r', 'IH K'],
  ['ical', 'n', 'a', 'r', 'IH K AX L'],
  ['ance', 'va', 'n', 'r', 'AX N S'],
  ['ence', 'va', 'n', 'r', 'AX N S'],
  ['ancy', 'va', 'n', 'r', 'AX N S IY'],
  ['ency', 'va', 'n', 'r', 'AX N S IY'],
  ['ant', 'v', 'na', 'r', 'AX N T'],
  ['ent', 'v', 'na', 'r', 'AX N T'],
  ['age', 'vn', 'n', 'd', 'IH JH'],
  ['ary', 'nva', 'an', 'r', 'EH R IY, ER IY'],
  ['ery', 'vna', 'n', 'd', 'ER IY, R IY'],
  ['ory', 'v', 'an', 'r', 'AO R IY, ER IY'],
  ['ry', 'n', 'n', '', 'R IY'],
  ['hood', 'na', 'n', '', 'HH UH D'],
  ['ship', 'na', 'n', '', 'SH IH P'],
  ['ward', 'nra', 'ra', '', 'W ER D'],
  ['wards', 'nra', 'ra', '', 'W ER D Z'],
  ['wise', 'na', 'ra', '', 'W AY Z'],
  ['some', 'nva', 'an', '', 'S AX M'],
  ['like', 'n', 'a', '', 'L AY K'],
  ['dom', 'na', 'n', '', 'D AX M'],
  ['ess', 'n', 'n', '', 'AX S, EH S'],
  ['ee', 'v', 'n', '', 'IY'],
  ['eer', 'n', 'nv', '', 'IH R'],
  ['ure', 'v', 'n', 'r', 'ER, Y ER'],
  ['ate', 'na', 'va', 'r', 'EY T, AX T'],
  ['an', 'n', 'na', 'r', 'AX N'],
  ['ian', 'na', 'na', 'r', 'IY AX N, AX N'],
  ['let', 'n', 'n', '', 'L AX T'],
  ['ling', 'na', 'n', '', 'L IH NG'],
  ['ster', 'na', 'n', '', 'S T ER'],
];

function readSounding(text: string): Sounding {
  const parts = text.trim().split(':');
  return { sounds: parts.at(-1)!.split(' '), after: parts.length > 1 ? (parts[0] as Allomorph) : 'any' };
}

/** Every suffix the analysis takes off, from -s to -ster. */
export const SUFFIXES: readonly Suffix[] = SUFFIX_ROWS.map(([text, joins, makes, flags, sounds]) => ({
  text,
  joins,
  makes,
  inflection: flags.includes('i'),
  reshapes: flags.includes('r'),
  doubles: flags.includes('d'),
  soundings: sounds.split(',').map(readSounding),
}));

const SUFFIX_BY_TEXT = new Map(SUFFIXES.map((suffix) => [suffix.text, suffix]));

/** The suffix spelt this way, or undefined: `findSuffix('ness')`, but not `findSuffix('nes')`. */
export function findSuffix(text: string): Suffix | undefined {
  return SUFFIX_BY_TEXT.get(text);
}

function prefix(text: string, joins: string, sounds: string, means: RegExp): Prefix {
  return { text, joins, means, soundings: sounds.split(',').map((one) => one.trim().split(' ')) };
}

const NOT = /\b(not|without|no|un\w+|lack\w*|opposite|oppos\w+|failing)\b/;

/** Every prefix the analysis takes off. `in` is the one that means not; inside is in + side, a compound. */
export const PREFIXES: readonly Prefix[] = [
  prefix('un', 'avnr', 'AH N', NOT),
  prefix(
    're',
    'vn',
    'R IY',
    /\b(again|anew|new|newly|once more|back|repeat\w*|re\w+|different|differently)\b/,
  ),
  prefix('dis', 'vanr', 'D IH S', NOT),
  prefix(
    'mis',
    'vn',
    'M IH S',
    /\b(wrong\w*|incorrect\w*|bad\w*|mis\w+|poor\w*|false\w*|unfavou?rabl\w+|improper\w*|ill)\b/,
  ),
  prefix(
    'pre',
    'vna',
    'P R IY',
    /\b(before\w*|prior|advance|preliminary|early|earlier|preced\w+|prevent\w*)\b/,
  ),
  prefix('in', 'anr', 'IH N', NOT),
  prefix('im', 'anr', 'IH M', NOT),
  prefix('il', 'anr', 'IH L', NOT),
  prefix('ir', 'anr', 'IH R', NOT),
  prefix('non', 'na', 'N AA N', NOT),
  prefix('over', 'va', 'OW V ER', /\b(too|excess\w*|exceed\w*|over|beyond|above|over\w+|extreme\w*|much)\b/),
  prefix(
    'under',
    'va',
    'AH N D ER',
    /\b(too|under|below|beneath|less|insufficient\w*|inadequate\w*|under\w+)\b/,
  ),
  prefix('out', 'v', 'AW T', /\b(out|more|better|surpass|longer|exceed|beyond)\b/),
  prefix('up', 'v', 'AH P', /\b(up|upward|upright|higher|raise|improve)\b/),
  prefix(
    'sub',
    'nav',
    'S AH B',
    /\b(under\w*|below|beneath|lower|part|divi\w+|sub\w+|secondary|less|less than|smaller|minor)\b/,
  ),
  prefix(
    'super',
    'nav',
    'S UW P ER',
    /\b(exce\w+|extraordinary|above|beyond|large\w*|great\w*|very|extreme\w*|powers?|super\w+|highest|over)\b/,
  ),
  prefix(
    'inter',
    'vna',
    'IH N T ER',
    /\b(between|among|each other|mutual\w*|one another|together|recipro\w+|several|two or more|another|all or)\b/,
  ),
  prefix(
    'anti',
    'na',
    'AE N T IY, AE N T AY, AE N T AX',
    /\b(against|oppos\w+|hostile|contrary|prevent\w*|counteract\w*|destroy\w*|inhibit\w*|not|neutralize\w*)\b/,
  ),
  prefix('auto', 'na', 'AO T OW, AO T AX', /\b(self|own|automatic\w*|itself|same|motor)\b/),
  prefix(
    'en',
    'nav',
    'EH N, IH N',
    /\b(make|cause|give|put|provide|render|place|bring|make\w+|in|surround)\b/,
  ),
  prefix('em', 'nav', 'EH M, IH M', /\b(make|cause|give|put|provide|render|represent)\b/),
  prefix(
    'de',
    'nva',
    'D IY, D IH',
    /\b(remove|free|rid|from|off|reverse|reduce|lower|take away|undo|less|deprive|make less|lose)\b/,
  ),
  prefix(
    'fore',
    'vn',
    'F AO R',
    /\b(before|front|beforehand|advance|early|ahead|anticipate|first|future|previous\w*|predict\w*)\b/,
  ),
  prefix('mid', 'na', 'M IH D', /\b(middle|mid\w*|half|between|centre|center|12)\b/),
  prefix(
    'semi',
    'na',
    'S EH M IY, S EH M AY',
    /\b(half|part\w*|not fully|some\w*|semi\w*|one of the two|before the final|not completely)\b/,
  ),
  prefix(
    'tele',
    'nv',
    'T EH L AX',
    /\b(distan\w+|remote\w*|transmi\w+|broadcast\w*|television|telephone\w*|far)\b/,
  ),
  prefix(
    'trans',
    'van',
    'T R AE N S, T R AE N Z',
    /\b(across|over|from one|another|change|beyond|exchange|move|through)\b/,
  ),
  prefix(
    'multi',
    'na',
    'M AH L T IY, M AH L T AY',
    /\b(many|several|more than one|multiple|two or more|various|million)\b/,
  ),
  prefix('co', 'nva', 'K OW', /\b(together|with|joint\w*|fellow|same|share\w*|mutual\w*|another)\b/),
  prefix('bi', 'na', 'B AY', /\b(two|twice|both|second)\b/),
  prefix('tri', 'na', 'T R AY', /\b(three\w*|third|triple)\b/),
];
