import { openSwaps } from '../../swap/open-swaps.ts';
import { AS_IS, CUES, MARKS, PARTS_OF_SPEECH } from '../../swap/table-format.ts';
import type { PartOfSpeech } from '../../swap/types.ts';
import { sharesOfForm } from '../../swap/weigh-readings.ts';
import { readCmudict } from '../read-cmudict.ts';
import { readCapitalised, readFrequency } from '../read-frequency.ts';
import { readWordList } from '../read-word-list.ts';
import { addAdverbs } from './add-adverbs.ts';
import { countFollowers } from './count-followers.ts';
import { type Evidence, type Gathering, gatherCandidates, type Source } from './gather-candidates.ts';
import { isFitWord } from './keep-fit.ts';
import { learnParts } from './learn-parts.ts';
import { listIrregulars } from './list-irregulars.ts';
import { listPhrases } from './list-phrases.ts';
import { type OwnSwaps, readOwnSwaps } from './read-own-swaps.ts';
import { readSynsets, type Synsets } from './read-synsets.ts';
import { readVectors } from './read-vectors.ts';
import { weighEvidence } from './weigh-evidence.ts';
import { type TableLists, writeTable } from './write-table.ts';

/** The highest rank of a swap. Rarer words are no easier to read or to know. */
const RAREST_SWAP = 9_000;
/** The rank from which words have swaps only if our own list gives them. */
const RAREST_HEAD = 30_000;
const LEAST_PRIOR = 0.1;
const MOST_SWAPS = 9;

export interface SwapBuild {
  readonly bytes: Uint8Array;
  readonly heads: number;
}

/** Builds `swaps.bin`. `off`: sources that are left out, to see how much each one adds. */
export function buildSwaps(off: ReadonlySet<Source> = new Set()): SwapBuild {
  const synsets = readSynsets();
  const own = addAdverbs(readOwnSwaps(), (word) => isFitWord(word) && synsets.sensesOf.has(`${word}/r`));
  const vectors = readVectors();
  const ranks = readFrequency();
  const ownOf = new Map<string, OwnSwaps[]>();
  for (const each of own) ownOf.set(each.word, [...(ownOf.get(each.word) ?? []), each]);
  const gathering = prepare(synsets, vectors.of, ranks, ownOf);
  const words = [...vectors.words];
  const ids = new Map(words.map((word, id) => [word, id]));
  const idOf = (word: string): number => {
    const known = ids.get(word);
    if (known !== undefined) return known;
    ids.set(word, words.length);
    return words.push(word) - 1;
  };
  const lists = {
    headWords: [],
    headParts: [],
    headEnds: [],
    swapWords: [],
    swapPriors: [],
    swapSenses: [],
    swapMarks: [],
  } as Record<
    'headWords' | 'headParts' | 'headEnds' | 'swapWords' | 'swapPriors' | 'swapSenses' | 'swapMarks',
    number[]
  >;
  const senses = new Map<string, number>();
  const cues: number[][] = [];
  const senseOf = (list: readonly string[]): number => {
    const known = list.filter((cue) => ids.has(cue)).slice(0, CUES);
    if (known.length === 0) return 0;
    const key = known.join(' ');
    const number = senses.get(key) ?? cues.push(known.map((cue) => ids.get(cue)!));
    senses.set(key, number);
    return number;
  };
  /** Adjectives and adverbs that are swaps (`glad/a`). Only these need forms of comparison. */
  const compared = new Set<string>();
  const add = (word: string, part: number, swaps: readonly (Evidence & { prior: number })[]): void => {
    if (swaps.length === 0) return;
    lists.headWords.push(idOf(word));
    lists.headParts.push(part);
    for (const { lemma, prior, cues, marks } of swaps) {
      if (part >= 2) compared.add(`${lemma}/${PARTS_OF_SPEECH[part]}`);
      lists.swapWords.push(idOf(lemma));
      lists.swapPriors.push(Math.round(prior * 255));
      lists.swapSenses.push(senseOf(cues));
      lists.swapMarks.push(off.has('own') ? 0 : marks);
    }
    lists.headEnds.push(lists.swapWords.length);
  };
  const rankOf = (lemma: string): number =>
    Math.max(...lemma.split(' ').map((word) => ranks.get(word) ?? 60_000));
  for (const [word, part] of headsOf(synsets, own, ranks)) {
    const evidence = part === 'x' ? asIs(ownOf.get(word) ?? []) : gatherCandidates(word, part, gathering);
    const weighed = evidence
      .map((each) => ({ ...each, prior: weighEvidence(each, rankOf(each.lemma), rankOf(word), off) }))
      .filter(({ prior, marks }) => prior >= LEAST_PRIOR || isSure(marks))
      .sort((one, other) => other.prior - one.prior || (one.lemma < other.lemma ? -1 : 1))
      .filter(({ marks }, i) => i < MOST_SWAPS || isSure(marks));
    add(word, part === 'x' ? AS_IS : PARTS_OF_SPEECH.indexOf(part), weighed);
  }
  const said = readCmudict();
  const phrases = listPhrases(synsets, ids);
  const counts = { words: words.length, vectors: vectors.words.length, heads: lists.headWords.length };
  const text: TableLists['text'] = {
    counts: {
      ...counts,
      swaps: lists.swapWords.length,
      senses: cues.length,
      phrases: phrases.length,
      followed: 0,
    },
    words: words.map((word) => word.replaceAll(' ', '_')).join(' '),
    irregular: listForms(words, compared, synsets, ranks, said),
    otherArticle: listOtherArticles(words, said).join(' '),
    partWeights: {},
  };
  const table = {
    text,
    codebook: vectors.codebook,
    codes: vectors.codes,
    shares: words.map((word) => shareBits(word, synsets, ownOf.get(word) ?? [])),
    ...lists,
    cues,
    phrases,
    followed: { words: [] as number[], shares: [] as number[] },
  };
  const draft = openSwaps(writeTable(table));
  const shares = new Map<string, readonly number[] | null>();
  const share = (word: string): readonly number[] | null => {
    if (!shares.has(word)) shares.set(word, sharesOfForm(word, draft));
    return shares.get(word)!;
  };
  const partWeights = learnParts(synsets, draft, share);
  const followed = countFollowers(synsets, draft, ids);
  const settled = {
    ...text,
    partWeights,
    counts: { ...text.counts, followed: followed.words.length },
  };
  return { bytes: writeTable({ ...table, followed, text: settled }), heads: counts.heads };
}

const isSure = (marks: number): boolean => (marks & MARKS.sure) > 0;

type Head = readonly [string, OwnSwaps['part']];

/** Returns every word that may get swaps, sorted. */
function headsOf(synsets: Synsets, own: readonly OwnSwaps[], ranks: ReadonlyMap<string, number>): Head[] {
  const heads = new Map<string, Head>();
  for (const name of synsets.sensesOf.keys()) {
    const [word, part] = name.split('/') as [string, PartOfSpeech];
    if (/^[a-z]{3,}$/.test(word) && isFitWord(word) && (ranks.get(word) ?? 1e6) < RAREST_HEAD)
      heads.set(name, [word, part]);
  }
  for (const { word, part } of own) heads.set(`${word}/${part}`, [word, part]);
  return [...heads].sort(([one], [other]) => (one < other ? -1 : 1)).map(([, head]) => head);
}

function prepare(
  synsets: Synsets,
  vector: (word: string) => Float32Array | null,
  ranks: ReadonlyMap<string, number>,
  own: Gathering['own'],
): Gathering {
  const unfit = readWordList('not-for-school.txt');
  const names = readCapitalised();
  const coarse = new Set(
    [...synsets.byId.values()].filter((synset) => synset.coarse).flatMap((synset) => synset.words),
  );
  const known = new Map<string, boolean>();
  const isFit = (lemma: string, part: PartOfSpeech): boolean => {
    const before = known.get(lemma);
    if (before !== undefined) return before;
    const words = lemma.split(' ');
    const suits =
      /^[a-z]+( [a-z]+){0,2}$/.test(lemma) &&
      (words.length === 1 || part === 'v') &&
      !coarse.has(lemma) &&
      words.every(
        (word) =>
          !unfit.has(word) && isFitWord(word) && !names.has(word) && (ranks.get(word) ?? 1e6) <= RAREST_SWAP,
      );
    known.set(lemma, suits);
    return suits;
  };
  return { synsets, own, vector, isFit };
}

function asIs(own: readonly OwnSwaps[]): Evidence[] {
  return own
    .filter((each) => each.part === 'x')
    .flatMap(({ swaps, cues, marks }) =>
      swaps.map((lemma, i) => ({
        lemma,
        own: i + 1,
        synonyms: 0,
        wider: 0,
        similar: 0,
        glosses: 0,
        near: 0,
        cues,
        marks: marks[i]!,
      })),
    );
}

function shareBits(word: string, { sensesOf }: Synsets, own: readonly OwnSwaps[]): number {
  const counts = PARTS_OF_SPEECH.map((part) =>
    (sensesOf.get(`${word}/${part}`) ?? []).reduce((sum, { count }) => sum + count + 0.5, 0),
  );
  own.forEach((each) => {
    const i = PARTS_OF_SPEECH.indexOf(each.part as PartOfSpeech);
    if (i >= 0) counts[i] = Math.max(counts[i]!, 1);
  });
  const sum = counts.reduce((a, b) => a + b);
  return counts.reduce(
    (bits, count, i) => bits | ((count === 0 ? 0 : Math.max(1, Math.round((15 * count) / sum))) << (4 * i)),
    0,
  );
}

function listForms(
  words: readonly string[],
  compared: ReadonlySet<string>,
  { sensesOf }: Synsets,
  ranks: ReadonlyMap<string, number>,
  said: ReadonlyMap<string, unknown>,
): string {
  const lemmas = words
    .flatMap((entry) => (entry.includes(' ') ? [] : [entry]))
    .flatMap((word) =>
      PARTS_OF_SPEECH.filter((part) =>
        part === 'n' || part === 'v' ? sensesOf.has(`${word}/${part}`) : compared.has(`${word}/${part}`),
      ).map((part) => [word, part] as const),
    );
  const attested = {
    count: (form: string) => (ranks.has(form) ? 1e6 / ranks.get(form)! : 0),
    said: (form: string) => said.has(form),
  };
  return [...listIrregulars(lemmas, attested)]
    .map(([key, form]) => `${key}=${form.replaceAll(' ', '_')}`)
    .join(' ');
}

/**
 * Returns words that take a different article than their first letter suggests, according to CMUdict. The first sound
 * is a vowel but the first letter is not (hour), or the reverse (unit).
 */
function listOtherArticles(words: readonly string[], said: ReadonlyMap<string, string[][]>): string[] {
  const firsts = new Set(words.map((entry) => entry.split(' ')[0]!));
  return [...firsts].filter((word) => {
    const first = said.get(word)?.[0]?.[0];
    return first !== undefined && /\d$/.test(first) !== /^[aeiou]/.test(word);
  });
}
