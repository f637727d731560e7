import type { CellKind } from './column-kinds.ts';
import { commonWords } from './common-words.ts';
import { readClause } from './read-clause.ts';
import { readWords } from './read-words.ts';
import { splitLexemes } from './split-lexemes.ts';

/** A part of a cell or line that is of one kind. */
export interface Clause {
  readonly text: string;
  readonly kind: CellKind;
  /** Words in a sentence that look like by-sight words. */
  readonly words?: readonly string[];
  /** Whether the clause is part of a running sentence. Its patterns are then guesses. */
  readonly prose?: true;
}

/** A rule for running sentences. The first rule that cuts a sentence is used, and the pieces are then tried again. */
export interface SentenceRule {
  readonly name: string;
  /** A sentence that the rule cuts. `counterExample` is a similar sentence that the rule must leave whole. */
  readonly example: string;
  readonly counterExample: string;
  /** Returns all pieces of a sentence. Returns null if the rule does not apply. */
  /** `running` means that the text is the rest of a sentence that another rule cut. */
  readonly applies: (sentence: string, running: boolean) => readonly Clause[] | null;
}

/** Verbs before the content taught, with the small words after them. */
const leading = [
  'teach(?:es|ing)?',
  'taught',
  'learn(?:s|ed|ing)?(?: about| that| how| to)*',
  'add(?:s|ed|ing)?(?: in| on)?',
  'finish(?:es|ing)?(?: off)? (?:the|our)(?: \\w+){1,2} with',
  '(?:begin|begins|begun|beginning|start|starts|started|starting|open|opens|opened|kick|kicks|finish|finishes|finishing|end|ends|ending|close|closes|wrap|wraps|wrapping|carry|continue|continues)(?: off| out| up| on| over)*(?: with| on| by)',
  '(?:move|moves|moving|moved|go|goes|going|get|gets|getting|turn|turns|turning|switch|switches|come|comes|push|head|jump)(?: straight| right| back| over| around)?(?: on| in| out)?(?: to| onto| into)',
  'meet(?:s|ing)?',
  'met',
  'introduc(?:e|es|ed|ing)',
  '(?:bring|brings|bringing|throw|fit|put|squeeze|slip|work|sneak) in',
  '(?:come|comes|came|follow|follows)',
  'followed by',
  'cover(?:s|ed|ing)?',
  'practi[cs](?:e|es|ed|ing)',
  'work(?:s|ed|ing)?(?: hard)? (?:on|with|through)',
  'focus(?:es|ed|ing)?(?: only| mostly)? on',
  'concentrat(?:e|es|ing) on',
  '(?:is|are|was|will be) (?:all )?(?:about|for|devoted to|given to|spent on|when we (?:teach|meet|learn|do|add|start))',
  'spend(?:s|ing)?(?: [\\w-]+){0,4} (?:on|with)',
  'tackl(?:e|es|ing)',
  'look(?:s|ed|ing)? (?:at|closely at)',
  '(?:explor|stud)(?:e|es|y|ies|ying|ing)',
  'master(?:s|ed|ing)?',
  'tak(?:e|es|ing)(?: on| up)?',
  '(?:do|does|did|doing)',
  '(?:give|gives|giving)',
  '(?:read|reads|reading|spell|spells|spelling|know|knows|write|writes)(?: and (?:read|spell|write))?',
  "(?:it|that|this|here|there|which|he|she)(?:'s| is| are| was| will be)",
  '(?:will|would|should|can|could|may|might|must)(?: also| then| only| just| mostly)* (?:be|have)',
  '(?:has|have|had)(?: time for| room for)?',
  '(?:include|includes|including|contain|contains)',
  '(?:bring|brings|bringing)(?: home| us| with)*',
  '(?:see|sees|hear|find|use|uses|using|need|needs|want|try|tries|trying)',
  '(?:is|are|was|were|be)',
].join('|');
const lead = new RegExp(
  `(?<![\\p{L}'’-])(?:${leading})(?:\\s+(?:just|only|also|then|first|again|quickly|both|the class|children|them|now|next|straight|mostly|back|with))*\\s*[:–—]?\\s+(?=\\S)`,
  'giu',
);

/** Matches remarks about letters named before, for example that the letters follow, or why. */
const trailing =
  /(?:,?\s+(?:because|since|as (?:they|it|we|these)|so that|so we|if there|if we|if time|when we|once we|while we|who|(?:in )?which|where we|although|before (?:we|the|they)|after (?:we|the|they)|until|till)\b(?! (?:e|i|y|vowels?|consonants?|short)\b)|,?\s+(?:come|comes|came|follow|follows|arrive|arrives|wait|waits|stay|stays|belong|rounds?|finish|finishes|complete|completes|close|closes|get|gets|fill|fills|take|takes|go|goes|is|are|was|were|will|should)(?! (?:at|in|before|after|the|a|an|like|as|said|says?|spel|pronounced|heard|voiced|silent|long|short|dropped|doubled|changed|added)\b)\b|,?\s+(?:before|after|in|during|by|on|for|over|from|at)\s+(?:the |our |a |an |early |late |mid-?|next |last |this |that |each |every |same |first |second |third |whole |full |about |two |three |four |short |new )*(?:spring|summer|autumn|fall|winter|christmas|easter|thanksgiving|january|february|march|april|may|june|july|august|september|october|november|december|break|holidays?|half[- ]term|term|weeks?|fortnight|monday|tuesday|wednesday|thursday|friday|year|month|days?|semester|quarter|lessons?|sessions?|school|lunch|time|now|later)\b).*?(?=,\s+(?:and|but|then|while)\b|$)/iu;

/** Words that join a reason or a time to a sentence. */
const conjunction = /^,?\s+(?:because|since|so|although|when we|once we|while we|if we|if time|if there)\b/i;

const putOff =
  /(?:^|(?<=[,–—]\s+))(?:but |and |so |please |though )*[^,;()–—]*?(?<![\p{L}])(?:don['’]?t|do not|doesn['’]?t|does not|won['’]t|wont|will not|aren['’]t|are not|isn['’]t|is not|not|never|no|nor|leav(?:e|es|ing)|sav(?:e|es|ing)|skip(?:s|ping)?|hold(?:ing)? off|wait(?:s|ing)? (?:on|with)|keep(?:ing)?)(?![\p{L}])(?:(?!\bbut\b)[^;()])*?\b(?:yet|until|till|later|for now|for (?:next|another) \w+|next (?:year|grade|term)|another (?:day|time|year))\b[^,;()]*/iu;

const word = "[\\p{L}'’]+";
const quotedWord = `["“‘]?${word}["”’]?`;
const wordList = `${quotedWord}(?:(?:\\s*,\\s*(?:and\\s+|or\\s+)?|\\s+and\\s+|\\s*&\\s*)${quotedWord}){0,40}`;
const sightNames =
  '(?:(?:sight|heart|tricky|memory|high[- ]frequency|irregular|common|exception|snap|learn(?:ed)?[- ]by[- ]heart|odd|rule-?breaking|rulebreaker|red|special|key|whole|new|little|hfw) )*';
const behindName = new RegExp(
  `(?:\\b(?:and|with|plus|then|also)\\s+)?(?<![\\p{L}-])(?:the |our |two |three |four |some |these )*(?:by sight|by heart|${sightNames}words?(?:(?: [\\p{L}'’]+){0,9}?(?:\\s*[:–—]| are| is| will be)|(?: we know| to know| we learn| this week)?))\\s+(?<list>${wordList})(?=\\s*(?:[.;,!?]|$|\\s(?:are|is|come|go|as well|too|by|on)\\b))`,
  'iu',
);
const anyName = new RegExp(`^[^:,;()]{2,40}:\\s+(?<list>${wordList})\\s*[.!]?$`, 'iu');
const beforeName = new RegExp(
  `(?<![\\p{L}'’-])(?<list>${wordList})\\s*,?\\s+(?:(?:go in|to (?:learn|know|read|spell)|learned|learnt|known|taught|read|spelled|just|are(?: \\w+)?|as)\\s+)*(?:(?:by|on|at) (?:sight|heart|memory)|as (?:a )?(?:${sightNames})words?)(?![\\p{L}])`,
  'iu',
);

/** Matches expressions which say that words are taught as wholes. */
const bySight = /sight|heart|tricky|memor|remember|frequency|irregular|exception|(?:to|just|already) know\b/i;

/** Matches text that may teach something after all: a list, or terms such as "words" and "letters". */
const open =
  /[:([“"]|(?<![\p{L}.])[B-HJ-Z](?![\p{L}.])|\b(?:list|cards?|worksheet|page|sheet|chart|words?|letters?|sounds?|spell\w*|same|pattern\w*|endings?|hfws?|cews?|sight|tricky|heart|teach\w*|learn\w*|add|introduc\w+|peek|look at|slide|cover|practi[cs]e|tackle)\b/u;

/** The rules in order. They reflect the letters and e-mails of teachers (common practice, no source). */
export const sentenceRules: readonly SentenceRule[] = [
  {
    name: 'what is put off',
    example: 'We will not do tch until spring',
    counterExample: 'We will do tch, not ck',
    applies: (sentence) => cutAround(sentence, putOff.exec(sentence), 'notes'),
  },
  {
    name: 'words by sight, behind their name',
    example: 'they bring home the words said and of',
    counterExample: 'they read the words mat and tap',
    applies: (sentence, running) => {
      const found = behindName.exec(sentence);
      // "Open syllables in short words: he, so" gives examples.
      const before = found === null ? '' : sentence.slice(0, found.index).trimEnd();
      const shows = before !== '' && /[\p{L}\p{N}]$/u.test(before) && /^words?\b/i.test(found![0]);
      if (shows && teaches(before)) return null;
      return (running || isSentence(sentence) || /[:–—]/.test(found?.[0] ?? '')) &&
        isSightList(found, bySight)
        ? cutAround(sentence, found, 'by-sight')
        : null;
    },
  },
  {
    name: 'words by sight, before their name',
    example: 'Children know the and to by sight',
    counterExample: 'Children know the letters by sight',
    applies: (sentence) => {
      const found = beforeName.exec(sentence);
      return isSightList(found, /./) ? cutAround(sentence, found, 'by-sight') : null;
    },
  },
  {
    name: 'common words behind any name',
    example: 'On the key ring: said, they, are',
    counterExample: 'Short a: am, an, at',
    applies: (sentence) => {
      const found = anyName.exec(sentence);
      if (found === null || teaches(found[0].slice(0, found[0].length - found.groups!.list!.length)))
        return null;
      const words = readWords(found.groups!.list!.replace(/\band\b(?!["”’]|\s*,)|&/g, ','));
      const known =
        words.length > 1 && words.every((one) => commonWords.has(one) || commonWords.has(one.toLowerCase()));
      return known && !words.every((one) => regular.test(one))
        ? cutAround(sentence, found, 'by-sight')
        : null;
    },
  },
  {
    name: 'a sentence about something else',
    example: 'I would give that a full week',
    counterExample: 'I would give sh a week',
    applies: (sentence) =>
      isSentence(sentence) && !teaches(sentence) && !open.test(sentence)
        ? [{ text: sentence, kind: 'notes' }]
        : null,
  },
  {
    name: 'what somebody does besides',
    example: 'Compound words, Marcus has a card game',
    counterExample: 'Compound words, two in one',
    applies: (sentence) => {
      const found =
        /,\s+(?=\p{Lu}\p{Ll}+\s+(?:has|have|will|is|brings?|likes?|wants?|does|made|makes)\s).+$/u.exec(
          sentence,
        );
      return found === null ||
        found.index === 0 ||
        teaches(found[0]) ||
        !teaches(sentence.slice(0, found.index))
        ? null
        : cutAround(sentence, found, 'notes');
    },
  },
  {
    name: 'a sentence that leads to what is taught',
    example: 'Our readers begin with the sounds m and s',
    counterExample: 'The digraph sh begins with s',
    applies: (sentence, running) => {
      if (!running && !isSentence(sentence)) return null;
      for (const found of sentence.matchAll(lead)) {
        const end = found.index + found[0].length;
        // In "are as in square" the first word is letters.
        if (found.index === 0 && /^(?:is|are|was|were|be)\s+$/i.test(found[0])) continue;
        const before = sentence.slice(0, end);
        if (teaches(sentence.slice(0, found.index))) return null;
        const after = sentence.slice(end);
        if (startsTaught(after))
          return [
            { text: before.trim(), kind: 'notes' },
            { text: after, kind: 'patterns' },
          ];
      }
      return null;
    },
  },
  {
    name: 'what is said behind what is taught',
    example: 'sh and ch come straight after the holidays',
    counterExample: 'sh and ch at the end of words',
    applies: (sentence, running) => {
      const found = trailing.exec(sentence);
      if (found === null || found.index === 0 || /[()]/.test(found[0])) return null;
      if (!running && !conjunction.test(found[0]) && !isSentence(sentence)) return null;
      const before = sentence.slice(0, found.index);
      if (!teaches(before) || teaches(found[0])) return null;
      return [
        { text: before, kind: 'patterns' },
        { text: found[0].trim(), kind: 'notes' },
        { text: sentence.slice(found.index + found[0].length), kind: 'patterns' },
      ];
    },
  },
];

/**
 * Cuts a running sentence. A sentence that no rule cuts is returned whole. `prose` is set if a rule cut it or if it is
 * a running sentence.
 */
export function cutSentence(sentence: string, running = false): readonly Clause[] {
  if (sentence.length > LONGEST) return [{ text: sentence, kind: 'patterns' }];
  for (const { applies } of sentenceRules) {
    const pieces = applies(sentence, running)?.filter(({ text }) => /[\p{L}\p{N}]/u.test(text));
    if (pieces === undefined || pieces.length === 0) continue;
    if (pieces.length === 1 && pieces[0]!.kind === 'patterns') continue;
    return pieces.flatMap((piece) =>
      piece.kind === 'patterns'
        ? cutSentence(piece.text.trim(), true).map((part): Clause => ({ ...part, prose: true }))
        : [piece],
    );
  }
  return [{ text: sentence, kind: 'patterns', ...(isSentence(sentence) ? { prose: true as const } : {}) }];
}

/** The most characters of a sentence. A longer text is a list or not a sentence. */
const LONGEST = 800;

/** The fewest words of a sentence. */
const SHORTEST = 4;

/** Whether a text is a sentence in which somebody does something, and not a list or a name. */
export function isSentence(text: string): boolean {
  if (text.length > LONGEST) return false;
  return (text.match(/\p{L}+/gu) ?? []).length >= SHORTEST && predicates.some((one) => one.test(text));
}

/** Matches a subject with its verb, a statement, or a verb in a sentence without a named subject: "Next comes sh". */
const predicates: readonly RegExp[] = [
  /(?<![\p{L}'’-])(?:we|they|you|children|kids|students|pupils|learners|readers|class|everyone|everybody|(?:the|your|each|every) child)\s+(?!(?:long|short)\b)\p{L}{2,}/iu,
  /(?<![\p{L}'’-])I\s+(?:am|will|would|have|had|do|did|don['’]t|like|\p{Ll}{4,})(?!\s*[,&/])/u,
  /(?<![\p{L}'’-])(?:I|we|they|you|it|that|he|she|here|there|let)['’](?:s|ll|re|ve|d|m)\s+\p{L}/iu,
  /(?<![\p{L}'’-])(?:it|that|this|there|here|which|who|he|she|nobody)\s+(?:is|are|was|will|has|can|does|gets|goes)\s+\p{L}/iu,
  /(?<![\p{L}'’-])(?!(?:contractions?|with|words?|forms?|and|short)\s)\p{L}{4,}\s+(?:is|was|are|were|will be|has|have|will|can|should)\s+\p{L}{3,}(?!\s*[,/&])/iu,
  /(?<![\p{L}-])(?:comes?|follows?|begins? with|starts? with|opens with|brings|moves? on|finish(?:es)?|meets?)\s+\p{L}/iu,
  /^(?:then|next|after that|also|first|please|finally|lastly|last)\s+\p{L}+\s+\p{L}+/iu,
  /(?<![\p{L}'’-])(?:please|sorry|thank you|thanks|don['’]t|won['’]t|can['’]t wait|let me)\s+\p{L}/iu,
];

/** Letters that are also everyday words: "I would give it a week". */
const everyday = new Set(
  'a i all are our or air ear old an am as at in on is it us be he me we up so no do go ill age eye war ate ink ore oar re'.split(
    ' ',
  ),
);

/** Technical words that are also everyday words, if no other technical word is beside them. */
const ambiguous =
  /(?<!(?:vowel|short|long|consonant|letter|sound|word)s?\s)(?<![\p{L}-])(?:teams?|open(?:s|ed|ing)?|closed|hard|soft|silent|blending|plurals?|irregular)(?![\p{L}-])(?!\s*(?:syllable|consonant|letter|sound|vowel|word|rule|final|[a-z](?![\p{L}])|[:(]))/giu;

/** A single letter that is neither a word nor an initial: "we add s". */
const oneLetter = /(?<![\p{L}\p{N}'’.&-])[b-hj-z](?![\p{L}\p{N}'’.&-])/u;

/** Everyday words in a list of letters: "air, are, ear". */
const listed =
  /(?<![\p{L}'’-])(?:air|are|ear|our|or|all|old|ore|oar|war|ire)\s*(?:[,/&]|and)\s*(?:air|are|ear|our|or|all|old|ore|oar|war|ire)(?![\p{L}'’-])/iu;

/** A sound given by its name: "a that says /ŏ/", "a for long a". */
const soundNamed =
  /(?<![\p{L}\p{N}])(?:\/\p{L}{1,3}\/|(?:long|short) [aeiou]|(?:the )?[aeiou] (?:as (?:in|a|the|schwa)|like \p{Ll}+|in \p{Ll}{3,}))(?![\p{L}\p{N}])/u;

/** Whether a text names letters, sounds or patterns. */
function teaches(text: string): boolean {
  return (
    oneLetter.test(text) ||
    listed.test(text) ||
    soundNamed.test(text) ||
    readClause(splitLexemes(text.replace(ambiguous, 'thing'))).chunks.some(
      ({ spelled, phrases }) =>
        phrases.some(
          ({ ids, sound, within }) => sound === true || ids.length > 0 || (within?.size ?? 0) > 0,
        ) ||
        spelled.length > 1 ||
        spelled.some(
          ({ spelling, start, examples }) =>
            (spelling.letters.length > 1 && examples.length > 0) ||
            !everyday.has(spelling.letters) ||
            isMarked(text, start),
        ),
    )
  );
}

function isMarked(text: string, start: number): boolean {
  return /^["“'‘]?-|^["“'‘]\p{L}{1,4}["”'’]|^\p{L}+-(?!\p{L})/u.test(text.slice(start));
}

/** Whether the content taught is near the beginning of a text. */
function startsTaught(text: string): boolean {
  return teaches(text) || /^(?:["“]|(?:the (?:letters?|sounds?) )?\p{Lu}(?=[\s,;)]|$))/u.test(text);
}

/** Whether a list of words is taught by sight. The words must be common enough, and not all of them regular. */
function isSightList(found: RegExpExecArray | null, surely: RegExp): boolean {
  if (found === null) return false;
  const words = readWords(found.groups!.list!.replace(/\band\b(?!["”’]|\s*,)|&/g, ','));
  const name = found[0].replace(found.groups!.list!, '');
  const known =
    words.length > 0 && words.every((one) => commonWords.has(one) || commonWords.has(one.toLowerCase()));
  if (teaches(name)) return false;
  const sure = surely.test(name) && words.every((one) => /^(?:[ai]|(?=.*[aeiouy])\p{L}{2}.*)$/iu.test(one));
  // Nobody reads such words by patterns: "Demon words: yacht, colonel".
  const named =
    /[:–—]\s*$/.test(name) &&
    !/decodable|practi[cs]e|sample|example|key|spelling|picture|vocab|dictation/i.test(name);
  const before = found.input.slice(0, found.index) + name;
  const odd =
    !teaches(before) &&
    named &&
    words.length > 1 &&
    words.every((one) => one.length > 3 && !regular.test(one));
  return (
    odd ||
    (sure && words.length > 1) ||
    (known && (surely.test(name) || !words.every((one) => regular.test(one))))
  );
}

/** Words with one short vowel that are read as they are written. Such words after "words" may also be examples. */
const regular = /^(?!(?:is|his|as|has|of|was|put|want|to|do)$)[^aeiouy]{0,2}[aeiou][^aeiouywr]{1,2}$/;

function cutAround(
  sentence: string,
  found: RegExpExecArray | null,
  kind: 'notes' | 'by-sight',
): readonly Clause[] | null {
  if (found === null || found[0].trim() === '') return null;
  const end = found.index + found[0].length;
  const list = found.groups?.list;
  return [
    { text: sentence.slice(0, found.index), kind: 'patterns' },
    {
      text: found[0].trim(),
      kind,
      ...(list === undefined ? {} : { words: readWords(list.replace(/\band\b(?!["”’]|\s*,)|&/g, ',')) }),
    },
    { text: sentence.slice(end), kind: 'patterns' },
  ];
}
