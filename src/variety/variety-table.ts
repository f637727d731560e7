import type { Accent } from '../analyze/types.ts';
import spellings from './spellings.json' with { type: 'json' };
import words from './words.json' with { type: 'json' };

/**
 * The difference between the two words: two spellings of one word (harbour, harbor) or two words for one thing (jumper,
 * sweater).
 */
export type VarietyKind = 'spelling' | 'word';

/** A word of one variety with its counterpart in the other. */
export interface VarietyPair {
  readonly british: string;
  readonly american: string;
  readonly kind: VarietyKind;
}

/** The word that a word of the other variety becomes. */
interface Turn {
  readonly to: string;
  readonly kind: VarietyKind;
}

/** The tables that convert the words of both varieties into one variety. */
interface Variety {
  /** Words that only the other variety has. They are replaced in any text. */
  readonly turns: ReadonlyMap<string, Turn>;
  /** Words that are replaced in our own texts, where the sense is known: a torch is always a flashlight. */
  readonly own: ReadonlyMap<string, string>;
  /**
   * Words that are not shown to a group without a sentence: words of the other variety, and words with another sense in
   * the other variety (pants).
   */
  readonly foreign: ReadonlySet<string>;
}

interface WordPair {
  readonly british: string;
  readonly american: string;
  /** The variety whose word both varieties use. Britain has sweaters too, but America has no jumpers. */
  readonly shared?: string;
  /** Whether the shared word is replaced in our own texts all the same: the biscuit of our stories is a cookie. */
  readonly own?: boolean;
  /** The only variety that is shown its word without a sentence. The word has another sense in the other variety. */
  readonly alone?: string;
}

/** Returns a stem or an ending of a spelling family. `-` means that there is none. */
const partOf = (text: string): string => (text === '-' ? '' : text);

/**
 * Returns all spelling pairs, also those whose spellings are accepted in both varieties (dialogue, dialog). The word
 * table uses these pairs to find pronunciations. A family consists of a stem, the letters that differ and an ending:
 * col-our-ful, col-or-ful.
 */
export function listSpellings(): VarietyPair[] {
  const ofFamilies = spellings.families.flatMap(({ british, american, stems, endings }) =>
    stems.split(' ').flatMap((stem) =>
      endings.split(' ').map(
        (ending): VarietyPair => ({
          british: partOf(stem) + british + partOf(ending),
          american: partOf(stem) + american + partOf(ending),
          kind: 'spelling',
        }),
      ),
    ),
  );
  const { words: alone, americanIsShared, britishIsShared, bothAreShared } = spellings;
  const single = [...alone, ...americanIsShared, ...britishIsShared, ...bothAreShared];
  return [...ofFamilies, ...single.map((line) => pairOf(line, 'spelling'))];
}

/** Returns all word pairs. */
export function listWordPairs(): VarietyPair[] {
  return words.pairs.flatMap((row) => formsOf(row));
}

function formsOf({ british, american }: WordPair): VarietyPair[] {
  const others = american.split(' ');
  return british.split(' ').map((word, i) => ({ british: word, american: others[i]!, kind: 'word' }));
}

function pairOf(line: string, kind: VarietyKind): VarietyPair {
  const [british = '', american = ''] = line.split(' ');
  return { british, american, kind };
}

let opened: Readonly<Record<Accent, Variety>> | undefined;

/** Returns the tables of a variety. They are made at the first request. */
export function varietyOf(accent: Accent): Variety {
  opened ??= { american: openVariety('american'), british: openVariety('british') };
  return opened[accent];
}

function openVariety(accent: Accent): Variety {
  const other: Accent = accent === 'american' ? 'british' : 'american';
  const turns = new Map<string, Turn>();
  const own = new Map<string, string>();
  const foreign = new Set((accent === 'american' ? words.british : words.american).split(' '));
  const add = (pairs: readonly VarietyPair[], shared: string | undefined, row: Partial<WordPair>): void => {
    const isShared = shared === other || shared === 'both';
    for (const pair of pairs) {
      const { [other]: from, [accent]: to, kind } = pair;
      if (!isShared && !turns.has(from)) turns.set(from, { to, kind });
      if ((!isShared || (row.own && other === 'british')) && !own.has(from)) own.set(from, to);
      if (!isShared || row.alone === other) foreign.add(from);
    }
  };
  const lists = { americanIsShared: 'american', britishIsShared: 'british', bothAreShared: 'both' } as const;
  const shareOf = new Map(
    Object.entries(lists).flatMap(([list, shared]) =>
      spellings[list as keyof typeof lists].map((line) => [line, shared] as const),
    ),
  );
  for (const pair of listSpellings()) add([pair], shareOf.get(`${pair.british} ${pair.american}`), {});
  for (const row of words.pairs as readonly WordPair[]) add(formsOf(row), row.shared, row);
  return { turns, own, foreign };
}
