import type { ReadWord, RewriteTools } from './rewrite-task.ts';

/** The facts of a sentence that no other wording may lose, change or add to. */
export interface Facts {
  /** Names in lower case, without the s of a possessive. */
  readonly names: ReadonlySet<string>;
  /** Numbers in digits, sorted. Both 12 and twelve give `12`. */
  readonly numbers: readonly string[];
  /** The number of negations. “Neither … nor” counts once. */
  readonly negations: number;
  /**
   * The number of words with a partial negation: unhappy, helpless, refused. A rewriting may replace such a word by a
   * `not`.
   */
  readonly softNegations: number;
}

/** Returns names that the group's judge does not know: capitalised words inside a sentence of the passage. */
export function findNames(text: string): ReadonlySet<string> {
  const names = new Set<string>();
  for (const [, word] of text.matchAll(/(?<=[\p{Ll}\p{N},;:] ["“‘(]?)(\p{Lu}[\p{L}’'-]*)/gu))
    if (!NO_NAMES.test(word!)) names.add(plain(word!));
  return names;
}

/** The word I, alone or in a contraction such as I'm. It is not a name. */
const NO_NAMES = /^I(?:['’]\p{L}+)?$/u;

/** Returns the facts of a text. `names` is the result of `findNames` for the passage. */
export function findFacts(
  text: string,
  words: readonly ReadWord[],
  names: ReadonlySet<string>,
  denies: RewriteTools['denies'],
): Facts {
  const found = new Set(findNames(text));
  for (const { start, end, standing } of words) {
    const word = text.slice(start, end);
    const isCapital = /^\p{Lu}/u.test(word);
    if (isCapital && (standing === 'name' || names.has(plain(word))) && !NO_NAMES.test(word))
      found.add(plain(word));
  }
  const lower = text.toLowerCase().replaceAll('’', "'");
  return {
    names: found,
    numbers: findNumbers(lower),
    negations: (lower.match(NEGATION) ?? []).length,
    softNegations: (lower.match(/\p{L}+/gu) ?? []).filter((word) => SOFT.test(word) || denies(word)).length,
  };
}

/** Returns a name in the form used for comparison: `Falk's` becomes falk. */
export function plain(word: string): string {
  return word.toLowerCase().replaceAll('’', "'").replace(/'s?$/, '');
}

const NEGATION =
  /\b(?:not|cannot|no|never|none|nobody|nothing|nowhere|neither|without|hardly|scarcely|barely)\b|n't\b/g;
const SOFT = /^(?:fail|refus|stop|lack|miss|avoid)\p{L}*$/u;

const UNITS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
const POWERS: Readonly<Record<string, number>> = { hundred: 100, thousand: 1000, million: 1e6, billion: 1e9 };

/** Returns the numbers written in digits or in words. A single “one” does not count as a number: the red one. */
function findNumbers(lower: string): string[] {
  const found: string[] = [];
  let sum: number | null = null;
  let said = 0;
  const end = (): void => {
    if (sum !== null && !(said === 1 && sum === 1)) found.push(String(sum));
    sum = null;
    said = 0;
  };
  for (const token of lower.match(/\d[\d.,]*|\p{L}+|[^\s\p{L}\d-]/gu) ?? []) {
    if (/^\d/.test(token)) {
      end();
      found.push(token.replace(/[.,]+$/, '').replace(/,(?=\d{3})/g, ''));
      continue;
    }
    const value = numberOf(token);
    if (value !== null) {
      sum = (sum ?? 0) + value;
      said++;
    } else if (Object.hasOwn(POWERS, token) && sum !== null) {
      sum *= POWERS[token]!;
      said++;
    } else if (Object.hasOwn(POWERS, token) || token === 'dozen') {
      end();
      found.push(token === 'dozen' ? '12' : String(POWERS[token]));
    } else if (token !== 'and' || sum === null) end();
  }
  end();
  return found.sort();
}

function numberOf(word: string): number | null {
  const unit = UNITS.indexOf(word);
  if (unit >= 0) return unit;
  const ten = TENS.indexOf(word);
  return ten >= 0 ? (ten + 2) * 10 : null;
}
