import { catalogue } from '../catalogue/catalogue.ts';
import { bitOf } from '../catalogue/names.ts';
import { splitKey } from '../homographs/word-key.ts';
import { IRREGULAR } from '../patterns/irregular.ts';
import type { Gap, PatternId, Report, Standing, Tally, Verdict, WordEntry, WordKey } from '../types.ts';
import type { Judge } from './judge.ts';

/** A text as counts: how often each word key occurs, and how many tokens were left out of the count. */
export interface WordCounts {
  readonly words: Iterable<readonly [WordKey, number]>;
  readonly skipped: number;
}

/**
 * Judges a whole text. Words come in the order of `standings`, the frequent first; gaps with those that open
 * most running words first. The order of the input does not matter.
 */
export function vet({ words, skipped }: WordCounts, judge: Judge): Report {
  const counted = mergeKeys(words);
  const judged = counted.map(([key, count]) => ({ key, count, verdict: judge(key) }));
  const entries = mergeEntries(judged);
  const faults = judged.flatMap(({ key, verdict: { fault } }) =>
    fault === undefined ? [] : [{ word: key, fault }],
  );
  return { words: entries, tally: tallyUp(entries, skipped), gaps: findGaps(judged, entries, judge), faults };
}

/** The counts of a text alone: far cheaper than all of `vet`, with the same figures. */
export function tallyText({ words, skipped }: WordCounts, judge: Judge): Tally {
  return tallyUp(
    Array.from(words, ([key, count]) => ({ count, standing: judge(key).standing })),
    skipped,
  );
}

/** The share of running words that can be read, in percent with one decimal; 100 where there are none. */
export function percentRead(readableWords: number, running: number): number {
  return running === 0 ? 100 : Math.round((readableWords / running) * 1000) / 10;
}

interface JudgedKey {
  readonly key: WordKey;
  readonly count: number;
  readonly verdict: Verdict;
}

const standings: readonly Standing[] = ['beyond', 'unsure', 'fresh', 'reads', 'by-sight', 'name', 'skipped'];
const readable: ReadonlySet<Standing> = new Set<Standing>(['reads', 'fresh', 'by-sight']);

function mergeKeys(words: WordCounts['words']): [WordKey, number][] {
  const counts = new Map<WordKey, number>();
  for (const [key, count] of words) counts.set(key, (counts.get(key) ?? 0) + count);
  // Without a rule of its own the browser sorts strings by their units, as `byText` does, and in a third of the time.
  return [...counts.keys()].sort().map((key) => [key, counts.get(key)!]);
}

/**
 * One entry for Rose and rose, for read#0 and read#1, when they stand alike: two when one is a name, or one is not
 * decodable. Merged readings lack what any of them lacks.
 */
function mergeEntries(judged: readonly JudgedKey[]): WordEntry[] {
  const groups = new Map(standings.map((standing) => [standing, new Map<string, WordEntry>()]));
  for (const { key, count, verdict } of judged) {
    const { standing, missing } = verdict;
    const word = splitKey(key).word.toLowerCase();
    const entries = groups.get(standing)!;
    const known = entries.get(word);
    const merged =
      known || missing.length > 1 ? [...new Set([...(known?.missing ?? []), ...missing])] : missing;
    entries.set(word, { word, standing, count: count + (known?.count ?? 0), missing: merged });
  }
  return [...groups.values()].flatMap((entries) =>
    [...entries.values()].sort((a, b) => b.count - a.count || byText(a.word, b.word)),
  );
}

function tallyUp(entries: readonly Pick<WordEntry, 'standing' | 'count'>[], skipped: number): Tally {
  const of = (...wanted: Standing[]) =>
    entries.reduce((sum, { standing, count }) => sum + (wanted.includes(standing) ? count : 0), 0);
  const readableWords = of('reads', 'fresh', 'by-sight');
  const running = readableWords + of('unsure', 'beyond');
  return {
    running,
    reads: of('reads'),
    fresh: of('fresh'),
    bySight: of('by-sight'),
    names: of('name'),
    unsure: of('unsure'),
    beyond: of('beyond'),
    skipped: skipped + of('skipped'),
    reach: percentRead(readableWords, running),
  };
}

/**
 * What each lacking pattern would open is found by judging again as if it were taught, because one pattern
 * can bring another with it (short a brings the weak a of about). Irregular spellings are no gap: no
 * teaching of a pattern opens them.
 */
function findGaps(judged: readonly JudgedKey[], entries: readonly WordEntry[], judge: Judge): Gap[] {
  const stuck = judged.filter(({ verdict }) => isStuck(verdict));
  const stuckBy = groupBy(stuck, ({ key }) => judge.lacks(key));
  const words = groupBy(
    entries.filter(isStuck).toSorted((a, b) => b.count - a.count || byText(a.word, b.word)),
    ({ missing }) => missing,
  );
  words.delete(IRREGULAR);

  return [...words]
    .map(([pattern, lacking]) => {
      const taught = judge.ifTaught(pattern);
      const touched = new Set(gained(judge, taught).flatMap((id) => stuckBy.get(id) ?? []));
      const opened = [...touched].filter(({ key }) => readable.has(taught(key).standing));
      return { pattern, opens: total(opened), lacking, running: total(lacking), row: bitOf.get(pattern)! };
    })
    .sort((a, b) => b.opens - a.opens || b.running - a.running || a.row - b.row)
    .map(({ pattern, opens, lacking }) => ({ pattern, opens, words: lacking.map(({ word }) => word) }));
}

function isStuck({ standing }: Verdict): boolean {
  return standing === 'beyond' || standing === 'unsure';
}

/** The patterns a judge knows that another does not. */
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

function groupBy<T>(items: readonly T[], idsOf: (item: T) => Iterable<PatternId>): Map<PatternId, T[]> {
  const groups = new Map<PatternId, T[]>();
  for (const item of items) {
    for (const id of idsOf(item)) {
      const group = groups.get(id);
      if (group) group.push(item);
      else groups.set(id, [item]);
    }
  }
  return groups;
}

function total(items: readonly { readonly count: number }[]): number {
  return items.reduce((sum, { count }) => sum + count, 0);
}

/** By code unit, so that the order is the same on every machine. */
function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
