import type { Accent } from '../analyze/types.ts';
import spellings from './spellings.json' with { type: 'json' };
import words from './words.json' with { type: 'json' };

/** Another spelling of one word (harbour, harbor), or another word for one thing (jumper, sweater). */
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

/** The tables that turn the words of both into one variety. */
interface Variety {
  /** Words of the other variety alone, in a text anybody wrote. */
  readonly turns: ReadonlyMap<string, Turn>;
  /** The same in our own texts, where the sense is known: the torch that is a flashlight. */
  readonly own: ReadonlyMap<string, string>;
  /** Words that are not put before a group alone: words of the other variety, and words with another sense there (pants). */
  readonly foreign: ReadonlySet<string>;
}

interface WordPair {
  readonly british: string;
  readonly american: string;
  /** Whose word both varieties have: Britain has sweaters too, America no jumpers. */
  readonly shared?: string;
  /** In our own texts it is turned all the same: the biscuit of our stories is a cookie. */
  readonly own?: boolean;
  /** Whose word is for that variety alone when no sentence gives its sense. */
  readonly alone?: string;
}

/** The bare part of a family of spellings, or no ending. */
const partOf = (text: string): string => (text === '-' ? '' : text);

/**
 * All pairs of spellings, of both varieties' accepted ones too (dialogue, dialog): what the word table gives a pronunciation by.
 * A family is a stem, the letters that differ and an ending: col-our-ful, col-or-ful.
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

/** All pairs of words. */
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

/** The tables of a variety, made when they are first asked for. */
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
