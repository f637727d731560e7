import type { Irregulars } from './inflect.ts';
import {
  AS_IS,
  CHOICES,
  CUES,
  FOLLOWERS,
  MAGIC,
  MARKS,
  PART,
  PARTS,
  PARTS_OF_SPEECH,
  type TableText,
} from './table-format.ts';
import type { Form, PartOfSpeech, WordForm } from './types.ts';

/** A swap as it is in the table, not yet inflected. */
export interface Candidate {
  /** The base form. Several words are separated by spaces. */
  readonly lemma: string;
  /** The quality of the swap without evidence from the sentence, from 0 to 1. */
  readonly prior: number;
  /** The number of the sense to which the swap belongs. 0 if the swap fits all senses. */
  readonly sense: number;
  /** Whether the swap fits wherever the word has this part of speech. */
  readonly sure: boolean;
  /** Whether the swap takes an object (raise: true; rise: false). Null when it may do either. */
  readonly object: boolean | null;
}

/** The opened table. It reads from the bytes, and computes a word's vector only when requested. */
export interface SwapTable extends Irregulars {
  candidates(word: string, part: PartOfSpeech | 'as-is'): readonly Candidate[];
  isLemma(word: string, part: PartOfSpeech): boolean;
  irregularOf(form: string): readonly WordForm[];
  /** Returns the shares of the word's uses as noun, verb, adjective and adverb, or null when the table lacks the word. */
  shares(word: string): readonly number[] | null;
  /**
   * Returns the rank of a word by frequency among the table's words. The commonest word has rank 1. Unknown words have
   * the last rank.
   */
  rank(word: string): number;
  /** Returns whether base forms, separated by spaces, belong together: sea lion, look up, as well as. */
  isPhrase(words: string): boolean;
  /**
   * Returns the share of a base form's occurrences that are followed by a small word of `FOLLOWERS`. Returns null if
   * too few were counted.
   */
  follows(word: string, follower: string): number | null;
  /** The vector of a word, of length 1, or null. Several words have the sum of their vectors. */
  vector(word: string): Float32Array | null;
  /** Returns the sum of the vectors of a sense's cues. */
  senseVector(sense: number): Float32Array | null;
  /** Whether a word takes a different article than its first letter suggests, because of its first sound: hour, unit. */
  takesOtherArticle(word: string): boolean;
  readonly partWeights: TableText['partWeights'];
}

/**
 * Opens the bytes of `swaps.bin`. The layout is described in `table-format.ts`. Throws `RangeError` for any other
 * bytes.
 */
export function openSwaps(bytes: Uint8Array): SwapTable {
  if (new TextDecoder().decode(bytes.subarray(0, MAGIC.length)) !== MAGIC) {
    throw new RangeError('This is no table of swaps of this version: make it again with `npm run data`.');
  }
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const textEnd = MAGIC.length + 4 + view.getUint32(MAGIC.length, true);
  const text = JSON.parse(new TextDecoder().decode(bytes.subarray(MAGIC.length + 4, textEnd))) as TableText;
  const { counts } = text;
  // The lists are copied, so that they begin at a multiple of 4, as typed arrays require.
  const lists = new Uint8Array(bytes.subarray(textEnd)).buffer;
  let at = 0;
  const take = (length: number): number => {
    const start = at;
    at += Math.ceil(length / 4) * 4;
    return start;
  };
  const codebook = new Int8Array(lists, take(PARTS * CHOICES * PART), PARTS * CHOICES * PART);
  const codes = new Uint8Array(lists, take(counts.vectors * PARTS), counts.vectors * PARTS);
  const shareBits = new Uint16Array(lists, take(counts.words * 2), counts.words);
  const headWords = new Uint16Array(lists, take(counts.heads * 2), counts.heads);
  const headParts = new Uint8Array(lists, take(counts.heads), counts.heads);
  const headEnds = new Uint32Array(lists, take(counts.heads * 4), counts.heads);
  const swapWords = new Uint16Array(lists, take(counts.swaps * 2), counts.swaps);
  const swapPriors = new Uint8Array(lists, take(counts.swaps), counts.swaps);
  const swapSenses = new Uint16Array(lists, take(counts.swaps * 2), counts.swaps);
  const swapMarks = new Uint8Array(lists, take(counts.swaps), counts.swaps);
  const cues = new Uint16Array(lists, take(counts.senses * CUES * 2), counts.senses * CUES);

  const phraseIds = new Uint16Array(lists, take(counts.phrases * 2), counts.phrases);
  const followedWords = new Uint16Array(lists, take(counts.followed * 2), counts.followed);
  const followerBytes = counts.followed * FOLLOWERS.length;
  const followerShares = new Uint8Array(lists, take(followerBytes), followerBytes);

  const words = text.words.split(' ').map((word) => word.replaceAll('_', ' '));
  const idOf = new Map(words.map((word, id) => [word, id]));
  // The set of phrases, built on first use. Building the set takes as long as all other parts of the opening. The page
  // should be able to run in between.
  let phrases: ReadonlySet<string> | undefined;
  const readPhrases = (): ReadonlySet<string> => {
    const read = new Set<string>();
    for (let i = 0; i < phraseIds.length; i += phraseIds[i]! + 1)
      read.add(Array.from(phraseIds.subarray(i + 1, i + 1 + phraseIds[i]!), (id) => words[id]).join(' '));
    return read;
  };
  const followed = new Map<number, number>();
  for (const [i, id] of followedWords.entries()) followed.set(id, i);
  const places = new Map<string, number>(FOLLOWERS.map((word, i) => [word, i]));
  const heads = new Map<number, number>();
  for (let i = 0; i < counts.heads; i++) heads.set(headWords[i]! * 8 + headParts[i]!, i);
  const irregular = new Map<string, string>();
  const byForm = new Map<string, WordForm[]>();
  for (const entry of text.irregular.split(' ')) {
    const [key, form] = entry.replaceAll('_', ' ').split('=') as [string, string];
    irregular.set(key, form);
    const [lemma, part, name] = key.split('/') as [string, PartOfSpeech, Form];
    if (form !== '') byForm.set(form, [...(byForm.get(form) ?? []), { lemma, part, form: name }]);
  }
  const otherArticle = new Set(text.otherArticle.split(' '));

  const decode = (id: number): Float32Array => {
    const vector = new Float32Array(PARTS * PART);
    for (let part = 0; part < PARTS; part++) {
      const from = (part * CHOICES + codes[id * PARTS + part]!) * PART;
      for (let i = 0; i < PART; i++) vector[part * PART + i] = codebook[from + i]!;
    }
    return unit(vector);
  };
  const vectors = new Map<string, Float32Array | null>();
  const vector = (word: string): Float32Array | null => {
    const known = vectors.get(word);
    if (known !== undefined) return known;
    const id = idOf.get(word);
    let made: Float32Array | null = null;
    if (id !== undefined && id < counts.vectors) made = decode(id);
    else if (word.includes(' ')) made = sumOf(word.split(' ').map(vector));
    vectors.set(word, made);
    return made;
  };

  return {
    candidates(word, part) {
      const id = idOf.get(word);
      if (id === undefined) return [];
      const head = heads.get(id * 8 + (part === 'as-is' ? AS_IS : PARTS_OF_SPEECH.indexOf(part)));
      if (head === undefined) return [];
      const found: Candidate[] = [];
      for (let i = head === 0 ? 0 : headEnds[head - 1]!; i < headEnds[head]!; i++) {
        found.push({
          lemma: words[swapWords[i]!]!,
          prior: swapPriors[i]! / 255,
          sense: swapSenses[i]!,
          sure: (swapMarks[i]! & MARKS.sure) > 0,
          object: swapMarks[i]! & MARKS.object ? true : swapMarks[i]! & MARKS.noObject ? false : null,
        });
      }
      return found;
    },
    isLemma(word, part) {
      const id = idOf.get(word);
      return id !== undefined && ((shareBits[id]! >> (4 * PARTS_OF_SPEECH.indexOf(part))) & 15) > 0;
    },
    irregularOf: (form) => byForm.get(form) ?? [],
    get: (lemma, part, form) => irregular.get(`${lemma}/${part}/${form}`),
    shares(word) {
      const id = idOf.get(word);
      if (id === undefined || shareBits[id] === 0) return null;
      const bits = PARTS_OF_SPEECH.map((_, i) => (shareBits[id]! >> (4 * i)) & 15);
      const sum = bits.reduce((a, b) => a + b);
      return bits.map((share) => share / sum);
    },
    rank: (word) => (idOf.get(word) ?? counts.words) + 1,
    isPhrase(asked) {
      phrases ??= readPhrases();
      return phrases.has(asked);
    },
    follows(word, follower) {
      const at = followed.get(idOf.get(word) ?? -1);
      const place = places.get(follower);
      if (at === undefined || place === undefined) return null;
      return followerShares[at * FOLLOWERS.length + place]! / 250;
    },
    vector,
    senseVector: (sense) =>
      sense === 0
        ? null
        : sumOf(Array.from(cues.subarray((sense - 1) * CUES, sense * CUES), (id) => vector(words[id]!))),
    takesOtherArticle: (word) => otherArticle.has(word),
    partWeights: text.partWeights,
  };
}

/** Returns the sum of the vectors, scaled to length 1. Returns null if there are no vectors. */
export function sumOf(vectors: readonly (Float32Array | null)[]): Float32Array | null {
  const there = vectors.filter((vector) => vector !== null);
  if (there.length === 0) return null;
  const sum = new Float32Array(there[0]!.length);
  for (const vector of there) for (let i = 0; i < sum.length; i++) sum[i]! += vector[i]!;
  return unit(sum);
}

/** Returns the nearness of two vectors of length 1: 1 for the same, 0 for nothing in common. */
export function nearness(one: Float32Array | null, other: Float32Array | null): number {
  if (one === null || other === null) return 0;
  let sum = 0;
  for (let i = 0; i < one.length; i++) sum += one[i]! * other[i]!;
  return sum;
}

function unit(vector: Float32Array): Float32Array {
  const length = Math.hypot(...vector) || 1;
  for (let i = 0; i < vector.length; i++) vector[i]! /= length;
  return vector;
}
