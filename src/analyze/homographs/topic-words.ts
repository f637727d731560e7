import { type Feature, TOPIC } from './feature-weights.ts';
import topics from './topic-words.json' with { type: 'json' };

type Topics = ReadonlyMap<string, readonly ReadonlySet<string>[]>;

/** Created for the first homograph in a text. */
let sets: Topics | undefined;

function readTopics(): Topics {
  return new Map(
    Object.entries(topics).map(([word, lists]) => [word, lists.map((list) => new Set(list.split(' ')))]),
  );
}

/** Forms that share the topics of another form. */
const SAME: Readonly<Record<string, string>> = {
  bows: 'bow',
  tears: 'tear',
  sows: 'sow',
  rows: 'row',
  wounds: 'wound',
};
/** Maximum count of topic words. Further words add no information. */
const MOST = 3;

/**
 * Counts how many topic words near a place favour the second reading: `~:topic+2` for `bow` among deck and waves,
 * `~:topic-1` beside arrow. There is no feature if no topic word is near. The words were chosen by hand, from common
 * knowledge of the two meanings.
 */
export function topicFeatures(word: string, near: ReadonlySet<string>): Feature[] {
  const small = word.toLowerCase();
  sets ??= readTopics();
  const [first, second] = sets.get(SAME[small] ?? small) ?? [];
  if (!first || !second) return [];
  let ones = 0;
  let others = 0;
  for (const one of near) {
    if (first.has(one)) ones++;
    if (second.has(one)) others++;
  }
  if (ones + others === 0) return [];
  const lean = Math.max(-MOST, Math.min(MOST, others - ones));
  return [
    [TOPIC, `:topic${lean > 0 ? '+' : ''}${lean}`],
    [TOPIC, ':topic', String(Math.sign(lean))],
  ];
}
