import { classOf } from './word-classes.ts';

/** A feature that starts so tells the topic of a sentence, not the build of it. */
export const TOPIC = '~';

const PAST = new Set('was were had did said went came took made saw got began'.split(' '));
const ADVERBS = new Set(['ly', 'often']);
const BETWEEN = new Set(['subject', 'object', 'owner', 'name', 'other']);
const ASKING = new Set(['does', 'modal', 'has']);

/**
 * What can be told of a homograph's place: the words and word classes around it and how they stand together, the
 * word that governs it (`slot`), its own capital, and the words of the whole context (`~word`) with their tense.
 */
export function contextFeatures(word: string, before: readonly string[], after: readonly string[]): string[] {
  const at = (n: number) => (n < 0 ? before.at(n) : after[n - 1]);
  const classAt = (n: number) => classOf(at(n), n < 0 && before.length === -n);
  const wordAt = (n: number) => at(n)?.toLowerCase() ?? '';
  const [a2, a1, b1, b2] = [classAt(-2), classAt(-1), classAt(1), classAt(2)];
  const slot = governor(before);
  const features = [
    `-2=${wordAt(-2)}`,
    `-1=${wordAt(-1)}`,
    `+1=${wordAt(1)}`,
    `+2=${wordAt(2)}`,
    `-2:${a2}`,
    `-1:${a1}`,
    `+1:${b1}`,
    `+2:${b2}`,
    `-2:${a2} -1:${a1}`,
    `-1:${a1} +1:${b1}`,
    `-1-${wordAt(-1).slice(-2)}`,
    `+1-${wordAt(1).slice(-2)}`,
    `slot:${slot}`,
    `slot:${slot} +1:${b1}`,
  ];
  if (/^\p{Lu}/u.test(word)) features.push(before.length > 0 ? 'capital' : 'capital first');
  const around = new Set([...before, ...after].map((piece) => piece.toLowerCase()));
  for (const one of around) if (one.length > 2) features.push(TOPIC + one);
  const past = [...around].some((one) => PAST.has(one) || (one.endsWith('ed') && classOf(one) === 'ed'));
  features.push(`${TOPIC}:${past ? 'past' : 'no past'}`);
  return features;
}

/**
 * The class of the word that governs a place, behind adverbs and behind a subject that stands after its verb:
 * `modal` in `can often —`, `modal?` in `can the crew —`; not so in `the crew can see the —`.
 */
export function governor(before: readonly string[]): string {
  const at = (i: number) => classOf(before[i], i === 0);
  let i = before.length - 1;
  while (i >= 0 && ADVERBS.has(at(i))) i--;
  const here = at(i);
  if (!BETWEEN.has(here)) return here;
  if (ASKING.has(at(i - 1))) return `${at(i - 1)}?`;
  return here === 'other' && ASKING.has(at(i - 2)) ? `${at(i - 2)}?` : here;
}
