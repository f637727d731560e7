import { LONGEST_TEXT } from './write-prompt.ts';

/** A longer answer is not read at all: the rewritings asked for take some hundred characters. */
const MOST = 20_000;
const MOST_CANDIDATES = 12;

/** The rewritings in a model's answer, each once; none where the answer has another form. */
export function readAnswer(answer: unknown): string[] {
  if (typeof answer !== 'string' || answer.length > MOST) return [];
  // Models like to put their JSON into a fence of code.
  const json = /^\s*```(?:json)?\s*([\s\S]*?)\s*```\s*$/.exec(answer)?.[1] ?? answer;
  let read: unknown;
  try {
    read = JSON.parse(json);
  } catch {
    return [];
  }
  const candidates =
    read !== null &&
    typeof read === 'object' &&
    Object.hasOwn(read, 'candidates') &&
    (read as { candidates: unknown }).candidates;
  if (!Array.isArray(candidates)) return [];
  const texts = candidates
    .slice(0, MOST_CANDIDATES)
    .filter((text): text is string => typeof text === 'string' && text.length <= LONGEST_TEXT)
    .map((text) => text.normalize('NFC').trim())
    .filter(isPlainText);
  return [...new Set(texts)];
}

/** Sentences and nothing else: no markup, no code, no address, no second line; it ends as a sentence does. */
function isPlainText(text: string): boolean {
  return (
    /^["“‘']?\p{Lu}[\p{L}\p{N} ,.;:?!'"“”‘’()–—-]*[.?!]["”’']?$/u.test(text) &&
    !/https?:|www\.|\p{L}\.\p{L}{2}/iu.test(text)
  );
}
