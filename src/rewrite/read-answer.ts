import { LONGEST_TEXT } from './write-prompt.ts';

/**
 * The most characters of an answer. A longer answer is not read. The rewritings asked for take a few hundred
 * characters.
 */
const MOST = 20_000;
const MOST_CANDIDATES = 12;

/** Returns the rewritings in a model's answer, without duplicates. The list is empty if the answer has another format. */
export function readAnswer(answer: unknown): string[] {
  const texts = readList(answer, 'candidates')
    .slice(0, MOST_CANDIDATES)
    .filter((text): text is string => typeof text === 'string' && text.length <= LONGEST_TEXT)
    .map((text) => text.normalize('NFC').trim())
    .filter(isPlainText);
  return [...new Set(texts)];
}

/** Returns the list with this name in a model's JSON. The list is empty if the answer has another format. */
export function readList(answer: unknown, name: string): readonly unknown[] {
  if (typeof answer !== 'string' || answer.length > MOST) return [];
  // Models often put their JSON into a fenced code block.
  const json = /^\s*```(?:json)?\s*([\s\S]*?)\s*```\s*$/.exec(answer)?.[1] ?? answer;
  let read: unknown;
  try {
    read = JSON.parse(json);
  } catch {
    return [];
  }
  const list = ownValue(read, name);
  return Array.isArray(list) ? list : [];
}

/** Returns the value with this name that the object itself has; undefined for anything else. */
export function ownValue(of: unknown, name: string): unknown {
  const has = of !== null && typeof of === 'object' && Object.hasOwn(of, name);
  return has ? (of as Record<string, unknown>)[name] : undefined;
}

/**
 * Whether a text consists only of sentences: no markup, no code, no web address, no second line. The text must end like
 * a sentence.
 */
export function isPlainText(text: string): boolean {
  return (
    /^["“‘']?\p{Lu}[\p{L}\p{N} ,.;:?!'"“”‘’()–—-]*[.?!]["”’']?$/u.test(text) &&
    !/https?:|www\.|\p{L}\.\p{L}{2}/iu.test(text)
  );
}
