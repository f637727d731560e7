import { nearness } from '../../swap/open-swaps.ts';
import type { PartOfSpeech } from '../../swap/types.ts';
import type { OwnSwaps } from './read-own-swaps.ts';
import type { Synsets } from './read-synsets.ts';

/** The sources of swaps. Each can be switched off to see how much it adds (`tests/accuracy/measure-swaps.ts`). */
export const SOURCES = ['own', 'synonyms', 'wider', 'similar', 'glosses', 'vectors'] as const;
export type Source = (typeof SOURCES)[number];

/** The figures of a swap, independent of any sentence. Shares are from 0 to 1. */
export interface Evidence {
  readonly lemma: string;
  /** The position in our own list: 1 first, 2 second, 0 not in the list. */
  own: number;
  /**
   * The share of the word's uses (SemCor) in senses that have the swap as a synonym. The next three fields count senses
   * that have the swap as the next wider word, as a similar word, or in their definition.
   */
  synonyms: number;
  wider: number;
  similar: number;
  glosses: number;
  /** How similar the contexts of the two words are. */
  near: number;
  /** Words that occur near the sense of the swap, from our own list. Empty if the swap fits all senses. */
  cues: readonly string[];
  /** Bits of `MARKS`, from our own list. */
  marks: number;
}

export interface Gathering {
  readonly synsets: Synsets;
  /** By word. */
  readonly own: ReadonlyMap<string, readonly OwnSwaps[]>;
  readonly vector: (word: string) => Float32Array | null;
  /** Whether a swap is known and fit: common enough, not a name, not coarse. */
  readonly isFit: (lemma: string, part: PartOfSpeech) => boolean;
}

/** Pointers to other meanings that are nearly the same, and the source each pointer counts for. */
const POINTERS: Readonly<Record<string, Source>> = {
  '@': 'wider',
  '&': 'similar',
  $: 'similar',
  '^': 'similar',
};

/** Returns all swaps for one word in one part of speech, in a fixed order and without weights. */
export function gatherCandidates(
  word: string,
  part: PartOfSpeech,
  { synsets, own, vector, isFit }: Gathering,
): Evidence[] {
  const found = new Map<string, Evidence>();
  const note = (lemma: string, source: Exclude<Source, 'own' | 'vectors'>, share: number): void => {
    if (lemma === word || !isFit(lemma, part) || isKin(lemma, word)) return;
    const evidence = found.get(lemma) ?? blank(lemma);
    found.set(lemma, evidence);
    evidence[source] += share;
  };
  const senses = synsets.sensesOf.get(`${word}/${part}`) ?? [];
  const sum = senses.reduce((total, { count }) => total + count + 0.5, 0);
  senses.forEach(({ id, count }) => {
    const synset = synsets.byId.get(id)!;
    const share = (count + 0.5) / sum;
    if (synset.coarse) return;
    for (const other of synset.words) note(other, 'synonyms', share);
    for (const { symbol, to } of synset.pointers) {
      const source = POINTERS[symbol];
      const next = synsets.byId.get(to);
      if (source === undefined || next === undefined || next.part !== part || next.coarse) continue;
      for (const other of next.words) note(other, source as 'wider', share);
    }
    for (const other of phrasesOf(synset.definition)) {
      if (synsets.sensesOf.has(`${other}/${part}`)) note(other, 'glosses', share);
    }
  });
  for (const { part: its, swaps, cues, marks } of own.get(word) ?? []) {
    if (its !== part) continue;
    swaps.forEach((lemma, i) => {
      const evidence = found.get(lemma) ?? blank(lemma);
      found.set(lemma, evidence);
      evidence.marks |= marks[i]!;
      if (evidence.own !== 0 && evidence.own <= i + 1) return;
      evidence.own = i + 1;
      evidence.cues = cues;
    });
  }
  const target = vector(word);
  for (const evidence of found.values())
    evidence.near = Math.max(0, nearness(target, vector(evidence.lemma)));
  return [...found.values()];
}

function blank(lemma: string): Evidence {
  return { lemma, own: 0, synonyms: 0, wider: 0, similar: 0, glosses: 0, near: 0, cues: [], marks: 0 };
}

/**
 * The first four pieces of a definition: a piece of up to three words whole, and the first two words of a longer piece.
 * `put out, as of fires` gives put out, as of fires.
 */
function phrasesOf(definition: string): string[] {
  const heads = definition
    .toLowerCase()
    .split(/[;,]| or /)
    .slice(0, 4)
    .map((piece) => piece.trim().replace(/^(a|an|the|to|be|of|being|very|extremely) /, ''));
  return [
    ...new Set(
      heads.flatMap((head) => {
        const words = head.split(' ');
        return words.length <= 3 ? [words.join(' ')] : [words.slice(0, 2).join(' ')];
      }),
    ),
  ];
}

/**
 * Whether two words are variants of one word: with an addition (boat, boats; tin, tin can) or in another spelling
 * (colour, color).
 */
function isKin(lemma: string, word: string): boolean {
  return (
    lemma.includes(word) || (word.startsWith(lemma) && lemma.length > 3) || american(lemma) === american(word)
  );
}

function american(word: string): string {
  return word
    .replace(/is(e|ation)$/, 'iz$1')
    .replace('our', 'or')
    .replace(/re$/, 'er')
    .replace('ll', 'l');
}
