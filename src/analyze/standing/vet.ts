import { bitOf } from '../catalogue/catalogue.ts';
import type { Gap, Report, Standing, Tally, Verdict, WordEntry, WordKey } from '../types.ts';
import type { Judge } from './judge.ts';
import { IRREGULAR } from './read-fields.ts';

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
  return { words: entries, tally: tallyUp(entries, skipped), gaps: findGaps(judged, entries, judge) };
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
  return [...counts].sort(([a], [b]) => byText(a, b));
}

/** One entry for Rose and rose when they stand alike, two when one is a name. */
function mergeEntries(judged: readonly JudgedKey[]): WordEntry[] {
  const entries = new Map<string, WordEntry>();
  for (const { key, count, verdict } of judged) {
    const word = key.toLowerCase();
    const id = `${word} ${verdict.standing}`;
    entries.set(id, { word, count: count + (entries.get(id)?.count ?? 0), ...verdict });
  }
  return [...entries.values()].sort(
    (a, b) =>
      standings.indexOf(a.standing) - standings.indexOf(b.standing) ||
      b.count - a.count ||
      byText(a.word, b.word),
  );
}

function tallyUp(entries: readonly WordEntry[], skipped: number): Tally {
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
    reach: running === 0 ? 100 : Math.round((readableWords / running) * 1000) / 10,
  };
}

/**
 * What each lacking pattern would open is found by judging again as if it were taught, because one pattern
 * can bring another with it (short a brings the weak a of about). Irregular spellings are no gap: no
 * teaching of a pattern opens them.
 */
function findGaps(judged: readonly JudgedKey[], entries: readonly WordEntry[], judge: Judge): Gap[] {
  const stuck = judged.filter(({ verdict: { standing } }) => standing === 'beyond' || standing === 'unsure');
  const lacking = new Map<string, { words: string[]; running: number }>();
  for (const { word, count, standing, missing } of entries) {
    if (standing !== 'beyond' && standing !== 'unsure') continue;
    for (const pattern of missing) {
      const gap = lacking.get(pattern) ?? { words: [], running: 0 };
      gap.words.push(word);
      gap.running += count;
      lacking.set(pattern, gap);
    }
  }
  return [...lacking]
    .filter(([pattern]) => pattern !== IRREGULAR)
    .map(([pattern, { words, running }]) => {
      const taught = judge.ifTaught(pattern);
      const opens = stuck.reduce(
        (sum, { key, count }) => sum + (readable.has(taught(key).standing) ? count : 0),
        0,
      );
      return { pattern, opens, words, running, row: bitOf.get(pattern) ?? bitOf.size };
    })
    .sort((a, b) => b.opens - a.opens || b.running - a.running || a.row - b.row)
    .map(({ pattern, opens, words }) => ({ pattern, opens, words }));
}

/** By code unit, so that the order is the same on every machine. */
function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
