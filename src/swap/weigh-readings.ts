import type { Piece } from './cut-words.ts';
import { findForms } from './find-forms.ts';
import type { SwapTable } from './open-swaps.ts';
import { partFeatures } from './part-features.ts';
import { ruleOut } from './rule-out.ts';
import { PARTS_OF_SPEECH } from './table-format.ts';
import type { WordForm } from './types.ts';

/**
 * A reading of the word, with its likelihood in this sentence, from 0 to 1. The likelihoods of all readings add up to
 * 1.
 */
export interface WeighedReading extends WordForm {
  readonly likely: number;
}

/**
 * Returns the readings of the word at `at`, the likeliest first. They are weighed by the lemma's usual part of speech
 * and by the neighbours. If past and participle are spelt alike, the participle is chosen after have or be (was torn),
 * otherwise the past.
 */
export function weighReadings(pieces: readonly Piece[], at: number, table: SwapTable): WeighedReading[] {
  const { lower } = pieces[at]!;
  const forms = settleParticiples(findForms(lower, table), pieces, at);
  if (forms.length === 0) return [];
  const share = (word: string): readonly number[] | null => sharesOfForm(word, table);
  const evidence = sumWeights(partFeatures(pieces, at, share), table.partWeights);
  const usual = share(lower) ?? [0.25, 0.25, 0.25, 0.25];
  const [before, after] = [pieces[at - 1]?.lower ?? '', pieces[at + 1]?.lower ?? ''];
  const weights = forms.map((form) => {
    const i = PARTS_OF_SPEECH.indexOf(form.part);
    return Math.exp(evidence[i]! + Math.log(usual[i]! + 0.02) + ruleOut(form, before, after));
  });
  const sum = weights.reduce((a, b) => a + b);
  return forms
    .map((form, i) => ({ ...form, likely: weights[i]! / sum }))
    .sort((one, other) => other.likely - one.likely);
}

/** The sum of the features for each part of speech. */
export function sumWeights(
  features: readonly string[],
  weights: Readonly<Record<string, readonly number[]>>,
): number[] {
  const sums = [0, 0, 0, 0];
  for (const feature of features) {
    const learnt = weights[feature];
    if (learnt) for (let i = 0; i < sums.length; i++) sums[i]! += learnt[i]! / 100;
  }
  return sums;
}

/**
 * Returns the shares of a form's parts of speech, from its lemmas. The form walked has its own shares and the share of
 * walk as a verb.
 */
export function sharesOfForm(word: string, table: SwapTable): readonly number[] | null {
  const own = table.shares(word);
  const inflected = findForms(word, table).filter(({ form }) => form !== 'base');
  if (inflected.length === 0) return own;
  const shares = [0, 0, 0, 0];
  for (const [lemma, part] of new Map(inflected.map(({ lemma, part }) => [lemma, part] as const))) {
    const i = PARTS_OF_SPEECH.indexOf(part);
    shares[i]! += table.shares(lemma)?.[i] ?? 0;
    if (part === 'v') shares[1]! = Math.max(shares[1]!, 0.5);
  }
  const nounAndVerb = inflected.filter(({ form }) => form === 's');
  for (const { lemma, part } of nounAndVerb) {
    const i = PARTS_OF_SPEECH.indexOf(part);
    shares[i] = Math.max(shares[i]!, table.shares(lemma)?.[i] ?? 0);
  }
  for (const [i, share] of (own ?? []).entries()) shares[i] = Math.max(shares[i]!, share);
  const sum = shares.reduce((a, b) => a + b) || 1;
  return shares.map((share) => share / sum);
}

const HELPERS =
  /^(have|has|had|having|'ve|be|is|are|was|were|been|being|am|get|gets|got|getting|\w+'(ve|d|s|re))$/;
const BETWEEN =
  /^(not|never|always|often|also|just|only|already|been|being|now|still|soon|so|too|very|\w+ly|he|she|it|they|we|you|i)$/;

function settleParticiples(forms: readonly WordForm[], pieces: readonly Piece[], at: number): WordForm[] {
  const participle = isParticiple(pieces, at);
  return forms.filter(({ lemma, part, form }) => {
    if (form !== 'past' && form !== 'participle') return true;
    const both = (other: string): boolean =>
      forms.some((entry) => entry.lemma === lemma && entry.part === part && entry.form === other);
    if (!both('past') || !both('participle')) return true;
    return (form === 'participle') === participle;
  });
}

function isParticiple(pieces: readonly Piece[], at: number): boolean {
  for (let i = at - 1; i >= 0; i--) {
    const { lower } = pieces[i]!;
    if (HELPERS.test(lower)) return true;
    if (!BETWEEN.test(lower)) break;
  }
  const before = pieces[at - 1]?.lower;
  return pieces[at + 1]?.lower === 'by' || before === 'the' || before === 'a' || before === 'an';
}
