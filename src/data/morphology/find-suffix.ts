import { SUFFIXES, type Suffix } from '../../analyze/morphology/affixes.ts';
import { restoreStem } from '../../analyze/morphology/restore-stem.ts';
import type { SpellingChange } from '../../analyze/types.ts';
import type { Derivation } from './derivation.ts';
import { mentions, pointsTo, showsKinship } from './evidence.ts';
import { type Facts, isLemma, looksLikeName, partsOf, RAREST, rankOf, shareOne } from './lexical-facts.ts';
import { matchSuffixSound, type Sounds } from './match-sound.ts';

export interface Candidate {
  readonly derivation: Derivation;
  /** Higher is likelier; only compared among candidates of one word. */
  readonly score: number;
}

const BY_ENDING = new Map<string, Suffix[]>();
for (const suffix of SUFFIXES) {
  const ending = suffix.text.slice(-1);
  BY_ENDING.set(ending, [...(BY_ENDING.get(ending) ?? []), suffix]);
}

/** -ness, -less, -ful and the like on a base that sounds the same hardly ever deceive: the few are in the deny list. */
const TRUSTED = new Set(['ness', 'less', 'ful', 'ally', 'hood']);

/** Trusted likewise when the base is also the commoner word. */
const NATIVE = new Set([
  'ish',
  'ment',
  'some',
  'like',
  'ward',
  'wards',
  'wise',
  'ship',
  'dom',
  'teen',
  'able',
]);

/** What a definition calls a ship. */
const VESSELS = ['ship', 'vessel', 'aircraft', 'spacecraft', 'warship'];

/** self stands a little behind selfish in a frequency list; that is chance. */
const NEARLY = 1.2;

/** What speaks for or against one base of one word. */
interface Evidence {
  readonly word: string;
  readonly stem: string;
  readonly suffix: Suffix;
  readonly change: SpellingChange;
  /** The base is heard whole in the word. */
  readonly same: boolean;
  /** WordNet ties word and base together; where the base is only nearly heard, by a pointer. */
  readonly kin: boolean;
  /** The base is the commoner word, or nearly. */
  readonly commoner: boolean;
  /** Parts of speech of the base, as letters. */
  readonly parts: string;
  /** Parts of speech WordNet gives the word itself; empty for most inflected forms. */
  readonly own: string;
}

/** Every suffix that may have made `word`. `found` holds the derivations of shorter words. */
export function findSuffixes(
  word: string,
  words: ReadonlyMap<string, readonly Sounds[]>,
  facts: Facts,
  found: ReadonlyMap<string, Derivation>,
): Candidate[] {
  const candidates: Candidate[] = [];
  const own = isLemma(word, facts) ? [...facts.lemmas.get(word)!].join('') : '';
  for (const suffix of BY_ENDING.get(word.at(-1)!) ?? []) {
    for (const { stem, change } of restoreStem(word, suffix.text)) {
      const readings = words.get(stem);
      const parts = readings && stem !== word ? partsOf(stem, facts, found) : '';
      if (!readings || !shareOne(suffix.joins, parts)) continue;
      const fit = bestReading(words.get(word)!, readings, suffix, change === 'y-to-i');
      if (!fit) continue;
      const kin =
        own !== '' &&
        (fit.same || suffix.reshapes || suffix.text === 'ed' || suffix.text === 'ing'
          ? showsKinship(word, stem, facts)
          : pointsTo(word, stem, facts));
      const commoner = rankOf(stem, facts) < NEARLY * rankOf(word, facts);
      const evidence = { word, stem, suffix, change, same: fit.same, kin, commoner, parts, own };
      if (!plausible(evidence, facts, found)) continue;
      candidates.push({
        derivation: {
          base: stem,
          affix: suffix.text,
          kind: 'suffix',
          change,
          wordReading: fit.word,
          baseReading: fit.same ? fit.base : -1,
        },
        score: weigh(evidence, facts, found),
      });
    }
  }
  return candidates;
}

/**
 * Commoner bases first (masses of mass, not of masse), unlikely ones after any prefix or compound (unarmed is
 * un + armed, not unarm + ed).
 */
function weigh(
  { word, stem, suffix, change, same, kin }: Evidence,
  facts: Facts,
  found: ReadonlyMap<string, Derivation>,
) {
  // leaves is first of all more than one leaf.
  if (change === 'f-to-v') return 200;
  const rank = rankOf(stem, facts);
  const unlikely =
    !(kin && !suffix.inflection) &&
    !(found.has(stem) && isLemma(stem, facts)) &&
    rank > 4 * rankOf(word, facts);
  const rare = unlikely ? (rank >= RAREST ? 60 : 30) : 0;
  const sure = suffix.inflection && suffix.text !== 'er' ? 100 : 80;
  const score = sure + (kin ? 10 : 0) + (same ? 5 : 0) - rare + stem.length - 4 * Math.log10(rank);
  // creation is create + ion, not cre + ation; bravery and directory are not braver, director + y.
  if (suffix.text === 'ion' && stem.endsWith('ate')) return score + 15;
  return suffix.text === 'y' && /^[eo]r$/.test(found.get(stem)?.affix ?? '') ? score - 15 : score;
}

function bestReading(word: readonly Sounds[], base: readonly Sounds[], suffix: Suffix, yChanged: boolean) {
  let near: { word: number; base: number; same: boolean } | null = null;
  for (const [w, wordSounds] of word.entries()) {
    for (const [b, baseSounds] of base.entries()) {
      const match = matchSuffixSound(baseSounds, wordSounds, suffix, yChanged);
      if (match === 'same') return { word: w, base: b, same: true };
      if (match === 'near') near ??= { word: w, base: b, same: false };
    }
  }
  return near;
}

function plausible(evidence: Evidence, facts: Facts, found: ReadonlyMap<string, Derivation>): boolean {
  const { word, stem, suffix, same, kin, commoner } = evidence;
  switch (suffix.text) {
    case 's':
    case 'es':
      return takesS(evidence, facts, found);
    case 'ed':
    case 'ing':
    case 'est':
    case 'er':
      if (comparesAdjective(evidence, facts)) return true;
      if (looksLikeName(word, facts) && (!facts.rank.has(word) || isNamesake(evidence, facts))) break;
      if (suffix.text === 'er') return takesEr(evidence, facts);
      if (suffix.text === 'est') return evidence.own === '' || commoner || kin;
      return takesVerbEnding(evidence);
    default:
      if (!looksLikeName(word, facts)) return isDerived(evidence, facts);
  }
  // Words no list counts (rare, or surnames): trust only plain endings of known verbs and adjectives.
  const unseen = !facts.rank.has(word) && !facts.names?.has(word);
  if (!unseen || !/^(ed|ing|ly|ness)$/.test(suffix.text) || !same) return false;
  return isLemma(stem, facts) && rankOf(stem, facts) < RAREST;
}

/** muddier, rosiest: no list may count them, or only as names, but their base is an adjective; not barrier or terrier. */
function comparesAdjective({ word, stem, suffix, change, same, own }: Evidence, facts: Facts): boolean {
  if (!/^(er|est)$/.test(suffix.text) || change !== 'y-to-i' || !same) return false;
  return (
    /^a?$/.test(own) && isLemma(stem, facts) && facts.lemmas.get(stem)!.has('a') && !facts.names?.has(word)
  );
}

/** Mostly written with a capital: a name, but for verb forms that often begin a sentence (supposing). */
function isNamesake({ word, stem, suffix, same, parts }: Evidence, facts: Facts): boolean {
  if (!facts.capitalised?.has(word)) return false;
  const verbForm = /^(ed|ing)$/.test(suffix.text) && same && stem.length > 3 && parts.includes('v');
  return !verbForm || (facts.names?.has(word) ?? false);
}

function takesS(
  { word, stem, change, same, kin, commoner, own }: Evidence,
  facts: Facts,
  found: ReadonlyMap<string, Derivation>,
): boolean {
  if (change === 'f-to-v') return same && facts.lemmas.get(stem)!.has('n');
  if (!isLemma(stem, facts) && !found.has(stem)) return stem.length > 3 && commoner;
  if (facts.names?.has(word) && !commoner) return false;
  if (facts.capitalised?.has(word) && !commoner && !(same && stem.length > 2)) return false;
  if (!same && !commoner && (stem.length < 4 || own !== '')) return false;
  return own === '' || commoner || kin || (same && stem.length > 2);
}

function takesVerbEnding({ stem, suffix, change, same, kin, commoner, parts, own }: Evidence): boolean {
  // committee and feed are no past forms, and only long nouns take -ed: talented, skilled; not seed.
  if (stem.endsWith('ee') && own.includes('n') && !kin) return false;
  if (!parts.includes('v')) return suffix.text === 'ed' && same && stem.length > 3 && !/[nv]/.test(own);
  if (own === '' || kin) return true;
  const long = stem.length > (suffix.text === 'ed' || change === 'double' ? 2 : 3);
  return commoner ? stem.length > 2 : stem.length > (same ? 0 : 4) && long;
}

function takesEr({ stem, change, same, kin, commoner, parts, own }: Evidence, facts: Facts): boolean {
  if (own === '') return shareOne('av', parts) || (commoner && stem.length > 3);
  if (kin) return true;
  if (!same) return false;
  // prisoner, undertaker: a long base is no accident; corner and quarter have short ones.
  if (stem.length > 5) return true;
  if (!commoner || stem.length < 3) return false;
  if (!/[nv]/.test(own)) return true;
  // stranger, loner, madder: also words by themselves, yet plain comparatives; not offer, whose off is too short.
  if (facts.lemmas.get(stem)?.has('a') && (stem.length > 3 || change === 'double')) return true;
  return parts.includes('v') && !own.includes('v') && stem.length > 3;
}

function isDerived(evidence: Evidence, facts: Facts): boolean {
  const { word, stem, suffix, change, same, kin, commoner, parts, own } = evidence;
  if (own === '' && suffix.text === 'en')
    return same && commoner && parts.includes('v') && change !== 'double';
  if (own === '') return same && commoner && stem.length > 3 && (TRUSTED.has(suffix.text) || stem.length > 4);
  if (!shareOne(suffix.makes, own)) return false;
  // A warship is a ship, an airship an aircraft: they are compounds.
  if (suffix.text === 'ship' && VESSELS.some((vessel) => mentions(word, vessel, facts))) return false;
  if (kin) return same || stem.length > 3 || commoner;
  if (stem.length < 3 || rankOf(stem, facts) >= RAREST) return false;
  return same ? takesPlainly(evidence) : takesReshaping(evidence);
}

/** The base is heard whole, but no definition says so. */
function takesPlainly({ stem, suffix, change, commoner, parts, own }: Evidence): boolean {
  if (stem.length > 5 || TRUSTED.has(suffix.text)) return true;
  const middling = stem.length > 4 && commoner;
  switch (suffix.text) {
    case 'ly':
      // lonely, partly, lovely; not belly or reply, which are no adjectives.
      if (parts.includes('a')) return /[ar]/.test(own) || commoner;
      return parts.includes('n') && /[ar]/.test(own) && !own.includes('v') && commoner && !stem.endsWith('l');
    case 'y':
      return own === 'a' && (commoner || stem.length > 4);
    case 'en':
      // brighten, taken; not kitten, a noun, nor hidden, whose base is not hid.
      return commoner && change !== 'double' && !own.includes('n') && shareOne('va', parts);
    case 'al':
      return stem.endsWith('ic');
    case 'ish':
      return commoner && own === 'a';
    case 'ify':
      return commoner && parts.includes('a');
    case 'ist':
    case 'th':
      return commoner && stem.length > 3;
    case 'age':
    case 'ance':
    case 'ation':
    case 'ery':
    case 'ian':
      return middling;
    default:
      return commoner && NATIVE.has(suffix.text);
  }
}

/** The base is heard changed, and no definition names it: only where the kind of base fits as well. */
function takesReshaping({ stem, suffix, parts }: Evidence): boolean {
  if (stem.length < 6) return false;
  switch (suffix.text) {
    case 'ion':
      return /(ate|ct)$/.test(stem) && parts.includes('v');
    case 'ic':
      return parts === 'n';
    case 'able':
    case 'ent':
    case 'ence':
      return parts.includes('v');
    case 'ity':
      return parts === 'a';
    default:
      return false;
  }
}
