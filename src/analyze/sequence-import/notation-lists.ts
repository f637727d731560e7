import type { PatternId } from '../types.ts';
import { inPlace, longOf, type Notation, wordAt } from './match-words.ts';
import { findPhrase, LONGEST_PHRASE } from './phrases.ts';
import { soundsByName } from './sound-names.ts';
import { familyMember, findSpelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';

export function letterRange(lexemes: readonly Lexeme[], i: number): Notation | null {
  const joint = wordAt(lexemes, i + 1);
  const through = /^(?:through|thru)$/.test(joint) || (joint === 'to' && wordAt(lexemes, i - 1) === 'from');
  const text = through ? `${wordAt(lexemes, i)}-${wordAt(lexemes, i + 2)}` : wordAt(lexemes, i);
  const [, from = '', to = ''] = /^([a-z])-([a-z])$/.exec(text) ?? [];
  // "y to i" is a change, no range.
  if (from === '' || from >= to || (from === 'a' && to === 'z')) return null;
  const plain = lexemes.slice(Math.max(0, i - 4), i).some(({ text }) => /^consonants?$/.test(text));
  const letters = [...'abcdefghijklmnopqrstuvwxyz'].filter(
    (letter) => letter >= from && letter <= to && !(plain && 'aeiou'.includes(letter)),
  );
  const ids = letters.map((letter) =>
    'aeiou'.includes(letter) ? `short-${letter}` : letter === 'q' ? 'qu' : letter,
  );
  const taken = through ? 3 : 1;
  return { taken, given: [{ ...lexemes[i]!, kind: 'meant', ids, end: lexemes[i + taken - 1]!.end }] };
}

export function softSounds(lexemes: readonly Lexeme[], i: number): Notation | null {
  const size = wordAt(lexemes, i);
  if (!/^(?:soft|hard)$/.test(size) || !/^sounds?$/.test(wordAt(lexemes, i + 1))) return null;
  if (!/^(?:of|for|from)$/.test(wordAt(lexemes, i + 2)) || !/^[cg]$/.test(wordAt(lexemes, i + 3)))
    return null;
  return { taken: 3, given: [lexemes[i]!] };
}

/** What may be said once for several letters, and the letters it is said of. */
const shared: Readonly<Record<string, RegExp>> = {
  long: /^[aeiou]$/,
  short: /^[aeiou]$/,
  open: /^[aeiou]$/,
  silent: /^[bcghklnptw]$/,
  double: /^[bdfglmnprstz]$/,
  doubled: /^[bdfglmnprstz]$/,
};

/** "long e, i, o", "silent k, w", "double f, l, s": the word goes for each letter. */
export function repeatWord(lexemes: readonly Lexeme[], i: number): Notation | null {
  const word = lexemes[i]!;
  const letters = Object.hasOwn(shared, word.text) ? shared[word.text]! : null;
  const isListed = (at: number) =>
    letters?.test(wordAt(lexemes, at)) === true &&
    lexemes[at]!.mark === 'none' &&
    lexemes[at + 1]?.kind !== 'is';
  if (!isListed(i + 1)) return null;
  const given: Lexeme[] = sharing(word, lexemes[i + 1]!);
  let end = i + 2;
  for (let next = end; next < lexemes.length; next++) {
    if (isListed(next)) {
      given.push(
        ...lexemes.slice(end, next),
        ...sharing({ ...word, start: lexemes[next]!.start }, lexemes[next]!),
      );
      end = next + 1;
    } else if (lexemes[next]!.kind !== 'break' && !/^(?:and|or)$/.test(wordAt(lexemes, next))) break;
  }
  // A doubled letter is another spelling, even alone.
  return end > i + 2 || word.text.startsWith('double') ? { taken: end - i, given } : null;
}

function sharing(word: Lexeme, letter: Lexeme): Lexeme[] {
  if (word.text.startsWith('double')) return [{ ...letter, start: word.start, text: letter.text.repeat(2) }];
  if (word.text !== 'open') return [word, letter];
  return [{ ...letter, start: word.start, kind: 'meant', ids: longOf[letter.text]! }];
}

export function bothLengths(lexemes: readonly Lexeme[], i: number): Notation | null {
  const isLength = (at: number) => /^(?:long|short)$/.test(wordAt(lexemes, at));
  const joined = /^(?:and|or|[&/+,])$/.test(lexemes[i + 1]?.text ?? '');
  const letters = wordAt(lexemes, i + 3);
  if (!isLength(i) || !joined || !isLength(i + 2) || !/^(?:[aeiou]|oo)$/.test(letters)) return null;
  const vowel = lexemes[i + 3]!;
  const [one, and, other] = lexemes.slice(i, i + 3);
  return { taken: 4, given: [one!, inPlace(one!, letters), and!, other!, vowel] };
}

export function blendsWith(lexemes: readonly Lexeme[], i: number): Notation | null {
  let at = i;
  while (/^(?:initial|beginning|start|starting|consonant|two|letter)$/.test(wordAt(lexemes, at))) at += 1;
  if (!/^(?:blends?|clusters?)$/.test(wordAt(lexemes, at))) return null;
  at += 1;
  while (/^(?:beginning|starting|made|that|begin|start)$/.test(wordAt(lexemes, at))) at += 1;
  if (!/^(?:with|of)$/.test(wordAt(lexemes, at))) return null;
  const given: Lexeme[] = [];
  let end = at + 1;
  for (let next = at + 1; next < lexemes.length; next++) {
    if (/^[lrs]$/.test(wordAt(lexemes, next))) {
      given.push(...lexemes.slice(end, next), lexemes[next]!, inPlace(lexemes[next]!, 'blend'));
      end = next + 1;
    } else if (lexemes[next]!.kind !== 'break' && !/^(?:and|or)$/.test(wordAt(lexemes, next))) break;
  }
  // "blends with l and r" is a phrase of its own.
  if (given.length === 0 || given.map(({ text }) => text).join(' ') === 'l blend and r blend') return null;
  given[0] = { ...given[0]!, start: lexemes[i]!.start };
  return { taken: end - i, given };
}

/** The most words of a syllable type, and of a list of them with all that divides it. */
const LONGEST_TYPE = 4;
const LONGEST_LIST = 60;

const syllableTypes =
  /^(?:closed|open|vce|cvce|silent e|magic e|vowel consonant e|vowel team|vowel digraph|vowel pair|r controlled|consonant le|c le|final stable|stable final|stable)$/;

export function shareSyllable(lexemes: readonly Lexeme[], i: number): Notation | null {
  const given: Lexeme[] = [];
  let start = i;
  for (let next = i; next <= lexemes.length; next++) {
    if (next - start > LONGEST_TYPE || given.length > LONGEST_LIST) return null;
    const word = wordAt(lexemes, next);
    if (word !== '' && word !== 'and' && word !== 'or' && !/^syllables?$/.test(word)) continue;
    const type = lexemes.slice(start, next);
    if (!syllableTypes.test(type.map(({ text }) => text).join(' '))) return null;
    given.push(...type, inPlace(type.at(-1)!, 'syllable'));
    if (/^syllables?$/.test(word)) return type[0] === lexemes[i] ? null : { taken: next + 1 - i, given };
    for (start = next; start < lexemes.length; start++) {
      if (lexemes[start]!.kind !== 'break' && !/^(?:and|or)$/.test(wordAt(lexemes, start))) break;
      given.push(lexemes[start]!);
    }
    if (start === next) return null;
    next = start - 1;
  }
  return null;
}

export function lettersInEnding(lexemes: readonly Lexeme[], i: number): Notation | null {
  const letters = wordAt(lexemes, i);
  const ending = lexemes[i + 2];
  if (wordAt(lexemes, i + 1) !== 'in' || ending?.kind !== 'word' || ending.mark !== 'suffix') return null;
  const longer = ending.text.startsWith(letters) && ending.text !== letters;
  if (!/^[aeiou]$/.test(letters) || !longer || findSpelling(ending.text, 'suffix') === null) return null;
  return { taken: 3, given: [{ ...ending, start: lexemes[i]!.start }] };
}

/** `k(n)`, `(m)b`: one letter in brackets with nothing between it and its neighbour. */
export function bracketedLetter(lexemes: readonly Lexeme[], i: number): Notation | null {
  const run = lexemes.slice(i, i + 4);
  const touch = (from: number, to: number) =>
    run.slice(from, to).every((one, n) => n === 0 || run[from + n - 1]!.end === one.start);
  const letter = (n: number) => run[n]?.kind === 'word' && /^[a-z]{1,2}$/.test(run[n].text);
  const at = run[0]?.kind === 'open' ? 0 : 1;
  if (run.length < 4 || run[at]?.kind !== 'open' || run[at + 2]?.kind !== 'close') return null;
  if (!letter(at + 1) || !letter(at === 0 ? 3 : 0) || !touch(0, 4)) return null;
  const text = at === 0 ? run[1]!.text + run[3]!.text : run[0]!.text + run[2]!.text;
  // a(l) is the a before l, not al.
  if (/^all?$/.test(text) && at === 1)
    return { taken: 4, given: [{ ...run[0]!, kind: 'meant', ids: ['a-before-l'], end: run[3]!.end }] };
  if (findSpelling(text, 'none') === null) return null;
  return { taken: 4, given: [{ ...run[0]!, kind: 'word', text, mark: 'none', end: run[3]!.end }] };
}

/** Words that a contraction has instead of its apostrophe. */
const shortened = /^(?:not|is|will|am|are|have|has|had|would|us|be|verbs?|pronouns?|to)$/;

/** "adding s or es", "adding un to the front of words": bare letters that are affixes. */
export function addedAffixes(lexemes: readonly Lexeme[], i: number): Notation | null {
  if (!/^(?:add|adding|adds|added)$/.test(wordAt(lexemes, i))) return null;
  const listed: number[] = [];
  let end = i + 1;
  while (/^(?:the|suffix|suffixes|ending|endings|prefix|prefixes)$/.test(wordAt(lexemes, end))) end += 1;
  const first = end;
  for (let next = end; next < lexemes.length; next++) {
    const { kind, text } = lexemes[next]!;
    const joins = text === 'or' && isAffix(wordAt(lexemes, next + 1));
    if (kind === 'word' && isAffix(text) && !joins) {
      listed.push(next);
      end = next + 1;
    } else if (kind !== 'break' && !/^(?:and|or)$/.test(text)) break;
  }
  if (listed.length === 0) return null;
  const after = lexemes
    .slice(end, end + 3)
    .map(({ text }) => text)
    .join(' ');
  const mark = /^to the (?:front|start|beginning)/.test(after) ? 'prefix' : 'suffix';
  const given = lexemes
    .slice(first, end)
    .map(
      (lexeme, n): Lexeme =>
        listed.includes(first + n) && lexeme.mark === 'none'
          ? { ...lexeme, mark }
          : lexeme.text === 'or'
            ? { ...lexeme, text: 'and' }
            : lexeme,
    );
  return { taken: end - i, given };
}

function isAffix(text: string): boolean {
  const affixes = (['suffix', 'prefix'] as const).flatMap(
    (mark) => findSpelling(text, mark)?.candidates ?? [],
  );
  return affixes.some((id) => /^(?:suf|pre)fix-/.test(id));
}

/** `ch with the sound of k` says what `ch /k/` says. */
export function soundOf(lexemes: readonly Lexeme[], i: number): Notation | null {
  let at = i;
  if (!/^(?:with|has|have|makes?|making|says?|for)$/.test(wordAt(lexemes, at))) return null;
  at += /^(?:the|a|its)$/.test(wordAt(lexemes, at + 1)) ? 2 : 1;
  if (wordAt(lexemes, at) !== 'sound' || !/^(?:of|like)$/.test(wordAt(lexemes, at + 1))) return null;
  const name = lexemes[at + 2];
  if (name?.kind !== 'word' || !soundsByName.has(name.text)) return null;
  return { taken: at + 3 - i, given: [{ ...name, kind: 'sound', start: lexemes[i]!.start }] };
}

export function shortForms(lexemes: readonly Lexeme[], i: number): Notation | null {
  if (!/^(?:with|using|of|from|for)$/.test(wordAt(lexemes, i))) return null;
  let end = i + 1;
  for (let next = end; next < lexemes.length; next++) {
    if (shortened.test(wordAt(lexemes, next))) end = next + 1;
    else if (lexemes[next]!.kind !== 'break' && !/^(?:and|or)$/.test(wordAt(lexemes, next))) break;
  }
  return end === i + 1
    ? null
    : { taken: end - i, given: [{ ...lexemes[i]!, kind: 'note', end: lexemes[end - 1]!.end }] };
}

const numbers: Readonly<Record<string, string>> = { two: '2', three: '3', four: '4', five: '5', six: '6' };

/** `three sounds`, `both sounds`, and `(both)` in brackets. */
export function everySound(lexemes: readonly Lexeme[], i: number): Notation | null {
  let at = i;
  while (/^(?:all|its|their|the|with|has|have|makes?|says?)$/.test(wordAt(lexemes, at))) at += 1;
  const count = wordAt(lexemes, at);
  if (!/^(?:both|two|three|four|five|six|[2-6]|all|different)$/.test(count)) {
    if (
      at === i ||
      !/^(?:sounds?|pronunciations?)$/.test(wordAt(lexemes, at)) ||
      wordAt(lexemes, at - 1) !== 'all'
    )
      return null;
    return every(lexemes, i, at + 1, '');
  }
  let end = at + 1;
  while (/^(?:different|possible|main|common|vowel)$/.test(wordAt(lexemes, end))) end += 1;
  const named = /^(?:sounds|pronunciations|ways)$/.test(wordAt(lexemes, end));
  const alone = count === 'both' && lexemes[end]?.kind === 'close';
  if (!named && !alone) return null;
  return every(
    lexemes,
    i,
    named ? end + 1 : end,
    count === 'both' ? '2' : (numbers[count] ?? (/\d/.test(count) ? count : '')),
  );
}

function every(lexemes: readonly Lexeme[], i: number, end: number, text: string): Notation {
  return {
    taken: end - i,
    given: [{ ...lexemes[i]!, kind: 'every', text, end: lexemes[end - 1]!.end }],
  };
}

/** "final blends with n and m", "silent e with u": those of a family that have one of the letters. */
export function familyWith(lexemes: readonly Lexeme[], i: number): Notation | null {
  const words: string[] = [];
  while (words.length < LONGEST_PHRASE && wordAt(lexemes, i + words.length) !== '') {
    const word = wordAt(lexemes, i + words.length);
    if (/^(?:with|using|containing|that|made|ending|for)$/.test(word)) break;
    words.push(word);
  }
  const heading = words.length === 0 ? null : findPhrase(words);
  if (heading === null || heading.within === null || heading.ids.length < 3) return null;
  let end = i + words.length;
  while (/^(?:that|made|ending|end|have|for)$/.test(wordAt(lexemes, end))) end += 1;
  if (!/^(?:with|using|containing|in)$/.test(wordAt(lexemes, end))) return null;
  end += 1;
  const letters: string[] = [];
  for (let next = end; next < lexemes.length; next++) {
    const { kind, text, mark } = lexemes[next]!;
    if (kind === 'word' && /^[a-z]$/.test(text) && mark === 'none') {
      letters.push(text);
      end = next + 1;
    } else if (kind !== 'break' && !/^(?:and|or|the|letters?)$/.test(text)) break;
  }
  // "with a short vowel"
  if (letters.length === 0 || lexemes[end]?.kind === 'word') return null;
  // "final blends with l (lt, lp)": a list says which.
  const first = lexemes[end]?.kind === 'open' ? lexemes[end + 1] : undefined;
  const list =
    /^(?:is|list)$/.test(lexemes[end]?.kind ?? '') ||
    (first !== undefined && findSpelling(first.text, first.mark) !== null);
  if (list) return { taken: end - i, given: lexemes.slice(i, i + words.length) };
  const ids = letters.flatMap((letter) => familyMember(letter, heading.ids)?.usual ?? []);
  if (ids.length === 0 || ids.length === heading.ids.length) return null;
  return { taken: end - i, given: [{ ...lexemes[i]!, kind: 'meant', ids, end: lexemes[end - 1]!.end }] };
}

/** "initial and final blends": the noun goes for both. */
export function sharedNoun(lexemes: readonly Lexeme[], i: number): Notation | null {
  const one = wordAt(lexemes, i);
  if (one === '' || lexemes[i]!.mark === 'suffix' || !/^(?:and|or|[&/+])$/.test(lexemes[i + 1]?.text ?? '')) return null;
  for (let length = 3; length > 1; length--) {
    const words = Array.from({ length }, (_, n) => wordAt(lexemes, i + 2 + n));
    if (words.includes('') || findPhrase(words) === null) continue;
    const noun = words.slice(1);
    // "hard and soft c" is a phrase of its own.
    if (findPhrase([one, 'and', ...words]) !== null) return null;
    if (findPhrase([one, ...noun]) === null) return null;
    const first = [lexemes[i]!, ...noun.map((text) => inPlace(lexemes[i]!, text))];
    return { taken: 2 + length, given: [...first, ...lexemes.slice(i + 1, i + 2 + length)] };
  }
  return null;
}

const typeIds: readonly (readonly [RegExp, PatternId])[] = [
  [/^closed$/, 'type-closed'],
  [/^open$/, 'type-open'],
  [/^(?:vce|cvce|silent e|magic e|vowel consonant e)$/, 'type-vce'],
  [/^(?:vowel team|vowel digraph|vowel pair)$/, 'type-team'],
  [/^r controlled$/, 'type-r'],
  [/^(?:consonant le|c le)$/, 'consonant-le'],
];

/** "closed + open": words of two syllables of these types. */
export function typesTogether(lexemes: readonly Lexeme[], i: number): Notation | null {
  const ids: PatternId[] = [];
  let end = i;
  for (;;) {
    let length = 3;
    let id: PatternId | undefined;
    for (; length > 0 && id === undefined; length--) {
      const words = Array.from({ length }, (_, n) => wordAt(lexemes, end + n)).join(' ');
      id = typeIds.find(([type]) => type.test(words))?.[1];
    }
    if (id === undefined) return null;
    ids.push(id);
    end += length + 1;
    if (/^syllables?$/.test(wordAt(lexemes, end))) end += 1;
    if (lexemes[end]?.text !== '+') break;
    end += 1;
  }
  if (ids.length < 2) return null;
  const whole = { ...lexemes[i]!, end: lexemes[end - 1]!.end };
  return { taken: end - i, given: [{ ...whole, kind: 'meant', ids: ['syllables-2', ...new Set(ids)] }] };
}
