import type { Speech } from '../accent/speech.ts';
import { describeError } from '../describe-error.ts';
import { type KeyParts, splitKey } from '../homographs/word-key.ts';
import { shareEqual } from '../share-equal.ts';
import type { MadeOf, PatternId, Standing, Verdict, WordAnalysis, WordKey } from '../types.ts';
import type { CompiledGroup } from './compile-group.ts';
import { missingOf, neededOf } from './fine-needs.ts';
import { isInitialism } from './is-initialism.ts';
import { isName } from './is-name.ts';
import { hasBit } from './pattern-bits.ts';
import { remember } from './remember.ts';
import { type Weighable, type WeighedReading, type WeighedWord, weighOnce } from './weigh-word.ts';

/** Returns every reading of a word. The engine is such an analyser. */
export interface WordAnalyzer extends WordSource {
  analyze(key: WordKey): WordAnalysis;
  speaking?(speech: Speech): WordAnalyzer;
}

/** Returns the facts about a word on which its standing depends. */
export interface WordSource {
  analyze(key: WordKey): Weighable;
  /** Returns the same analyser in another accent. Left out if there is only one accent. */
  speaking?(speech: Speech): WordSource;
  /** Returns the data of a word from a cache. Left out if the analyser has no cache. */
  recall?(key: WordKey): WeighedWord;
}

/** Returns the standing of a word for one group. */
export interface Judge {
  (key: WordKey): Verdict;
  readonly group: CompiledGroup;
  /**
   * Returns the patterns the group lacks for any reading of the word. `missing` has only the patterns of the easiest
   * reading.
   */
  lacks(key: WordKey): ReadonlySet<PatternId>;
  /** Returns the judge for the same group with one more pattern taught. */
  ifTaught(pattern: PatternId): Judge;
  /**
   * Returns the judge for another group, or for the same group at another step. If both have the same pronunciation, no
   * word is analysed again.
   */
  forGroup(group: CompiledGroup): Judge;
  /**
   * Returns a function that gives only the standing of words for another group with the same pronunciation. Its cache
   * takes a sixth of the memory of a judge's verdicts.
   */
  standingFor(group: CompiledGroup): (key: WordKey) => Standing;
}

/**
 * Creates a judge for one group, in the group's accent. The judge caches its verdicts, so a running text costs one
 * look-up for each word.
 *
 * - A word on the by-sight list is `by-sight`. A word made of such a word is also `by-sight` when the rest is taught.
 * Until then, only the rest is missing. Examples: wants, if want is on the list and -s is taught; someone, if some and
 * one are on the list and compounds are taught. swan is not an example.
 * - A word is decodable if the group can decode any of its readings, because a class pronounces a word in one way.
 * - A word is `unsure` if the analysis marks its readings as different words (homograph: lead, bow) and they have
 * different standings.
 * - A word that cannot be decoded is a `name` if it is listed as a name (Bram, Bram's) or has a capital that makes it a
 * name (`isName`). The word is `unsure` if its reading comes from a rule or a guess. Otherwise the word is `beyond`.
 */
export function createJudge(analyzer: WordSource, group: CompiledGroup): Judge {
  const spoken = inSpeechOf(analyzer, group);
  const analyze = spoken.recall ?? weighOnce(spoken);
  const judgeFor = (group: CompiledGroup): Judge => {
    const share = shareEqual(nameOfVerdict);
    return Object.assign(
      remember((key: WordKey) => share(judgeSafely(key, analyze, group))),
      {
        group,
        lacks: (key: WordKey) =>
          new Set(analyze(key).readings.flatMap((reading) => missingOf(reading, group))),
        ifTaught: (pattern: PatternId) => judgeFor(group.alsoTeaching(pattern)),
        forGroup: (other: CompiledGroup) =>
          speaksAlike(other, group) ? judgeFor(other) : createJudge(analyzer, other),
        standingFor: (other: CompiledGroup) =>
          remember((key: WordKey) => judgeSafely(key, analyze, other).standing),
      },
    );
  };
  return judgeFor(group);
}

/** Returns the analyser in the accent of a group. */
export function inSpeechOf(analyzer: WordSource, { speech }: Pick<CompiledGroup, 'speech'>): WordSource {
  return analyzer.speaking?.(speech) ?? analyzer;
}

function speaksAlike({ speech: one }: CompiledGroup, { speech: other }: CompiledGroup): boolean {
  return one.accent === other.accent && one.bath === other.bath;
}

/** Verdicts with the same name are equal. A text has far fewer verdicts than words. */
function nameOfVerdict({ standing, missing, why, fault = '' }: Verdict): string {
  return `${standing} ${missing.join(' ')} ${why ?? ''} ${fault}`;
}

/** Judges a word so that an error in it affects no other word. */
function judgeSafely(key: WordKey, analyze: (key: WordKey) => WeighedWord, group: CompiledGroup): Verdict {
  try {
    return judgeWord(key, analyze, group);
  } catch (error) {
    return { standing: 'unsure', missing: [], fault: describeError(error) };
  }
}

function judgeWord(key: WordKey, analyze: (key: WordKey) => WeighedWord, group: CompiledGroup): Verdict {
  const parts = splitKey(key);
  const word = parts.word.toLowerCase();
  if (group.skip.has(word)) return { standing: 'skipped', missing: [] };
  const analysis = analyze(key);
  if (parts.capital === 'all' && !group.names.has(word) && isInitialism(word, analysis.usage))
    return { standing: 'skipped', missing: [], why: 'initialism' };
  if (group.bySight.has(word)) return { standing: 'by-sight', missing: [] };
  return judgeReadings(parts, analysis, group);
}

/**
 * Returns the verdict on a word that the group neither skips nor knows by sight. The verdict follows from the readings
 * of the word.
 */
function judgeReadings(parts: KeyParts, analysis: WeighedWord, group: CompiledGroup): Verdict {
  const attempts = analysis.readings
    .filter(({ source }) => source !== 'none')
    .map((reading) => ({ reading, missing: missingOf(reading, group) }));
  const readable = attempts.find(
    ({ reading, missing }) => missing.length === 0 && reading.source !== 'guess',
  );
  const failed = attempts.find(({ missing }) => missing.length > 0);

  if (readable && !(analysis.homograph && failed)) {
    const isFresh = neededOf(readable.reading, group).some((id) => hasBit(group.fresh, id));
    return { standing: isFresh ? 'fresh' : 'reads', missing: [] };
  }
  const byBase = analysis.readings.flatMap((reading) => {
    const missing = missingBesideSight(reading, group);
    return missing === null ? [] : [{ reading, missing }];
  });
  if (byBase.some(({ missing }) => missing.length === 0)) return { standing: 'by-sight', missing: [] };
  if (readable && failed) return { standing: 'unsure', missing: failed.missing };

  const best = [...byBase, ...attempts].toSorted((a, b) => a.missing.length - b.missing.length)[0];
  const isFact = best !== undefined && best.missing.length > 0 && isSure(best.reading);
  return {
    standing: isName(parts, analysis.usage, group) ? 'name' : isFact ? 'beyond' : 'unsure',
    missing: best?.missing ?? [],
    ...(analysis.fault !== undefined && { fault: analysis.fault }),
  };
}

/** Readings from a rule or a guess are never shown as facts. */
function isSure({ source }: WeighedReading): boolean {
  return source === 'dictionary' || source === 'derived';
}

/**
 * Returns the patterns that the group lacks for a word made of by-sight words. A part known by sight needs no pattern.
 * Any other part needs its own patterns, and the joint may need patterns too. Returns null if no part is known by
 * sight.
 */
function missingBesideSight(
  { madeOf }: { readonly madeOf?: MadeOf | null },
  group: CompiledGroup,
): PatternId[] | null {
  if (!madeOf) return null;
  let anyBySight = false;
  const missing = missingOf({ requires: madeOf.joint, fine: madeOf.fineJoint ?? null }, group);
  for (const part of madeOf.parts) {
    const beside = group.bySight.has(part.word) ? [] : missingBesideSight(part, group);
    anyBySight ||= beside !== null;
    missing.push(...fewest(beside, missingOf(part, group)));
  }
  return anyBySight ? [...new Set(missing)].sort() : null;
}

function fewest(some: PatternId[] | null, other: PatternId[]): PatternId[] {
  return some && some.length <= other.length ? some : other;
}
