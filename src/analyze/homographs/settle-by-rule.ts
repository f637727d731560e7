import { findRule, type Rule } from '../rule.ts';
import { governor, piecesNear } from './context-features.ts';
import rows from './reading-rules.json' with { type: 'json' };
import { partsOf } from './word-parts.ts';

/** A homograph in its sentence. */
interface ReadingPlace {
  readonly word: string;
  readonly before: readonly string[];
  readonly after: readonly string[];
  /** All pieces around the word, in lower case. */
  readonly near: ReadonlySet<string>;
  /** The class of the word that governs the homograph. */
  readonly slot: string;
}

/** A row that gives the reading of a word. All conditions in the row must hold. Lists of words are separated by spaces. */
export interface ReadingRow {
  /** The words that the rule applies to. */
  readonly words: string;
  /** A description of the place in words. Each row of a word has a different description. */
  readonly name: string;
  /** Number of the reading, as in homographs.tsv. */
  readonly reading: number;
  /** Classes of the governing word. */
  readonly slot?: string;
  /** Words directly before or after the homograph. */
  readonly before?: string;
  readonly behind?: string;
  /** The second word after the homograph. */
  readonly second?: string;
  /** True where the second word after the homograph may be a verb. */
  readonly verbSecond?: boolean;
  /** Words anywhere before the homograph. */
  readonly earlier?: string;
  /** Words anywhere near the homograph. If `also` is given, one of its words must be near too. */
  readonly near?: string;
  readonly also?: string;
  readonly capital?: boolean;
  /** Sentences with the homograph between asterisks. */
  readonly example: string;
  readonly counterExample: string;
}

/** A rule that gives its words a reading. */
export interface ReadingRule extends Rule<ReadingPlace> {
  readonly words: readonly string[];
  readonly reading: number;
}

interface ReadingRules {
  readonly all: readonly ReadingRule[];
  /** The rules of each word, in their order. */
  readonly byWord: ReadonlyMap<string, readonly ReadingRule[]>;
}

let made: ReadingRules | undefined;

/**
 * Returns the rules for readings. The rules cover places in children's texts that the learnt weights know too little
 * about, because an encyclopedia seldom has such places (pig, tears, `have you read`). The rules also cover words
 * without weights. They are created when the first homograph is met.
 */
export function readingRules(): ReadingRules {
  if (made) return made;
  const all = (rows as readonly ReadingRow[]).map(compile);
  const byWord = new Map<string, ReadingRule[]>();
  for (const rule of all) {
    for (const word of rule.words) byWord.set(word, [...(byWord.get(word) ?? []), rule]);
  }
  made = { all, byWord };
  return made;
}

/** Returns the reading given by the first of the word's rules that holds in its place. Returns null if no rule holds. */
export function settleByRule(
  word: string,
  before: readonly string[],
  after: readonly string[],
  near: ReadonlySet<string> = piecesNear(before, after),
): number | null {
  const own = readingRules().byWord.get(word.toLowerCase());
  if (!own) return null;
  return findRule(own, { word, before, after, near, slot: governor(before) })?.reading ?? null;
}

type Condition = (place: ReadingPlace) => boolean;

function compile({ words, name, reading, example, counterExample, ...asked }: ReadingRow): ReadingRule {
  const all: Condition[] = [];
  const { capital, verbSecond } = asked;
  const has = (list: string | undefined, met: (cues: ReadonlySet<string>) => Condition): void => {
    if (list !== undefined) all.push(met(new Set(list.split(' '))));
  };
  if (capital !== undefined) all.push(({ word }) => /^\p{Lu}/u.test(word) === capital);
  has(
    asked.slot,
    (cues) =>
      ({ slot }) =>
        cues.has(slot),
  );
  has(
    asked.before,
    (cues) =>
      ({ before }) =>
        holds(cues, before.at(-1)),
  );
  has(
    asked.behind,
    (cues) =>
      ({ after }) =>
        holds(cues, after[0]),
  );
  has(
    asked.second,
    (cues) =>
      ({ after }) =>
        holds(cues, after[1]),
  );
  if (verbSecond !== undefined)
    all.push(({ after }) => /^[na]*v/.test(partsOf(after[1], false)) === verbSecond);
  has(
    asked.earlier,
    (cues) =>
      ({ before }) =>
        before.some((piece) => holds(cues, piece)),
  );
  for (const list of [asked.near, asked.also])
    has(
      list,
      (cues) =>
        ({ near }) =>
          meets(cues, near),
    );
  return {
    name: `${words}: ${name}`,
    words: words.split(' '),
    reading,
    example,
    counterExample,
    applies: (place) => all.every((condition) => condition(place)),
  };
}

function holds(cues: ReadonlySet<string>, piece: string | undefined): boolean {
  return piece !== undefined && cues.has(piece.toLowerCase());
}

function meets(cues: ReadonlySet<string>, near: ReadonlySet<string>): boolean {
  for (const piece of near) if (cues.has(piece)) return true;
  return false;
}
