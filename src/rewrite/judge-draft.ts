import type { DraftTask, DraftTools } from './draft-task.ts';
import { findFacts, findNames, plain } from './find-facts.ts';
import { longestSentence, plainText, READ, sentencesOf } from './judge-candidate.ts';

/** The reason why a draft is not shown. */
export type DraftFault =
  | 'hard-word'
  | 'too-short'
  | 'too-long'
  | 'long-sentence'
  | 'name-added'
  | 'number-added'
  | 'person-missing'
  | 'pronoun-added'
  | 'place-missing'
  | 'repeats';

/** A draft as a model answered. Each line of the text is a paragraph. */
export interface Draft {
  readonly title: string;
  readonly text: string;
}

/** A draft as the engine judges it. */
export interface JudgedDraft extends Draft {
  /** The draft may be shown if there are none. */
  readonly faults: readonly DraftFault[];
  /** Words the group cannot read yet, or that are not fit for children. */
  readonly hard: readonly string[];
  /** Running words that practise the group's step. */
  readonly practised: number;
  /** The words of the topic that the draft has. */
  readonly used: readonly string[];
}

/** Numbers that any draft may have: it tells of two people. */
const GIVEN_NUMBERS: ReadonlySet<string> = new Set(['2']);
/** The least share of sentences that are not said before. A few may come again, as “said Wilma” does. Our own figure. */
const NEW_SENTENCES = 2 / 3;
const PRONOUNS = { he: /\b(?:he|him|his|himself)\b/i, she: /\b(?:she|hers?|herself)\b/i } as const;

/** Returns a function that judges drafts for one task. */
export function createDraftJudge(task: DraftTask, tools: DraftTools): (draft: Draft) => JudgedDraft {
  const { read, isFit, isName, practises } = tools;
  const names = new Set(task.people.map(({ name }) => plain(name)));
  const given = new Set([...names, ...task.topic.map(plain)]);

  /** Words that a draft may not have. */
  const findHard = (text: string): string[] => {
    let rest = '';
    let at = 0;
    const hard: string[] = [];
    for (const { start, end, standing } of read(text)) {
      rest += `${text.slice(at, start)} `;
      at = end;
      const word = text.slice(start, end);
      const isGiven = /^\p{Lu}/u.test(word) && given.has(plain(word));
      const small = word.toLowerCase().replaceAll('’', "'");
      if (isGiven || (READ.has(standing) && (standing === 'by-sight' || isFit(small)))) continue;
      hard.push(small);
    }
    // Words of other scripts and the like are no words to the reader, and have no standing.
    const unread = (rest + text.slice(at)).match(/\p{L}+/gu) ?? [];
    return [...new Set([...hard, ...unread])];
  };

  return (draft) => {
    const { text } = draft;
    const hard = findHard(text);
    const words = text.match(/\p{L}+(?:[’'-]\p{L}+)*/gu) ?? [];
    const said = new Set(words.flatMap((word) => [word.toLowerCase(), plain(word)]));
    const own = words.filter((word) => !(/^\p{Lu}/u.test(word) && names.has(plain(word))));
    return {
      title: isTitleFit(draft.title) ? inSentenceCase(draft.title) : plainTitle(),
      text,
      faults: findFaults(),
      hard,
      practised: own.filter((word) => practises(word.toLowerCase().replaceAll('’', "'"))).length,
      used: task.topic.filter((word) => said.has(word.toLowerCase())),
    };

    function findFaults(): DraftFault[] {
      const sentences = sentencesOf(text).map(plainText);
      const numbers = findFacts(text, [], new Set(), () => false).numbers;
      const pronouns = new Set(task.people.map(({ pronoun }) => pronoun));
      const found: readonly (readonly [DraftFault, boolean])[] = [
        ['hard-word', hard.length > 0],
        ['too-short', words.length < task.fewest],
        ['too-long', words.length > task.most],
        ['long-sentence', longestSentence(text) > task.longest],
        ['name-added', namesIn(text).some((name) => !given.has(name))],
        ['number-added', numbers.some((number) => !GIVEN_NUMBERS.has(number))],
        ['person-missing', task.people.some(({ name }) => !namesIn(text).includes(plain(name)))],
        [
          'pronoun-added',
          (['he', 'she'] as const).some((each) => !pronouns.has(each) && PRONOUNS[each].test(text)),
        ],
        ['place-missing', !said.has(task.place.name)],
        ['repeats', new Set(sentences).size < NEW_SENTENCES * sentences.length],
      ];
      return found.filter(([, isWrong]) => isWrong).map(([fault]) => fault);
    }
  };

  /** The names in a text, in lower case. A word is taken for a name at the start of a sentence only if it is one. */
  function namesIn(text: string): string[] {
    // Speech begins a sentence of its own: Bram said, “Get the net.”
    const apart = text.replace(/([,:]) (?=["“‘])/g, '$1\n');
    const starts = [...apart.matchAll(/(?:^|[.?!]["”’']? |\n)["“‘]?(\p{Lu}[\p{L}’'-]*)/gu)];
    const first = starts
      .map(([, word]) => word!)
      .filter((word) => given.has(plain(word)) || isName(word.replace(/['’].*/, '')));
    return [...findNames(apart), ...first.map(plain)];
  }

  /** A title in sentence case: The Lost Net becomes The lost net. */
  function inSentenceCase(title: string): string {
    return title.replace(/(?<=\s)\p{Lu}[\p{L}’'-]*/gu, (word) =>
      names.has(plain(word)) || /^I(?:$|['’])/.test(word) ? word : word.toLowerCase(),
    );
  }

  function isTitleFit(title: string): boolean {
    const said = inSentenceCase(title);
    return (
      /^\p{Lu}[\p{L} ,’'-]*[?!]?$/u.test(said) &&
      said.length <= 60 &&
      findHard(said).length === 0 &&
      namesIn(said).every((name) => given.has(name))
    );
  }

  /** The title of a draft whose own title does not pass. */
  function plainTitle(): string {
    const [one, other] = task.people.map(({ name }) => name);
    const both = `${one} and ${other}`;
    return other === undefined || findHard(both).length > 0 ? one! : both;
  }
}
