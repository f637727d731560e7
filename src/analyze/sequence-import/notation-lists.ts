import { fits } from './fits.ts';
import { inPlace, longOf, type Notation, wordAt } from './match-words.ts';
import { soundsByName } from './sound-names.ts';
import { findSpelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';

export function letterRange(lexemes: readonly Lexeme[], i: number): Notation | null {
  const joint = wordAt(lexemes, i + 1);
  const through =
    /^(?:through|thru)$/.test(joint) ||
    (joint === 'to' && /^(?:from|consonants?|letters?)$/.test(wordAt(lexemes, i - 1)));
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

/** Words that may be said once for several letters, with the letters they can apply to. */
const shared: Readonly<Record<string, RegExp>> = {
  long: /^[aeiou]$/,
  short: /^[aeiou]$/,
  open: /^[aeiou]$/,
  silent: /^[bcghklnptw]$/,
  double: /^[bdfglmnprstz]$/,
  doubled: /^[bdfglmnprstz]$/,
};

/** Repeats a word for each letter after it: "long e, i, o", "silent k, w", "double f, l, s". */
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
  // One letter is enough after "double", because a doubled letter is a different spelling.
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

export function lettersInEnding(lexemes: readonly Lexeme[], i: number): Notation | null {
  const letters = wordAt(lexemes, i);
  const ending = lexemes[i + 2];
  if (wordAt(lexemes, i + 1) !== 'in' || ending?.kind !== 'word') return null;
  const longer = ending.text.includes(letters) && ending.text !== letters;
  const within = ending.mark === 'suffix' ? /^[aeiou]$/ : /^[a-z]$/;
  if (!within.test(letters) || !longer || findSpelling(ending.text, ending.mark) === null) return null;
  // "i in it" has an example. "k in kn" has none, because kn has no vowel.
  if (ending.mark === 'none' && /[aeiouy]/.test(ending.text)) return null;
  return { taken: 3, given: [{ ...ending, start: lexemes[i]!.start }] };
}

/** Reads one letter in brackets with nothing between the brackets and its neighbour: `k(n)`, `(m)b`. */
export function bracketedLetter(lexemes: readonly Lexeme[], i: number): Notation | null {
  const run = lexemes.slice(i, i + 4);
  const touch = (from: number, to: number) =>
    run.slice(from, to).every((one, n) => n === 0 || run[from + n - 1]!.end === one.start);
  const letter = (n: number) => run[n]?.kind === 'word' && /^[a-z]{1,2}$/.test(run[n].text);
  const at = run[0]?.kind === 'open' ? 0 : 1;
  if (run.length < 4 || run[at]?.kind !== 'open' || run[at + 2]?.kind !== 'close') return null;
  if (!letter(at + 1) || !letter(at === 0 ? 3 : 0) || !touch(0, 4)) return null;
  const text = at === 0 ? run[1]!.text + run[3]!.text : run[0]!.text + run[2]!.text;
  // a(l) means the a before l, not al.
  if (/^all?$/.test(text) && at === 1)
    return { taken: 4, given: [{ ...run[0]!, kind: 'meant', ids: ['a-before-l'], end: run[3]!.end }] };
  if (findSpelling(text, 'none') === null) return null;
  return { taken: 4, given: [{ ...run[0]!, kind: 'word', text, mark: 'none', end: run[3]!.end }] };
}

/** Reads bare letters that are affixes: "adding s or es", "adding un to the front of words". */
export function addedAffixes(lexemes: readonly Lexeme[], i: number): Notation | null {
  if (!/^(?:add|adding|adds|added)$/.test(wordAt(lexemes, i))) return null;
  const listed: number[] = [];
  let end = i + 1;
  while (
    /^(?:the|suffix|suffixes|ending|endings|prefix|prefixes)$/.test(wordAt(lexemes, end)) ||
    // The a in "adding a vowel suffix" is an article.
    (wordAt(lexemes, end) === 'a' && wordAt(lexemes, end + 1).length > 2)
  )
    end += 1;
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

/** Reads `ch with the sound of k` like `ch /k/`. */
export function soundOf(lexemes: readonly Lexeme[], i: number): Notation | null {
  let at = i;
  if (!/^(?:with|has|have|makes?|making|says?|for)$/.test(wordAt(lexemes, at))) return null;
  at += /^(?:the|a|its)$/.test(wordAt(lexemes, at + 1)) ? 2 : 1;
  if (wordAt(lexemes, at) !== 'sound' || !/^(?:of|like)$/.test(wordAt(lexemes, at + 1))) return null;
  const name = lexemes[at + 2];
  if (name?.kind !== 'word' || !soundsByName.has(name.text)) return null;
  return { taken: at + 3 - i, given: [{ ...name, kind: 'sound', start: lexemes[i]!.start }] };
}

/** Reads `the k sound` like `/k/`. "short oo sound" is a phrase. */
export function soundByLetters(lexemes: readonly Lexeme[], i: number): Notation | null {
  const name = lexemes[i]!;
  if (name.kind !== 'word' || name.mark !== 'none' || wordAt(lexemes, i + 1) !== 'sound') return null;
  if (/^[aeiou]$/.test(name.text) || !soundsByName.has(name.text)) return null;
  if (/^(?:long|short|soft|hard|voiced|unvoiced|voiceless|letter)$/.test(wordAt(lexemes, i - 1))) return null;
  // "ch sound as in chef" is about the letters, "k sound as in cat" about the sound.
  let at = i + 2;
  while (/^(?:hint|open|is)$/.test(lexemes[at]?.kind ?? '') || /^(?:as|in|like)$/.test(wordAt(lexemes, at)))
    at += 1;
  if (
    at > i + 2 &&
    name.text !== 'th' &&
    lexemes[at]?.mark === 'none' &&
    fits(wordAt(lexemes, at), name.text) &&
    findSpelling(name.text, 'none') !== null
  )
    return { taken: 2, given: [name] };
  return { taken: 2, given: [{ ...name, kind: 'sound', end: lexemes[i + 1]!.end }] };
}

const numbers: Readonly<Record<string, string>> = { two: '2', three: '3', four: '4', five: '5', six: '6' };

/** Reads the number of sounds: `three sounds`, `both sounds`, and `(both)` in brackets. */
export function everySound(lexemes: readonly Lexeme[], i: number): Notation | null {
  // A number with x is the number of sounds: "ea x2".
  const times = /^(?:x[2-4]|[2-4]x)$/.exec(wordAt(lexemes, i))?.[0].replace('x', '');
  if (times !== undefined && i > 0) return every(lexemes, i, i + 1, times);
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
  // The letters may have a plural: "both oo's".
  const [, plural = ''] = /^([a-z]{1,4})'?s$/.exec(wordAt(lexemes, at + 1)) ?? [];
  if (
    at === i &&
    /^(?:both|two|all)$/.test(count) &&
    wordAt(lexemes, at + 1).includes("'") &&
    findSpelling(plural, 'none') !== null
  ) {
    const letters = { ...lexemes[at + 1]!, text: plural, start: lexemes[i]!.start };
    return { taken: 2, given: [letters, { ...letters, kind: 'every', text: count === 'all' ? '' : '2' }] };
  }
  let end = at + 1;
  while (/^(?:different|possible|main|common|vowel)$/.test(wordAt(lexemes, end))) end += 1;
  const named = /^(?:sounds|pronunciations|ways)$/.test(wordAt(lexemes, end));
  const alone = count === 'both' && lexemes[end]?.kind === 'close';
  if (!named && !alone) return null;
  const text = count === 'both' ? '2' : (numbers[count] ?? (/\d/.test(count) ? count : ''));
  // "three sounds of y" applies to the letters after it.
  const letters = named && /^(?:of|for)$/.test(wordAt(lexemes, end + 1)) ? lexemes[end + 2] : undefined;
  // "two sounds of c and g" is a phrase of its own.
  const phrase = wordAt(lexemes, end + 3) === 'and' && /^[cg]$/.test(letters?.text ?? '');
  if (phrase) return null;
  const leads = i === 0 || /^(?:open|is)$/.test(lexemes[i - 1]!.kind);
  if (leads && letters?.kind === 'word' && findSpelling(letters.text, letters.mark) !== null) {
    const behind = { ...letters, start: lexemes[i]!.start };
    return { taken: end + 3 - i, given: [behind, { ...behind, kind: 'every', text }] };
  }
  return every(lexemes, i, named ? end + 1 : end, text);
}

function every(lexemes: readonly Lexeme[], i: number, end: number, text: string): Notation {
  return {
    taken: end - i,
    given: [{ ...lexemes[i]!, kind: 'every', text, end: lexemes[end - 1]!.end }],
  };
}

/** Reads which of the two sounds of th is meant: "voiced /th/", "th, voiceless", "th (voiced)". */
export function voicedTh(lexemes: readonly Lexeme[], i: number): Notation | null {
  const voice = (at: number) => /^(?:voiced|unvoiced|voiceless)$/.test(wordAt(lexemes, at));
  const isTh = (at: number) => lexemes[at]?.text === 'th' && /^(?:word|sound)$/.test(lexemes[at]!.kind);
  // Both sounds are named before the letters: "voiced and unvoiced th".
  const joint = /^(?:and|or|[&/,])$/.test(lexemes[i + 1]?.text ?? '');
  if (voice(i) && joint && voice(i + 2) && isTh(i + 3))
    return { taken: 4, given: [{ ...lexemes[i + 3]!, kind: 'word', start: lexemes[i]!.start }] };
  // Both sounds are named after the letters: "th, voiced and unvoiced".
  const sign = /^(?:break|open|is)$/.test(lexemes[i + 1]?.kind ?? '') ? i + 2 : i + 1;
  if (isTh(i) && voice(sign) && /^(?:and|or|[&/])$/.test(lexemes[sign + 1]?.text ?? '') && voice(sign + 2)) {
    const end = lexemes[sign + 3]?.kind === 'close' ? sign + 4 : sign + 3;
    return { taken: end - i, given: [{ ...lexemes[i]!, kind: 'word', end: lexemes[end - 1]!.end }] };
  }
  const between = /^(?:break|open)$/.test(lexemes[i + 1]?.kind ?? '') ? 1 : 0;
  const at = voice(i) && isTh(i + 1) ? i : isTh(i) && voice(i + 1 + between) ? i + 1 + between : null;
  if (at === null) return null;
  const end = at === i ? i + 2 : at + 1;
  // A second sound follows: "(voiced and unvoiced)", "th, voiced th".
  if (at > i && (/^(?:and|or|[&/,])$/.test(lexemes[end]?.text ?? '') || isTh(end))) return null;
  // More words may follow in the brackets: "(unvoiced only for now)".
  let last = end;
  while (
    at > i &&
    lexemes[i + 1]!.kind === 'open' &&
    lexemes[last]?.kind === 'word' &&
    !voice(last) &&
    wordAt(lexemes, last) !== 'and'
  )
    last += 1;
  const closes = at > i && lexemes[i + 1]!.kind === 'open' && lexemes[last]?.kind === 'close';
  if (at > i && lexemes[i + 1]!.kind === 'open' && !closes) return null;
  const ids = [lexemes[at]!.text === 'voiced' ? 'th-voiced' : 'th'];
  const taken = (closes ? last + 1 : end) - i;
  return { taken, given: [{ ...lexemes[i]!, kind: 'meant', ids, end: lexemes[i + taken - 1]!.end }] };
}
