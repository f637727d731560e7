import { catalogue } from '../catalogue/catalogue.ts';
import { bitOf } from '../catalogue/names.ts';
import { splitKey } from '../homographs/word-key.ts';
import { IRREGULAR } from '../patterns/irregular.ts';
import type { Gap, PatternId, Report, Standing, Tally, WordEntry, WordFault, WordKey } from '../types.ts';
import type { Judge } from './judge.ts';
import { remember } from './remember.ts';

/** A text as counts: the number of times each word key occurs, and the number of tokens left out of the count. */
export interface WordCounts {
  readonly words: Iterable<readonly [WordKey, number]>;
  readonly skipped: number;
}

/**
 * Judges a whole text. Words are in the order of `standings`, and frequent words come first. Gaps that open the most
 * running words come first. The order of the input makes no difference.
 */
export function vet(text: WordCounts, judge: Judge): Report {
  return createReporter(judge)(text);
}

/**
 * Creates `vet` for many texts and one group. The function caches the report data of each word and the patterns that
 * open the word. Without `words`, reports list no words, which saves a good part of the time for a short text.
 */
export function createReporter(
  judge: Judge,
  { words: listsWords = true } = {},
): (text: WordCounts) => Report {
  const openers = createOpeners(judge);
  const judgeKey = remember((key: WordKey): JudgedKey => {
    const { standing, missing, fault } = judge(key);
    const word = splitKey(key).word.toLowerCase();
    return { key, word, standing, missing: missing.length > 1 ? [...new Set(missing)] : missing, fault };
  });
  return ({ words, skipped }) => {
    const keys = byStanding((): CountedKey[] => []);
    for (const [key, count] of words) {
      const of = judgeKey(key);
      keys[of.standing].push({ of, count, more: null });
    }
    const [beyond, unsure] = [mergeEntries(keys.beyond), mergeEntries(keys.unsure)];
    const listOthers = (): WordEntry[] => others.flatMap((standing) => mergeEntries(keys[standing]));
    return {
      words: listsWords ? [...beyond, ...unsure, ...listOthers()] : [],
      tally: tallyUp(
        byStanding((standing) => total(keys[standing])),
        skipped,
      ),
      gaps: findGaps([...keys.beyond, ...keys.unsure], mergeStuck(beyond, unsure), openers),
      faults: findFaults(Object.values(keys)),
    };
  };
}

/** Returns only the counts of a text. This costs far less than all of `vet` and gives the same figures. */
export function tallyText({ words, skipped }: WordCounts, judge: Judge): Tally {
  const counts = byStanding(() => 0);
  for (const [key, count] of words) counts[judge(key).standing] += count;
  return tallyUp(counts, skipped);
}

/**
 * Returns the share of running words that can be read, in percent with one decimal. It is 100 if there are no running
 * words.
 */
export function percentRead(readableWords: number, running: number): number {
  return running === 0 ? 100 : Math.round((readableWords / running) * 1000) / 10;
}

/** The standings of words that a group can read, and of words that are not read. */
const others: readonly Standing[] = ['fresh', 'reads', 'by-sight', 'name', 'skipped'];
/** All standings. A word that a group cannot read comes first. */
const standings: readonly Standing[] = ['beyond', 'unsure', ...others];
const readable: ReadonlySet<Standing> = new Set<Standing>(['reads', 'fresh', 'by-sight']);

/** The report's facts about a key, the same in every text. */
interface JudgedKey {
  readonly key: WordKey;
  /** The word in lower case. */
  readonly word: string;
  readonly standing: Standing;
  readonly missing: readonly PatternId[];
  readonly fault: string | undefined;
}

interface CountedKey {
  readonly of: JudgedKey;
  readonly count: number;
  /** Further keys with the same word and standing. They are stored in the first of these keys. */
  more: CountedKey[] | null;
}

type ByStanding<T> = Record<Standing, T>;

function byStanding<T>(make: (standing: Standing) => T): ByStanding<T> {
  return Object.fromEntries(
    standings.map((standing) => [standing, make(standing)] as const),
  ) as ByStanding<T>;
}

/**
 * Merges keys of one word, which have the same standing, into one entry: Rose and rose, read#0 and read#1. A word still
 * has two entries if one of its keys is a name or is not decodable. A merged entry lacks every pattern that any of its
 * readings lacks. The entries are listed by frequency and then by code unit, in the order of `compareEntries`.
 */
function mergeEntries(keys: readonly CountedKey[]): WordEntry[] {
  const words = new Map<string, CountedKey>();
  for (const one of keys) {
    const first = words.get(one.of.word);
    if (!first) words.set(one.of.word, one);
    else if (first.more) first.more.push(one);
    else first.more = [one];
  }
  // Texts have thousands of words and few different counts.
  const byCount = new Map<number, WordEntry[]>();
  // Without a compare function, the browser sorts strings by code unit, like `byText`, but in a third of the time.
  for (const word of [...words.keys()].sort()) {
    const entry = entryOf(words.get(word)!);
    const alike = byCount.get(entry.count);
    if (alike) alike.push(entry);
    else byCount.set(entry.count, [entry]);
  }
  return [...byCount.keys()].sort((a, b) => b - a).flatMap((count) => byCount.get(count)!);
}

function entryOf({ of, count, more }: CountedKey): WordEntry {
  const { word, standing, missing } = of;
  if (!more) return { word, standing, count, missing };
  const all = [{ of, count }, ...more].sort((a, b) => byText(a.of.key, b.of.key));
  return { word, standing, count: total(all), missing: [...new Set(all.flatMap((one) => one.of.missing))] };
}

function mergeStuck(beyond: readonly WordEntry[], unsure: readonly WordEntry[]): readonly WordEntry[] {
  return unsure.length === 0 ? beyond : [...beyond, ...unsure].sort(compareEntries);
}

function compareEntries(a: WordEntry, b: WordEntry): number {
  return b.count - a.count || byText(a.word, b.word);
}

function findFaults(lists: readonly (readonly CountedKey[])[]): WordFault[] {
  const faults: WordFault[] = [];
  for (const keys of lists) {
    for (const { of } of keys) if (of.fault !== undefined) faults.push({ word: of.key, fault: of.fault });
  }
  return faults.sort((a, b) => byText(a.word, b.word));
}

function tallyUp(counts: ByStanding<number>, skipped: number): Tally {
  const { reads, fresh, unsure, beyond } = counts;
  const readableWords = reads + fresh + counts['by-sight'];
  const running = readableWords + unsure + beyond;
  return {
    running,
    reads,
    fresh,
    bySight: counts['by-sight'],
    names: counts.name,
    unsure,
    beyond,
    skipped: skipped + counts.skipped,
    reach: percentRead(readableWords, running),
  };
}

/** Finds the gaps. Irregular spellings are no gap, because teaching a pattern never opens them. */
function findGaps(
  stuck: readonly CountedKey[],
  entries: readonly WordEntry[],
  { look, openersOf }: Openers,
): Gap[] {
  const gaps = gapsOf(entries);
  gaps.delete(IRREGULAR);
  look(gaps.keys());
  for (const { of, count } of stuck) {
    for (const id of openersOf(of.key)) {
      const gap = gaps.get(id);
      if (gap) gap.opens += count;
    }
  }
  return [...gaps.values()]
    .sort((a, b) => b.opens - a.opens || b.running - a.running || a.row - b.row)
    .map(({ pattern, opens, words }) => ({ pattern, opens, words }));
}

/** Finds the patterns that open an unreadable word, each taught alone. */
interface Openers {
  /** Adds patterns to be tried. */
  look(patterns: Iterable<PatternId>): void;
  openersOf(key: WordKey): readonly PatternId[];
}

/**
 * Creates the openers. A word is judged again as if a pattern were taught, because one pattern can bring another with
 * it (short a brings the weak a of about). A pattern is tried only for words that lack the pattern or another that it
 * brings.
 */
function createOpeners(judge: Judge): Openers {
  const tried = new Map<PatternId, Judge>();
  const bringing = new Map<PatternId, PatternId[]>();
  const known = new Map<WordKey, readonly PatternId[]>();
  return {
    look(patterns) {
      for (const pattern of patterns) {
        if (tried.has(pattern)) continue;
        const taught = judge.ifTaught(pattern);
        tried.set(pattern, taught);
        for (const id of gained(judge, taught)) {
          const others = bringing.get(id);
          if (others) others.push(pattern);
          else bringing.set(id, [pattern]);
        }
        known.clear();
      }
    },
    openersOf(key) {
      const before = known.get(key);
      if (before) return before;
      const patterns = new Set([...judge.lacks(key)].flatMap((id) => bringing.get(id) ?? []));
      const openers = [...patterns].filter((id) => readable.has(tried.get(id)!(key).standing));
      known.set(key, openers);
      return openers;
    },
  };
}

/** Lists the patterns that the second judge knows and the first does not. */
function gained({ group: before }: Judge, { group: after }: Judge): PatternId[] {
  const ids: PatternId[] = [];
  for (const [i, bits] of after.taught.entries()) {
    let more = bits & ~before.taught[i]!;
    for (let bit = 0; more !== 0; bit++, more >>>= 1) {
      if (more & 1) ids.push(catalogue[i * 32 + bit]!.id);
    }
  }
  return ids;
}

/** A gap whose words are still being counted. */
interface OpenGap {
  readonly pattern: PatternId;
  /** The row of the pattern in the catalogue. */
  readonly row: number;
  readonly words: string[];
  running: number;
  opens: number;
}

function gapsOf(entries: readonly WordEntry[]): Map<PatternId, OpenGap> {
  const gaps = new Map<PatternId, OpenGap>();
  for (const { word, count, missing } of entries) {
    for (const pattern of missing) {
      const gap = gaps.get(pattern);
      if (gap) {
        gap.words.push(word);
        gap.running += count;
      } else
        gaps.set(pattern, { pattern, row: bitOf.get(pattern)!, words: [word], running: count, opens: 0 });
    }
  }
  return gaps;
}

function total(items: readonly { readonly count: number }[]): number {
  return items.reduce((sum, { count }) => sum + count, 0);
}

/** Compares by code unit, so that the order is the same on every machine. */
function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
