import { cutWords, type Piece } from '../../swap/cut-words.ts';
import { findForms, type Lemmas } from '../../swap/find-forms.ts';
import type { Irregulars } from '../../swap/inflect.ts';
import { partFeatures } from '../../swap/part-features.ts';
import { PARTS_OF_SPEECH } from '../../swap/table-format.ts';
import type { WordForm } from '../../swap/types.ts';
import { type Part, readBrown } from '../homographs/read-brown.ts';
import type { Synsets } from './read-synsets.ts';

interface Example {
  readonly features: readonly string[];
  readonly usual: readonly number[];
  readonly open: readonly number[];
  readonly right: number;
}

const ROUNDS = 6;
const STEP = 0.15;
/** The fewest occurrences of a feature that is kept. Rarer features would be learnt by heart. */
const LEAST = 20;
/** The size below which weights are dropped. Such small weights change nothing. */
const SMALL = 8;

/** The parts of speech of the Brown corpus, as indexes in `PARTS_OF_SPEECH`. */
const BROWN: Readonly<Partial<Record<Part, number>>> = {
  n: 0,
  N: 0,
  v: 1,
  z: 1,
  d: 1,
  e: 1,
  g: 1,
  a: 2,
  r: 3,
};

/**
 * Learns how strongly each neighbour points to each part of speech. The sources are the Brown corpus, which was marked
 * by hand, and WordNet's example phrases for words of a known part of speech ("put out the lights": verb). The weights
 * are in hundredths. The model is log-linear and learnt by plain gradient steps in a fixed order.
 */
export function learnParts(
  { byId }: Synsets,
  table: Lemmas & Irregulars,
  share: (word: string) => readonly number[] | null,
): Record<string, number[]> {
  const known = new Map<string, readonly WordForm[]>();
  const formsOf = (word: string): readonly WordForm[] => {
    const forms = known.get(word) ?? findForms(word, table);
    known.set(word, forms);
    return forms;
  };
  const examples: Example[] = [];
  const seen = new Map<string, number>();
  function note(pieces: readonly Piece[], at: number, right: number): void {
    const open = PARTS_OF_SPEECH.flatMap((each, i) =>
      formsOf(pieces[at]!.lower).some((form) => form.part === each) ? [i] : [],
    );
    if (open.length < 2 || !open.includes(right)) return;
    const features = partFeatures(pieces, at, share);
    for (const feature of features) seen.set(feature, (seen.get(feature) ?? 0) + 1);
    const usual = share(pieces[at]!.lower) ?? [0.25, 0.25, 0.25, 0.25];
    examples.push({ features, usual, open, right });
  }
  for (const { part, words, examples: phrases } of byId.values()) {
    const lemmas = new Set(words);
    for (const phrase of phrases) {
      const pieces = cutWords(phrase);
      const at = pieces.findIndex(({ lower }) =>
        formsOf(lower).some((form) => form.part === part && lemmas.has(form.lemma)),
      );
      if (at >= 0) note(pieces, at, PARTS_OF_SPEECH.indexOf(part));
    }
  }
  for (const sentence of readBrown() ?? []) {
    const pieces = sentence.map(({ word }, i): Piece => ({ start: i, end: i, lower: word.toLowerCase() }));
    sentence.forEach(({ part }, at) => {
      const right = BROWN[part];
      if (right !== undefined) note(pieces, at, right);
    });
  }
  const weights = new Map<string, number[]>();
  for (const [feature, count] of seen) if (count >= LEAST) weights.set(feature, [0, 0, 0, 0]);
  for (let round = 0; round < ROUNDS; round++) {
    for (const { features, usual, open, right } of examples) {
      const lists = features.map((feature) => weights.get(feature)).filter((list) => list !== undefined);
      if (lists.length === 0) continue;
      const scores = open.map((i) =>
        Math.exp(lists.reduce((sum, list) => sum + list[i]!, 0) + Math.log(usual[i]! + 0.02)),
      );
      const total = scores.reduce((a, b) => a + b);
      open.forEach((i, n) => {
        const step = (STEP / (1 + round)) * ((i === right ? 1 : 0) - scores[n]! / total);
        for (const list of lists) list[i]! += step;
      });
    }
  }
  const learnt: Record<string, number[]> = {};
  for (const [feature, list] of [...weights].sort(([one], [other]) => (one < other ? -1 : 1))) {
    const rounded = list.map((weight) => Math.round(weight * 100));
    if (rounded.some((weight) => Math.abs(weight) >= SMALL)) learnt[feature] = rounded;
  }
  return learnt;
}
