import { type CellKind, findColumnKind, sightListStart } from './column-kinds.ts';
import { commonWords } from './common-words.ts';
import { type Clause, cutSentence, isSentence } from './read-prose.ts';
import { readWords } from './read-words.ts';
import { goesOver, isPreparation, mayPrepare } from './rest-weeks.ts';

/**
 * Cuts the text of a cell or line into clauses. It cuts at line ends, semicolons, bars and bullets outside brackets,
 * and before a name that announces the content: `Phonics: sh, ch. Sight words: the` is two clauses. `kind` is the kind
 * of the column.
 */
export function cutClauses(text: string, kind: CellKind): readonly Clause[] {
  return cutAt(text, dividers(text))
    .flatMap((part) => (kind === 'patterns' || kind === 'title' ? cutSightSentence(part) : [part]))
    .flatMap((part) =>
      kind === 'patterns' || kind === 'title'
        ? cutAtWords(part).flatMap((piece) => (typeof piece === 'string' ? cutAtNames(piece, kind) : [piece]))
        : cutAtNames(part, kind),
    )
    .flatMap((clause) =>
      clause.kind === 'patterns' && clause.words === undefined
        ? isBracketed(clause.text)
          ? [{ ...clause, kind: 'examples' as const }]
          : sightList.test(clause.text)
            ? [clause]
            : cutProse(clause.text)
        : [clause],
    );
}

/** Cuts a line after a sentence that lists by-sight words: "Sight words is, a. Short i." */
function cutSightSentence(part: string): readonly string[] {
  const cuts: number[] = [];
  for (const { index, 0: end } of part.matchAll(/(?<=[\p{L}'’])[.!]\s+(?=[-"“(\p{L}])/gu)) {
    const sentence = part.slice(cuts.at(-1) ?? 0, index);
    const name = sentence.trimStart().split(/\s+/);
    const listed = [1, 2, 3, 4].some(
      (length) =>
        length < name.length &&
        findColumnKind(name.slice(0, length).join(' ').replace(/:$/, '')) === 'by-sight',
    );
    const next = part.slice(index + end.length);
    // Also cuts before a sentence that begins with the name of a by-sight list.
    const lists = sightName.test(next);
    if (listed || lists) cuts.push(index + end.length);
  }
  return cutAt(part, cuts);
}

const sightName = /^(?:new |more )?(?:sight|high[- ]frequency|tricky|irregular|memory) words?\b/i;

/**
 * Matches a list of by-sight words, even if its words have other meanings elsewhere: "Sight words have, give, live
 * (they break the rule)".
 */
const sightList = new RegExp(
  `${sightName.source}(?:\\s*:)?\\s+[\\p{L}'’]+\\s*,\\s*[\\p{L}'’]+(?:\\s*[,(]|$)`,
  'iu',
);

/** Whether a sentence in brackets gives examples of the clause before it: "(mat, sat, Sam)". */
function isBracketed(text: string): boolean {
  const inside = /^\(([^()]*)\)[.!]?$/.exec(text.trim())?.[1];
  if (inside === undefined) return false;
  const words = inside.split(/[\s,;/]+/).filter((word) => word !== '');
  return words.length > 1 && words.every((word) => /^\p{L}*[aeiouy]\p{L}*$/iu.test(word) && word.length > 2);
}

/** Cuts a text into its sentences, and each sentence into its statements. */
function cutProse(text: string): readonly Clause[] {
  const sentences = cutAt(
    text,
    [...text.matchAll(sentenceEnd)].map(({ index, 0: end }) => index + end.length),
  );
  // "Blends. Bl, cl" is a name with its letters, not two sentences.
  const runs =
    sentences.some((one) => isSentence(one) || isPreparation(one) || mayPrepare(one)) ||
    // "Review blends. Closed syllables" teaches closed syllables.
    goesOver(sentences[0]!) ||
    sentences.every((one) => (one.match(/\p{L}+/gu) ?? []).length > 2);
  return (runs ? sentences : [text])
    .flatMap((sentence) => cutSentence(sentence.trim()))
    .map((clause) => ({ ...clause, text: trimEdges(clause.text) }))
    .filter((clause) => /[\p{L}\p{N}]/u.test(clause.text));
}

/** The end of a sentence. The full stop of a shortened word does not count: `Thurs. after`, `Mrs. P.`, `incl. ch`. */
const sentenceEnd =
  /(?<!\b(?:Mrs?|Ms|Dr|St|Gr|Rm|vs|no|wk|incl|init|fin|syll?|ex|e\.g|i\.e|Thurs?|Tues?|Wed|Fri|Mon|\p{Lu}))[.!?]["”’)]*\s+(?=["“‘(]?\p{Lu})/gu;

/**
 * Returns the start of an item after a comma or plus that separates whole items. Returns null if the sign only
 * separates the parts of a list.
 */
function itemBehind(text: string, i: number): number | null {
  const char = text[i]!;
  if (!/[+,&]/.test(char)) return null;
  // "sh first, then ch" and "ch, sh/ch sort" are two items each. "double, then add" is one.
  const behind = text.slice(i, i + 30);
  if (/^, then (?!add|or)\p{L}{1,3}(?!\p{L})|^,\s[\p{L}/]{1,14} [Ss]orts?\s*$/u.test(behind)) return i + 1;
  // A plus after "review" separates items: "digraphs review + tch".
  return /\p{L}{3,}\s+review\s*$/iu.test(text.slice(Math.max(0, i - 40), i)) ? i : null;
}

/** Whether letters with their sound follow the examples of another item: "open: me, go and y as long i". */
function isSoundBehind(text: string, i: number): boolean {
  return (
    /^\sand\s[a-z]{1,4}\s(?:as|for|saying|says)\s(?:a\s)?(?:long|short)\s[aeiou](?!\p{L})/u.test(
      text.slice(i, i + 40),
    ) && /:\s*[a-z]{2,}(?:,\s*[a-z]{2,}){1,9}$/.test(text.slice(Math.max(0, i - LONGEST_WORDS), i))
  );
}

/** The number of characters before a semicolon that are searched for a list of words. */
const LONGEST_WORDS = 200;
const wordsBefore = new RegExp(
  `${sightName.source.replace('^', '(?:^|[.;\\n]\\s*)')}\\s*:\\s*[\\p{L}'’]+(?:\\s*;\\s*[\\p{L}'’]+)*$`,
  'iu',
);

/** Whether a semicolon only separates the words of a list: "Sight words: people; water; again". */
function isInWords(text: string, i: number): boolean {
  const [, next = ''] = /^;\s*([\p{L}'’]+)\s*(?:[;.\n]|$)/u.exec(text.slice(i, i + 30)) ?? [];
  // In "Sight words: they; sh" the letters sh are not a word of the list.
  const isWord = commonWords.has(next) || /^(?=\p{L}*[aeiouy])[\p{L}'’]{3,}$/u.test(next);
  return isWord && wordsBefore.test(text.slice(Math.max(0, i - LONGEST_WORDS), i));
}

function dividers(text: string): readonly number[] {
  const cuts: number[] = [];
  let depth = 0;
  for (let i = 0; i < text.length; i++) {
    const char = text[i]!;
    // Brackets can be a sentence of their own: "Short i. (pin, tip) Watch b and d".
    if (char === '(' && depth === 0 && /\p{L}[)'’]?[.!]\s+$/u.test(text.slice(Math.max(0, i - 6), i))) {
      const close = text.indexOf(')', i);
      if (close > 0 && isBracketed(text.slice(i, close + 1))) cuts.push(i, close + 1);
    }
    if (char === '(') depth += 1;
    if (char === ')') depth = Math.max(0, depth - 1);
    if (char === '\n') depth = 0;
    // "VC|CV" is one word.
    if (char === '|' && /[VC]/.test(text[i - 1] ?? '') && /[VC]/.test(text[i + 1] ?? '')) continue;
    if (
      /^\s(?:\.{2,}|…)\s/.test(text.slice(i, i + 6)) ||
      (/^(?:\.{3}|…)\s/.test(text.slice(i, i + 4)) && depth === 0)
    )
      cuts.push(i + 1);
    if (depth === 0) cuts.push(...cutsOutsideBrackets(text, i));
    if (char === '\n' || '•|▪◦'.includes(char) || (char === ';' && depth === 0 && !isInWords(text, i)))
      cuts.push(i + 1);
  }
  return cuts;
}

/** Returns the cuts at a place outside of brackets that other marks than separators show. */
function cutsOutsideBrackets(text: string, i: number): readonly number[] {
  const cuts: number[] = [];
  // A full stop after brackets ends a sentence, whatever follows: "soft c (city). -dge as in bridge".
  if (/^\)\.\s+[-\p{L}]/u.test(text.slice(i, i + 6))) cuts.push(i + 2);
  const item = itemBehind(text, i);
  if (item !== null) cuts.push(item);
  if (text[i] === ' ' && isSoundBehind(text, i)) cuts.push(i);
  return cuts;
}

/** The number of characters at the end of a text that are searched for a list of words to read. */
const LONGEST_READ = 120;

function cutAtNames(part: string, kind: CellKind): readonly Clause[] {
  const found: { at: number; kind: CellKind }[] = [];
  for (let colon = part.indexOf(':'); colon >= 0; colon = part.indexOf(':', colon + 1)) {
    const name = nameBefore(part, colon);
    if (name !== null) found.push(name);
  }
  const dash = /^\s*(\p{L}[\p{L} ]{2,40}?)\s+[-–—]+\s/u.exec(part.slice(0, 60));
  const dashed = dash === null ? null : findColumnKind(dash[1]!);
  // A name can end at a dash: "Words for dictation - map, hid".
  if (dashed === 'notes' || dashed === 'examples' || dashed === 'by-sight')
    found.push({ at: 0, kind: dashed });
  for (const { index } of part.matchAll(sightListStart))
    if (!found.some(({ at }) => Math.abs(at - index) < 6)) found.push({ at: index, kind });
  // "read" can begin a list of examples: "short a, read at, am, sad".
  const read = /(?<=[,;]\s)read\s+\p{Ll}{2,}(?:,\s*\p{Ll}{2,})+\s*$/u.exec(part.slice(-LONGEST_READ));
  if (read !== null)
    found.push({ at: Math.max(0, part.length - LONGEST_READ) + read.index, kind: 'examples' });
  found.sort((a, b) => a.at - b.at);
  const texts = cutAt(
    part,
    found.map(({ at }) => at),
  );
  const first = found[0]?.at === 0 ? 0 : 1;
  const clauses = texts.map((text, i) => ({
    text: trimEdges(text),
    kind: found[i - first]?.kind ?? kind,
  }));
  return clauses.filter(({ text }) => /[\p{L}\p{N}]/u.test(text));
}

const listed =
  /(?<![\p{L}-])(?:(?:and|with|plus|then|also)\s+)?(?:(?:the|our|two|three|some|more|new|odd|these)\s+){0,3}words?(?:(?:\s+(?:we|you|they|to|just|know|learn|see|are|is(?!\s*,)|this|week))*\s*[:–—-]|(?:\s+(?:we|you|they|to|just|know|learn|see|are|this|week))*)\s+(?<list>[\p{L}']+(?:(?:\s*,\s*(?:and\s+)?|\s+and\s+|\s*&\s*)[\p{L}']+)*)(?=\s*(?:[.;]|$))/giu;

/** Words with one short vowel that are read as they are written. Such words after "words" may also be examples. */
const regular = /^(?!(?:is|his|as|has|of|was|put|want|to|do)$)[^aeiouy]{0,2}[aeiou][^aeiouywr]{1,2}$/;

/** Cuts out lists that contain only words so common that they are taught by sight: "and the words is, his". */
function cutAtWords(part: string): readonly (string | Clause)[] {
  const pieces: (string | Clause)[] = [];
  let after = 0;
  for (const found of part.matchAll(listed)) {
    const words = readWords(found.groups!.list!.replace(/\band\b|&/g, ','));
    const known = words.every((word) => commonWords.has(word) || commonWords.has(word.toLowerCase()));
    // Lists such as "tricky words: the" and "decodable words: am" have names of their own.
    const apart =
      /(?:^|[.,;:!?)])\s*$/.test(part.slice(after, found.index)) ||
      /^(?:and|with|plus|then|also)\b/i.test(found[0]);
    if (!apart || words.length === 0 || !known || words.every((word) => regular.test(word))) continue;
    pieces.push(part.slice(after, found.index), { text: trimEdges(found[0]), kind: 'by-sight', words });
    after = found.index + found[0].length;
  }
  return [...pieces, part.slice(after)].filter(
    (piece) => typeof piece !== 'string' || /[\p{L}\p{N}]/u.test(piece),
  );
}

/** Returns the longest column name of at most four words that ends at a colon. */
function nameBefore(part: string, colon: number): { at: number; kind: CellKind } | null {
  const before = part.slice(Math.max(0, colon - 60), colon);
  const starts = [...before.matchAll(/(?<![\p{L}\p{N}-])[\p{L}]/gu)].map(({ index }) => index).slice(-4);
  for (const start of starts) {
    const kind = findColumnKind(before.slice(start));
    // In "VCe words: cake" the content is VCe, and "words" is not a column's name. A column's name begins the clause or
    // has a capital.
    const lead = before.slice(0, start).trimEnd();
    const begins = /^\p{Lu}/u.test(before.slice(start)) || lead === '' || /[.;,)]$/.test(lead);
    const aside = kind === 'by-sight' && lead.endsWith('(');
    if (kind !== null && kind !== 'step' && (begins || aside))
      return { at: colon - before.length + start, kind };
  }
  return null;
}

function cutAt(text: string, cuts: readonly number[]): readonly string[] {
  const edges = [...new Set([0, ...cuts, text.length])];
  return edges.slice(0, -1).map((edge, i) => text.slice(edge, edges[i + 1]));
}

/**
 * Removes the characters that divide clauses from both ends. A loop is used because a pattern for the end is slow in
 * long runs of blanks.
 */
export function trimEdges(text: string): string {
  let start = 0;
  let end = text.length;
  while (start < end && ' \t\n;|•▪◦…'.includes(text[start]!)) start += 1;
  if (/^\.{2,}\s/.test(text.slice(start, start + 4))) start = text.indexOf(' ', start) + 1;
  while (end > start && ' \t\n;|•▪◦.'.includes(text[end - 1]!)) end -= 1;
  return text.slice(start, end).trim();
}
