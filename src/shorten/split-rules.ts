import {
  type Clause,
  endOf,
  endOfThing,
  findClause,
  findMainClause,
  findMarks,
  isFiniteVerb,
} from './find-clause.ts';
import { cutOf } from './make-cut.ts';
import type { Cut, Rule, Word } from './types.ts';

/** The kinds of words that may follow a verb. */
const BEHIND_VERB = /^(?:determiner|possessive|object|preposition|number|to|adverb|pronoun|name)$/;

const PRONOUN = /^(?:they|he|she|it)$/;
const SAYS = /^(?:say|says|said|adds?|added|thinks?|thought|believes?|believed)$/;

/**
 * Rules that split a sentence in two without losing anything. They are not used on sentences with speech, nor on
 * questions.
 */
export const SPLIT_RULES: readonly Rule[] = [
  {
    name: 'semicolon',
    example: ['The fog was thick; the ferry was late.', 'The fog was thick. The ferry was late.'],
    counterExample: 'They had rope; nets; and lamps.',
    isSafe: true,
    applies: (words, sentence) =>
      canPart(words)
        ? findMarks(words, /^;$/).flatMap((at) =>
            findMainClause(words.slice(0, at)) && findClause(words, at + 1)
              ? [part(words, sentence, at, at + 1, '')]
              : [],
          )
        : [],
  },
  {
    name: 'and, but, so',
    example: ['The fog was thick, but the ferry came in.', 'The fog was thick. But the ferry came in.'],
    counterExample: 'If the fog is thick, and the ferry is late, wait.',
    isSafe: true,
    applies: (words, sentence) => {
      if (!canPart(words)) return [];
      return words.flatMap((word, i): Cut[] => {
        if (word.isInside || !/^(?:and|but|so)$/.test(word.lower)) return [];
        const before = words[i - 1];
        const main = findMainClause(words.slice(0, i));
        const clause = findClause(words, i + 1);
        if (!before || !main || !clause || hasOpenClause(words, main.verb, i)) return [];
        // “We can and we will row”: “can” shares the verb “row” with the second part.
        if (before.kind === 'helper') return [];
        // “Boats are cheap, say the men, and they last”: after a split, the men would be the ones who last.
        if (
          PRONOUN.test(words[i + 1]!.lower) &&
          words.slice(main.verb, i).some(({ lower }) => SAYS.test(lower))
        )
          return [];
        // Without a comma, splits only before a pronoun: “he ran and she sat”.
        if (before.text !== ',' && (word.lower === 'so' || words[i + 1]!.kind !== 'subject')) return [];
        const from = before.text === ',' ? i - 1 : i;
        return [part(words, sentence, from, i + 1, word.lower === 'and' ? '' : capital(word.text))];
      });
    },
  },
  {
    name: 'and with the same subject',
    example: ['He ran to the quay and grabbed the rope.', 'He ran to the quay. He grabbed the rope.'],
    counterExample: 'Bram ran to the quay and grabbed the rope.',
    isSafe: false,
    applies: (words, sentence) => {
      if (!canPart(words)) return [];
      return words.flatMap((word, i): Cut[] => {
        if (word.isInside || !/^(?:and|but)$/.test(word.lower)) return [];
        const main = findMainClause(words.slice(0, i));
        if (!main || hasOpenClause(words, main.verb, i) || !goesOnAlike(words, main, i)) return [];
        const subject = sentence.slice(words[main.start]!.start, words[main.subjectEnd - 1]!.end);
        const from = words[i - 1]!.text === ',' ? i - 1 : i;
        const link =
          word.lower === 'but'
            ? `But ${words[main.start]!.kind === 'name' || /^I$/.test(subject) ? subject : lower(subject)}`
            : subject;
        return [part(words, sentence, from, i + 1, capital(withThe(link)))];
      });
    },
  },
  {
    name: 'which and who',
    example: ['The ferry hit a rock, which was sharp.', 'The ferry hit a rock. The rock was sharp.'],
    counterExample: 'The ferry sank, which made Bram sad.',
    isSafe: false,
    applies: (words, sentence) => {
      if (!canPart(words)) return [];
      return findMarks(words, /^,$/).flatMap((comma): Cut[] => {
        const first = words[comma + 1];
        if (!first || !/^(?:which|who)$/.test(first.lower) || !isFiniteVerb(words, comma + 2)) return [];
        const verb = words[comma + 2]!;
        // Before any other verb, “which” may mean the whole event: “which made him sad”, “which means”.
        if (first.lower === 'which' && !/^(?:was|were|is|are|has|have|had|can|could|will)$/.test(verb.lower))
          return [];
        if (!findMainClause(words.slice(0, comma)) || words.slice(comma + 1).some(({ text }) => text === ','))
          return [];
        const thing = thingBefore(words, comma);
        if (thing === null) return [];
        const noun = sentence.slice(words[thing]!.start, words[comma - 1]!.end);
        const isMany = /^(?:were|are|have)$/.test(verb.lower);
        if (
          isMany !== /s$/.test(words[comma - 1]!.lower) &&
          /^(?:was|were|is|are|has|have)$/.test(verb.lower)
        )
          return [];
        return [part(words, sentence, comma, comma + 2, capital(withThe(noun)))];
      });
    },
  },
  {
    name: 'although',
    example: ['Although the fog was thick, the ferry came in.', 'The fog was thick. But the ferry came in.'],
    counterExample: 'Although tired, the men rowed.',
    isSafe: true,
    applies: (words, sentence) => {
      if (!canPart(words)) return [];
      const commas = findMarks(words, /^,$/);
      const [comma] = commas;
      if (comma === undefined || commas.length > 1) return [];
      if (/^(?:although|though)$/.test(words[0]!.lower)) {
        // A pronoun would come before the name it refers to.
        if (!findClause(words, 1) || words[1]!.kind === 'subject' || !findClause(words, comma + 1)) return [];
        return [opened(words, sentence, comma, 'But')];
      }
      if (!/^(?:although|though)$/.test(words[comma + 1]?.lower ?? '')) return [];
      if (!findMainClause(words.slice(0, comma)) || !findClause(words, comma + 2)) return [];
      return [part(words, sentence, comma, comma + 2, 'But')];
    },
  },
  {
    name: 'after',
    example: ['After Bram tied the boat, he ran home.', 'Bram tied the boat. Then he ran home.'],
    counterExample: 'After the storm, Bram ran home.',
    isSafe: true,
    applies: (words, sentence) => {
      const commas = findMarks(words, /^,$/);
      const [comma] = commas;
      if (!canPart(words) || comma === undefined || commas.length > 1 || words[0]!.lower !== 'after')
        return [];
      const [one, other] = [findClause(words, 1), findClause(words, comma + 1)];
      const isPast = [one, other].every(
        (clause) =>
          clause !== null && words[clause.verb]!.kind === 'verb' && words[clause.verb]!.form === 'past',
      );
      return isPast && words[1]!.kind !== 'subject' ? [opened(words, sentence, comma, 'Then')] : [];
    },
  },
  {
    name: 'because',
    example: [
      'The ferry came late because the fog was thick.',
      'The ferry came late. This was because the fog was thick.',
    ],
    counterExample: 'The ferry is not late because the fog is thick.',
    isSafe: false,
    applies: (words) => {
      if (!canPart(words)) return [];
      return words.flatMap((word, i): Cut[] => {
        if (word.isInside || word.lower !== 'because' || i < 3) return [];
        const from = words[i - 1]!.text === ',' ? i - 1 : i;
        const main = findMainClause(words.slice(0, from));
        const clause = findClause(words, i + 1);
        if (!main || !clause || hasOpenClause(words, main.verb, from)) return [];
        if (
          words
            .slice(0, from)
            .some(
              ({ kind, lower, text }) =>
                kind === 'not' ||
                /n't$|^(?:and|but|only|just|or|will|can|may|would|could)$/.test(lower) ||
                text === ',',
            )
        )
          return [];
        if (
          words[i - 1]!.kind === 'adverb' &&
          /^(?:only|just|partly|simply|perhaps|even)$/.test(words[i - 1]!.lower)
        )
          return [];
        const isPast = words[main.verb]!.form === 'past' && words[clause.verb]!.form === 'past';
        const isNow = words[main.verb]!.form !== 'past' && words[clause.verb]!.form !== 'past';
        if (!isPast && !isNow) return [];
        const cut = cutOf(words, from, i + 1);
        return [{ ...cut, put: `. This ${isPast ? 'was' : 'is'} because` }];
      });
    },
  },
  {
    name: 'dash',
    example: ['The fog was thick — the ferry was late.', 'The fog was thick. The ferry was late.'],
    counterExample: 'The fog — it was thick — came in.',
    isSafe: true,
    applies: (words, sentence) => {
      const dashes = findMarks(words, /^[–—]$/);
      const [at] = dashes;
      if (at === undefined || dashes.length > 1 || !canPart(words.filter((_, i) => i !== at))) return [];
      const clause = findClause(words, at + 1);
      // “A cell often seen here”: “seen” may belong to “cell”.
      const isSure =
        clause && (words[clause.verb]!.kind === 'helper' || words[clause.start]!.kind === 'subject');
      if (!findMainClause(words.slice(0, at)) || !isSure) return [];
      return [part(words, sentence, at, at + 1, '')];
    },
  },
];

/**
 * Returns the cut for “Although X, Y”: the first word is removed, and the comma becomes a full stop followed by a
 * linking word.
 */
function opened(words: readonly Word[], sentence: string, comma: number, link: string): Cut {
  const next = words[comma + 1]!;
  const first = sentence.slice(words[1]!.start, words[comma]!.start);
  const goesOn = sentence.slice(next.start, next.end);
  return { start: words[0]!.start, end: next.end, put: `${capital(first)}. ${link} ${goesOn}` };
}

/**
 * Returns the start of the plain noun phrase before a comma: “the old rock”, “Bram”. Returns null if it belongs to
 * another (“a piece of rock”).
 */
function thingBefore(words: readonly Word[], comma: number): number | null {
  for (let start = comma - 1; start >= Math.max(0, comma - 4); start--) {
    const { kind } = words[start]!;
    const opens =
      /^(?:determiner|possessive)$/.test(kind) ||
      (kind === 'name' && words[start - 1]?.kind !== 'name' && start === comma - 1);
    if (!opens) continue;
    const before = words[start - 1];
    if (
      endOfThing(words, start) !== comma ||
      before?.lower === 'of' ||
      before?.lower === 'and' ||
      before?.text === ','
    )
      return null;
    return start;
  }
  return null;
}

function canPart(words: readonly Word[]): boolean {
  if (words.at(-1)?.text !== '.') return false;
  return !words.slice(0, -1).some(({ text, isInside }) => isInside || /^[.!?…"“”:()–—]$/.test(text));
}

/**
 * Returns whether a pronoun does two similar things, each with words of its own: “he ran to the quay and grabbed the
 * rope”.
 */
function goesOnAlike(words: readonly Word[], { start, verb }: Clause, joiner: number): boolean {
  const [one, other, after] = [words[verb]!, words[joiner + 1], words[joiner + 2]];
  if (!other || !after || words[start]!.kind !== 'subject') return false;
  if (joiner - verb < 2 || endOf(words) - joiner < 4 || !BEHIND_VERB.test(after.kind)) return false;
  if (!isAlike(one, other)) return false;
  return !words
    .slice(verb + 1, joiner)
    .some(
      ({ kind, form, lower }) => (kind === 'verb' && form !== 'ing') || kind === 'helper' || lower === 'and',
    );
}

/** Returns whether two verbs have the same finite form: “ran”, “grabbed”. */
function isAlike(one: Word, other: Word): boolean {
  const isTold = one.kind === 'verb' && /^(?:past|s)$/.test(one.form ?? '');
  return isTold && other.kind === 'verb' && other.form === one.form && other.sure > 0.9;
}

/**
 * Returns whether an open construction between a verb and the joiner may continue after the joiner: “that he ran and
 * she sat”.
 */
function hasOpenClause(words: readonly Word[], verb: number, joiner: number): boolean {
  return (
    words
      .slice(verb + 1, joiner)
      .some(
        ({ kind, lower }) =>
          kind === 'clause' ||
          kind === 'relative' ||
          kind === 'to' ||
          /^(?:that|either|both|neither|between|not|let|whether)$/.test(lower),
      ) ||
    words
      .slice(0, verb)
      .some(({ kind, lower }) => kind === 'clause' || /^(?:either|neither|both|whether)$/.test(lower))
  );
}

/**
 * Returns a cut that puts a full stop in place of the words from `from` to before `to`. The next word, or `put`, begins
 * with a capital.
 */
function part(words: readonly Word[], sentence: string, from: number, to: number, put: string): Cut {
  const next = words[to]!;
  const cut = cutOf(words, from, to);
  if (put !== '') return { ...cut, put: `. ${put}` };
  return { start: cut.start, end: next.end, put: `. ${capital(sentence.slice(next.start, next.end))}` };
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
function lower(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
/** Returns the thing with “the”: “a rock” becomes “the rock”. A thing that was named once is known. */
function withThe(thing: string): string {
  return thing.replace(/^(But )?(an?|some|another) /i, '$1the ');
}
