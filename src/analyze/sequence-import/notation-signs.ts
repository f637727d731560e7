import { becomes, type NotationRule, note, phrase, wordAt } from './match-words.ts';
import { thenAdd } from './notation-changes.ts';
import { addedAffixes, everySound, soundOf } from './notation-lists.ts';
import { at, ofWords } from './place-words.ts';

const ofSyllables = phrase(
  '(?:(?:longer )?words? (?:with|of|that have|having) )?(two|2|three|3|four|4)( or more| and more| or three| or 3| and three| plus)? syllables?(?: words?)?( and more| or more)?',
  ([, count = '', more, beyond]) =>
    /two|2/.test(count)
      ? (more ?? beyond)
        ? ['syllables-2', 'syllables-3']
        : ['syllables-2']
      : ['syllables-3'],
);

const allVowels = note('(?:with )?all (?:the |five |5 )?(?:short |long )?vowels');

const allMeant = note(
  'all (?:of them|together|at once|two|three|four|five|six|seven|eight|\\d{1,2})(?! (?:sounds?|ways?|pronunciations?|(?:syllable )?types?|syllables?))',
);

/** Rules for words that tell how other words belong together, or that say nothing. The first rule that applies is used. */
export const signNotations: readonly NotationRule[] = [
  {
    name: 'singular and plural',
    example: 'nouns, singular and plural',
    counterExample: 'plurals',
    applies: note(
      '(?:of )?(?:singular (?:and |or |& )?plural|plural (?:and |or |& )?singular|singular)(?: nouns?| ones?| forms?)?|nouns?',
    ),
  },
  {
    name: 'words of several syllables',
    example: 'words with two or more syllables',
    counterExample: 'words with two sounds',
    applies: (lexemes, i) =>
      /^(?:divid(?:e|es|ing)|split(?:s|ting)?|break(?:s|ing)?)$/.test(wordAt(lexemes, i - 1))
        ? null
        : ofSyllables(lexemes, i),
  },
  {
    name: 'endings that are added',
    example: 'adding ed, ing and er',
    counterExample: 'adding letters',
    applies: addedAffixes,
  },
  {
    name: 'a sound by its name',
    example: 'gh with the sound of f',
    counterExample: 'the sound of f',
    applies: soundOf,
  },
  {
    name: 'an ending that is added after a change',
    example: 'drop e, then add',
    counterExample: 'drop e, then sh',
    applies: thenAdd,
  },
  {
    name: 'all sounds of letters',
    example: 'ear (three sounds)',
    counterExample: 'three blends',
    applies: everySound,
  },
  {
    name: 'examples follow',
    example: 'igh such as light',
    counterExample: 'as',
    applies: becomes(
      'hint',
      '(?:(?:we )?(?:hear|heard|say|said|sounds?|sounding|pronounced)(?: it| them)? (?:as|like)(?: in)?|such as|as in|as heard in|like in|for example|for instance|found in|heard in|words like|in words like|in words such as|in words|as found in)(?: the words?)?',
    ),
  },
  {
    name: 'a list follows',
    example: 'digraphs including sh and th',
    counterExample: 'digraphs in books',
    applies: becomes(
      'list',
      '(?:including|includes?|namely|(?:spelled|spelt|spellings?(?! changes?\\b))(?: as| with| by| of)?|written(?: as| with)?|made (?:with|by)|represented (?:by|as))',
    ),
  },
  {
    name: 'one more',
    example: 'er, ir plus ur',
    counterExample: 'plus',
    applies: (lexemes, i) =>
      i > 0 &&
      /^(?:plus|also|then)$/.test(wordAt(lexemes, i)) &&
      lexemes[i + 1] !== undefined &&
      // "consonant plus le" is a single term.
      !(wordAt(lexemes, i - 1) === 'consonant' && /^le?$/.test(wordAt(lexemes, i + 1))) &&
      // A word at the end of brackets joins nothing: "th (thin and then)".
      !/^(?:close|break)$/.test(lexemes[i + 1]!.kind)
        ? { taken: 1, given: [{ ...lexemes[i]!, kind: 'break', text: 'plus' }] }
        : null,
  },
  {
    name: 'that all are meant',
    example: 'l-blends (all six)',
    counterExample: 'all, ball',
    applies: (lexemes, i) =>
      // The word may be alone in brackets: "silent e (all)".
      i > 0 &&
      lexemes[i]!.text === 'all' &&
      lexemes[i - 1]!.kind === 'open' &&
      lexemes[i + 1]?.kind === 'close'
        ? { taken: 1, given: [{ ...lexemes[i]!, kind: 'note' }] }
        : allMeant(lexemes, i),
  },
  {
    name: 'that all vowels are meant',
    example: 'silent e, all vowels',
    counterExample: 'all vowels',
    applies: (lexemes, i) =>
      lexemes
        .slice(Math.max(0, i - 8), i)
        .some(({ text }) => /^(?:silent|vce|cvce|magic|final|cvc|cle|[aeiou]_e)$/.test(text))
        ? allVowels(lexemes, i)
        : null,
  },
  {
    name: 'that several are meant',
    example: 'l-blends (six of them)',
    counterExample: 'six blends',
    applies: note('(?:two|three|four|five|six|seven|eight|\\d{1,2}) of them'),
  },
  {
    name: 'how long it takes',
    example: 'ai, ay 2 weeks',
    counterExample: 'ai, ay in week 2',
    applies: note(
      '(?:about )?(?:\\d{1,2}|one|two|three|four|five|six)(?: or (?:\\d|two|three))? (?:weeks?|days?|lessons?|sessions?|hours?|min|mins|minutes?)',
    ),
  },
  {
    name: 'a silent e behind letters',
    example: 'soft c before silent e',
    counterExample: 'silent e',
    applies: (lexemes, i) =>
      i > 0 ? note('(?:before|after) (?:a |the )?(?:silent|final) e')(lexemes, i) : null,
  },
  {
    name: 'an e that is missing',
    example: 'long o without a silent e',
    counterExample: 'long o with a silent e',
    applies: note('(?:without|with no|but no) (?:a |the |any )?(?:silent |final )?e'),
  },
  {
    name: 'who teaches',
    example: 'I begin with ai',
    counterExample: 'i as in pin',
    applies: note(
      '(?:so |then |and |also )?(?:i|we) (?:also |only |just |then |will |am |are |always )?(?:going to |able to )?(?:begin|start|move|do|did|teach|give|add|introduce|learn|meet|cover|have|use|like|want|go|run|ran|try|finish|end|work|spend|practi[cs]e|take|bring|look)(?: (?:to|on|with|at|them|onto|in|the class))*',
    ),
  },
  {
    name: 'longer words that have something',
    example: 'longer words with clusters at the end',
    counterExample: 'longer words',
    applies: note('longer words (?:with|that have|that end in|containing)(?! (?:two|three|2|3|four|more))'),
  },
  {
    name: 'what divided words have besides',
    example: 'VCC/CV with a blend',
    counterExample: 'short a with a blend',
    applies: (lexemes, i) =>
      /^v?c{1,3}v?$/.test(wordAt(lexemes, i - 1))
        ? note(
            '(?:with|that have|containing|and) (?:a |an |two )?(?:consonant |final |initial )?(?:blend|digraph|cluster|vowel team)s?',
          )(lexemes, i)
        : null,
  },
  {
    name: 'in longer words',
    example: 'closed syllables in longer words',
    counterExample: 'longer words',
    applies: (lexemes, i) =>
      i > 0
        ? note('(?:in|of|for|within) (?:longer|multisyllabic|multisyllable|polysyllabic|big|bigger) words')(
            lexemes,
            i,
          )
        : null,
  },
  {
    name: 'a place in the word',
    example: 'ck at the end of short words',
    counterExample: 'end blends',
    applies: note(`${at}${ofWords}`),
  },
  {
    name: 'beside a kind of sound',
    example: 'tch after a short vowel',
    counterExample: 'c before e, i',
    applies: note(
      `(?:right |just |immediately )?(?:before|after|following|when adding|when you add) (?:a |an |the |any |one |all )?(?:(?:short|long|single|two|double|more|final|stressed|vowel|consonant|other|and|or|another|suffix|ending|a|an)\\s?)*(?:vowel (?:team|digraph|pair|sound)s?|vowels?|consonants?|suffix|suffixes|endings?|blends?|syllables?|letters?)(?: sounds?| suffix(?:es)?)?(?: (?:that |which )?(?:begin|start|end)(?:s|ning|ing)? (?:with|in) (?:a |an |the )?(?:vowel|consonant|letter)s?)?`,
    ),
  },
  {
    name: 'how what is added begins',
    example: 'suffixes beginning with a vowel',
    counterExample: 'beginning with sh',
    applies: note(
      '(?:that |which )?(?:begin|start|end)(?:s|ning|ing)? (?:with|in) (?:a |an |the )?(?:vowel|consonant)s?(?: letters?| sounds?)?',
    ),
  },
  {
    name: 'what is left as it is',
    example: '-ing with no change',
    counterExample: 'change y to i',
    applies: note(
      "(?:with |and )?(?:no|without) (?:a )?(?:base |spelling )?change(?: (?:to|of|in) (?:the )?(?:base|root|word|spelling)(?: words?)?)?|for comparing|for more than one|to (?:make|form|show|mean|give)(?: an?| the)? [a-z]+(?: [a-z]+)?|(?:where|when|if) (?:the )?(?:base|root|word|base word|root word|spelling) (?:does not|is not|stays|is)(?: the)? (?:change|changed|same)|(?:the )?(?:base|root)(?: words?)? (?:does not|doesn't|do not|is not|stays|is)(?: the)? (?:change|changed|same)|(?:to )?say the same|all say",
    ),
  },
  {
    name: 'how many things an e does',
    example: 'silent e (five jobs of e)',
    counterExample: 'silent e (five weeks)',
    applies: note(
      '(?:the )?(?:\\d|two|three|four|five|six) (?:jobs|rules|reasons|uses) (?:of|for)(?: (?:silent|final|the))? e',
    ),
  },
  {
    name: 'what a vowel says',
    example: 'silent e makes the vowel say its name',
    counterExample: 'the vowel e',
    applies: note(
      '(?:that |which )?(?:mak(?:e|es|ing) )?(?:the |a |its )?(?:vowels? )?(?:says?|saying) (?:its|their) (?:own )?names?',
    ),
  },
];
