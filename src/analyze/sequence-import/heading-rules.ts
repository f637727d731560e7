import type { PatternId } from '../types.ts';
import type { Chunk, Spelled } from './clause-chunk.ts';
import type { ClauseState } from './clause-state.ts';
import { overlap, type Phrase } from './phrases.ts';
import type { Lexeme } from './split-lexemes.ts';

/** A heading or sound that was found in a clause. */
export interface HeadingAt {
  readonly phrase: Phrase;
  readonly lexeme: Lexeme;
  /** The number of words in the heading. */
  readonly words: number;
  /** Whether the heading is a sound between slashes. */
  readonly sound: boolean;
  /** Whether the heading is one more sound of the last letters. */
  readonly again: boolean;
  /** The chunk that the heading may describe. It is null if something separates the two. */
  readonly beside: Chunk | null;
}

export interface HeadingRule {
  readonly name: string;
  /** A clause to which the rule applies. `counterExample` is a similar clause that the rule must leave alone. */
  readonly example: string;
  readonly counterExample: string;
  /** Reads a heading by the rule. Returns false if the rule does not apply. */
  readonly reads: (reader: ClauseState, heading: HeadingAt) => boolean;
}

/**
 * Rules for the relation of a heading to the text before it. The first rule that applies is used. If no rule applies,
 * the heading begins a new chunk.
 */
export const headingRules: readonly HeadingRule[] = [
  {
    name: 'a sound that nobody knows',
    example: '/q/: ai, ay',
    counterExample: '/ā/: ai, ay',
    reads: (reader, { phrase, lexeme }) => {
      if (phrase.within?.size !== 0 || (reader.chunk !== null && !reader.broken)) return false;
      // The unknown sound is the name of the letters after it, which become guesses. If the sound is alone, the teacher
      // is asked.
      reader.unsure();
      reader.wait(lexeme);
      return true;
    },
  },
  {
    name: 'one more sound of an ending',
    example: '-s, /s/ in cats and /z/ in dogs',
    counterExample: '-s, /ā/ in cake',
    reads: (reader, { phrase, sound }) => sound && soundsEnding(reader, phrase),
  },
  {
    name: 'what is said of the letters before it',
    example: 'ea (long e)',
    counterExample: 'ea, long e',
    reads: (reader, heading) => {
      const { phrase, beside, sound } = heading;
      const last = beside?.spelled.at(-1);
      if (last === undefined || !saysOf(reader, heading, last)) return false;
      // "ew, ue, ui: the /oo/ sound"
      const listed = sound && reader.hinting && soundsList(reader, phrase);
      if (phrase.within === null) addAside(reader, phrase, last);
      else if (!listed) last.sounds.push(phrase);
      reader.touch();
      return true;
    },
  },
  {
    name: 'the family of the letters before it',
    example: 'kn, wr, gn silent letters',
    counterExample: 'kn, wr, gn, silent letters',
    reads: (reader, { phrase, beside, sound, words }) => {
      const last = beside?.spelled.at(-1);
      if (last === undefined || sound || !mayBe(last, phrase)) return false;
      narrowBack(reader, phrase);
      beside!.known += words;
      return true;
    },
  },
  {
    name: 'two headings that can mean the same',
    example: 'long a silent e',
    counterExample: 'long a, silent e',
    reads: (reader, { phrase, beside, sound, words }) => {
      if (beside === null || beside.spelled.length > 0 || reader.aside) return false;
      if ((sound && reader.scope?.sound) || !joins(beside, phrase)) return false;
      // In "diphthongs /oi/, /ou/" the heading applies to each sound.
      if (sound && reader.scope !== null && !reader.scope.sound) reader.announced = reader.scope.heading;
      beside.phrases.push(phrase);
      beside.known += words;
      reader.loose = false;
      reader.touch();
      if (phrase.within !== null) reader.scope = { heading: phrase, chunk: beside, strong: false, sound };
      return true;
    },
  },
  {
    name: 'a heading that only explains words before it',
    example: 'Otto (vowel teams)',
    counterExample: 'Otto, vowel teams',
    reads: (reader, { beside }) => beside !== null && beside.spelled.length === 0 && reader.aside,
  },
];

/**
 * Returns the chunk beside a heading, and whether the heading is one more sound of the last letters: "ea says short e
 * (bread) and long a (steak)".
 */
export function besideHeading(
  reader: ClauseState,
  phrase: Phrase,
  sound: boolean,
): Pick<HeadingAt, 'again' | 'beside'> {
  const { chunk, last } = reader;
  // "-ed /t/, /d/" has two sounds of one ending. "ch, /sh/" has two spellings.
  const said = last !== undefined && last.sounds.length > 0;
  const again = said && (reader.joined || last.every > 0) && phrase.within?.size !== 0 && mayBe(last, phrase);
  const goesOn = reader.aside || reader.hinting || !reader.broken || (said && sound) || again;
  return { again, beside: goesOn ? chunk : null };
}

const mayBe = ({ spelling }: Spelled, { within }: Phrase) =>
  spelling.candidates.some((id) => within?.has(id));

function saysOf(reader: ClauseState, { phrase, beside, sound, again }: HeadingAt, last: Spelled): boolean {
  if (reader.aside || reader.hinting || again) return true;
  const leads = reader.scope?.chunk === beside && reader.scope?.sound;
  return sound && !leads && (!reader.broken || mayBe(last, phrase));
}

/** The patterns of the sounds that each ending can have. */
const ENDING_SOUNDS: Readonly<Record<string, readonly PatternId[]>> = {
  s: ['s', 'z'],
  es: ['z', 's', 'suffix-es'],
  ed: ['t', 'd', 'suffix-ed-t', 'suffix-ed-d', 'suffix-ed-id'],
};

/**
 * Reads a sound of an ending that was named before it: "-s, /s/ in cats and /z/ in dogs", "-ed, its sounds /t/, /d/".
 * Returns whether there is such an ending.
 */
function soundsEnding(reader: ClauseState, phrase: Phrase): boolean {
  const ending = reader.chunks
    .slice(-3)
    .flatMap(({ spelled }) => spelled)
    .at(-1);
  if (ending === undefined || !ending.spelling.usual.some((id) => id.startsWith('suffix-'))) return false;
  const own = ENDING_SOUNDS[ending.spelling.letters] ?? [];
  if (!own.some((id) => phrase.within?.has(id))) return false;
  if (mayBe(ending, phrase)) ending.sounds.push(phrase);
  reader.hinting = true;
  reader.touch();
  return true;
}

/**
 * Adds a remark to the letters before it. A remark that is a possible meaning of the letters selects this meaning.
 * Otherwise the letters and the remark are both taught: "-ed (double the consonant)".
 */
function addAside({ chunk, aside, hinting }: ClauseState, phrase: Phrase, last: Spelled): void {
  if (last.spelling.candidates.some((id) => phrase.ids.includes(id)))
    last.sounds.push({ ...phrase, within: new Set(phrase.ids) });
  else if ((aside || hinting) && phrase.ids.some((id) => id.startsWith('change-'))) {
    chunk!.phrases.push({ ...phrase, keeps: phrase.ids });
    chunk!.hedged = true;
  }
  // A phrase that the letters cannot mean may be taught as well: "h as in hut and schwa".
  else if (phrase.ids.length > 0) chunk!.hedged = true;
}

/** The most chunks before a sound that the sound may apply to. */
const LONGEST_LIST = 20;

/**
 * Applies a sound after a colon to each of the letters in the list before it. Returns whether the sound fits the whole
 * list.
 */
function soundsList({ chunks }: ClauseState, phrase: Phrase): boolean {
  const list: Spelled[] = [];
  for (let i = chunks.length - 1; i >= Math.max(0, chunks.length - LONGEST_LIST); i--) {
    const { phrases, spelled } = chunks[i]!;
    const open = spelled.every((one) => one.sounds.length + one.examples.length === 0);
    if (phrases.length > 0 || spelled.length === 0 || !open) break;
    list.push(...spelled);
  }
  if (list.length < 2 || !list.every((one) => mayBe(one, phrase))) return false;
  for (const one of list) one.sounds.push(phrase);
  return true;
}

function joins({ phrases, known }: Chunk, phrase: Phrase): boolean {
  const before = phrases.at(-1);
  return before === undefined ? known === 0 : overlap(before, phrase);
}

/** Applies a heading to all letters before it that it can mean: "kn, wr, gn silent letters". */
function narrowBack({ chunks, last }: ClauseState, phrase: Phrase): void {
  for (let i = chunks.length - 1; i >= 0; i--) {
    const { phrases, spelled } = chunks[i]!;
    if (phrases.length > 0 || spelled.length === 0) break;
    // Letters with an example of their own are decided by this example: "gh (laugh), gh silent".
    const own = (one: Spelled) => one !== last && one.examples.length > 0;
    if (!spelled.every((one) => one.headings.length === 0 && mayBe(one, phrase) && !own(one))) break;
    for (const one of spelled) one.headings.push(phrase);
  }
}
