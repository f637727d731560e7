import type { Picker } from '../picker.ts';
import { type Article, type Draft, startDraft } from './draft.ts';
import type { Frame, Piece, Slot, VerbForms } from './frames.ts';
import { chooseOther, choosePerson, nounSubject } from './people.ts';
import type { Subject } from './subject.ts';
import type { Vocabulary } from './vocabulary.ts';

/** The parts that a sentence is made from. */
export interface Ingredients {
  readonly vocabulary: Vocabulary;
  readonly names: readonly string[];
  readonly longest: number;
  /** Whether `Wilma's` and `didn't` were taught. */
  readonly possessives: boolean;
  readonly contractions: boolean;
}

/** A way to say that something is done, such as `will` or `did`, with the form of the verb it needs. */
interface Manner {
  readonly form: keyof VerbForms;
  say(subject: Subject, verb: string, rest: string): string;
  /** The times that may follow. Left out where no time may follow. */
  readonly time?: 'past' | 'always' | 'ahead';
  /** Whether no phrase of manner may follow, and no time either: not `He can't fix it with a grin.` */
  readonly bare?: boolean;
  readonly likely: number;
  /** Whether only people may be the subject: only people are asked, want and must. */
  readonly people?: boolean;
}

const isI = ({ text }: Subject): boolean => text === 'I';
const isPronoun = ({ text }: Subject): boolean => /^(?:I|he|she|we|they|you)$/.test(text);
const isOne = ({ number }: Subject): boolean => number === 'one';
const onlyIf = (fits: boolean, said: string): string => (fits ? said : '');
const isYou = ({ text }: Subject): boolean => text === 'you';
const be = ({ number }: Subject): string => (number === 'I' ? 'am' : number === 'many' ? 'are' : 'is');
const was = ({ number }: Subject): string => (number === 'many' ? 'were' : 'was');
const wants = ({ number }: Subject): string => (number === 'one' ? 'wants' : 'want');

const MANNERS: readonly Manner[] = [
  { form: 'past', say: (who, verb, rest) => `${who.text} ${verb} ${rest}.`, time: 'past', likely: 10 },
  {
    form: 'third',
    say: (who, verb, rest) => onlyIf(isOne(who), `${who.text} ${verb} ${rest}.`),
    time: 'always',
    likely: 3,
  },
  {
    form: 'base',
    say: (who, verb, rest) => onlyIf(!isOne(who) && !isYou(who), `${who.text} ${verb} ${rest}.`),
    time: 'always',
    likely: 2,
  },
  {
    form: 'ing',
    say: (who, verb, rest) => onlyIf(!isYou(who), `${who.text} ${be(who)} ${verb} ${rest}.`),
    likely: 4,
  },
  {
    form: 'ing',
    say: (who, verb, rest) => `${who.text} ${was(who)} ${verb} ${rest}.`,
    time: 'past',
    likely: 2,
  },
  {
    form: 'ing',
    say: (who, verb, rest) => onlyIf(!isI(who), `${be(who)} ${who.text} ${verb} ${rest}?`),
    likely: 2,
  },
  { form: 'base', say: (who, verb, rest) => `${who.text} will ${verb} ${rest}.`, time: 'ahead', likely: 2 },
  { form: 'base', say: (who, verb, rest) => `${who.text} can ${verb} ${rest}.`, likely: 2 },
  { form: 'base', say: (who, verb, rest) => `${who.text} did not ${verb} ${rest}.`, bare: true, likely: 1 },
  {
    form: 'base',
    say: (who, verb, rest) => onlyIf(!isI(who), `did ${who.text} ${verb} ${rest}?`),
    likely: 2,
  },
  { form: 'base', say: (who, verb, rest) => `can ${who.text} ${verb} ${rest}?`, likely: 1 },
  {
    form: 'base',
    say: (who, verb, rest) => onlyIf(!isI(who), `will ${who.text} ${verb} ${rest}?`),
    likely: 1,
  },
  {
    form: 'base',
    say: (who, verb, rest) => onlyIf(!isYou(who), `${who.text} ${wants(who)} to ${verb} ${rest}.`),
    likely: 1,
    people: true,
  },
  {
    form: 'base',
    say: (who, verb, rest) => onlyIf(!isYou(who), `${who.text} had to ${verb} ${rest}.`),
    likely: 1,
    people: true,
  },
  {
    form: 'base',
    say: (who, verb, rest) => onlyIf(isYou(who), `please ${verb} ${rest}.`),
    likely: 4,
    people: true,
  },
];

const CONTRACTED: readonly Manner[] = [
  { form: 'base', say: (who, verb, rest) => `${who.text} didn't ${verb} ${rest}.`, bare: true, likely: 5 },
  { form: 'base', say: (who, verb, rest) => `${who.text} can't ${verb} ${rest}.`, bare: true, likely: 4 },
  {
    form: 'ing',
    say: (who, verb, rest) => onlyIf(isPronoun(who), `${short(who)} ${verb} ${rest}.`),
    likely: 9,
  },
  {
    form: 'base',
    say: (who, verb, rest) => onlyIf(isPronoun(who), `${who.text}'ll ${verb} ${rest}.`),
    likely: 6,
  },
];

const short = (who: Subject): string => `${who.text}'${{ I: 'm', one: 's', many: 're' }[who.number]}`;

const TIMES = {
  past: /./,
  always:
    /^(?:at (?:ten|six|lunch|noon|dusk|three|eight|five|teatime|sunset|daybreak|night)|on \w+|after (?:lunch|school|tea|dinner)|before \w+|in (?:the (?:morning|evening|afternoon|holidays)|spring|summer))$/,
  ahead: /^(?!this morning)/,
};

/** Makes one sentence from a frame. Returns null where chance led to words the group cannot read or to a word twice. */
export function makeSentence(frame: Frame, ingredients: Ingredients, picker: Picker): string | null {
  const { vocabulary, names, longest, possessives, contractions } = ingredients;
  const room = longest - 5;
  const draft = startDraft(vocabulary, names, Math.min(2 + room, 5), possessives, picker);
  const subject = frame.who === null ? null : subjectOf(draft, frame.who);
  if (frame.who !== null && !subject) return null;
  const said = frame.verb && subject ? withVerb(frame, frame.verb, subject) : fill(draft, frame.pieces, null);
  return said && !hasTwice(said) ? finish(said) : null;

  function withVerb({ pieces, tail, who }: Frame, verb: VerbForms, about: Subject): string | null {
    const manners = [...MANNERS, ...(contractions ? CONTRACTED : [])].filter(
      ({ form, people }) => verb[form] !== null && (!people || who === 'people'),
    );
    const weighed = manners.flatMap((manner) =>
      Array<Manner>(manner.likely * (vocabulary.practises(verb[manner.form]!) ? 6 : 1)).fill(manner),
    );
    const manner = weighed[picker.below(weighed.length)];
    if (!manner) return null;
    draft.use(verb.base ?? verb.past ?? '');
    const rest = fill(draft, pieces, about);
    if (!rest) return null;
    const said = manner.say(about, verb[manner.form]!, rest);
    if (said === '' || !vocabulary.reads(said.replace(/[.?]$/, ''))) return null;
    const length = said.split(' ').length;
    const end =
      tail === 'none' || manner.bare || longest - length < 2 || picker.below(10) > 2 + room
        ? null
        : tailOf(manner);
    return end ? said.replace(/\.$/, ` ${end}.`) : said;

    function tailOf({ time }: Manner): string | null {
      const move = who !== 'people' || /^(?:to|up|along|past|into|in|across|under|over) /.test(rest!);
      const ways = tail === 'how' ? vocabulary.phrases(move ? 'howMove' : 'how') : [];
      // The word `fast` may follow only the verb itself: `he ran fast`, but not `he ran in the forest fast`.
      const twice = (phrase: string): boolean =>
        rest!.includes(` ${phrase.split(' ').at(-1)}`) || (phrase === 'fast' && rest!.includes(' '));
      const times =
        time === undefined || (tail === 'how' && who !== 'people')
          ? []
          : vocabulary.phrases('when').filter((phrase) => TIMES[time].test(phrase));
      return (
        draft.choose(
          (ways.length > 0 && picker.below(2) > 0 ? ways : times).filter((each) => !twice(each)),
        ) ?? null
      );
    }
  }
}

function subjectOf(draft: Draft, who: string): Subject | null {
  return who === 'people'
    ? choosePerson(draft, false)
    : nounSubject(draft, who, draft.below(3) > 0 ? 'the' : 'free');
}

/** Fills the pieces of a frame with words. Returns null where a slot finds no word. */
function fill(draft: Draft, pieces: readonly Piece[], about: Subject | null): string | null {
  let subject = about;
  let text = '';
  for (const piece of pieces) {
    if (piece.kind === 'words') text += piece.text;
    else if (piece.kind === 'agrees') text += agree(piece.forms, subject, draft);
    else {
      const { slot } = piece;
      if (slot.subject) subject = subjectFor(draft, slot);
      const words = slot.subject
        ? subject && withThe(slot.article, subject.text)
        : sayNoun(draft, slot, subject, text);
      if (!words) return null;
      text += words;
    }
  }
  return text;
}

function subjectFor(draft: Draft, { of, article }: Slot): Subject | null {
  if (of === 'people') return choosePerson(draft, false);
  return article.endsWith('as-is') ? asIs(draft, of) : nounSubject(draft, of, article as Article);
}

/** The words of a slot that is not the subject; null or undefined where none can be read. */
function sayNoun(draft: Draft, { of, article }: Slot, subject: Subject | null, before: string) {
  if (of === 'person') return chooseOther(draft, subject);
  if (article === 'as-is' || article === 'the-as-is') {
    const found = asIs(draft, of);
    return found && withThe(article, found.text);
  }
  // One thing is in one box, so these prepositions take no plural: `on the steps`, but `in the box`.
  const within = article === 'the' && /\b(?:in|into|under|behind|from|off) $/.test(before);
  return draft.nounPhrase(of, within ? 'one' : article, subject, false)?.text;
}

function withThe(article: Slot['article'], text: string): string {
  return article === 'the-as-is' ? `the ${text}` : text;
}

function asIs(draft: Draft, of: string): Subject | null {
  const text = draft.choose(draft.phrases(of));
  if (text === undefined) return null;
  return { text, number: /[^s]s$/.test(text) ? 'many' : 'one', whose: null, self: '' };
}

function agree(forms: string, subject: Subject | null, draft: Draft): string {
  const who = subject ?? { text: '', number: 'one', whose: null, self: '' };
  const both = forms === 'be' ? (draft.below(2) > 0 ? 'is/are' : 'was/were') : forms;
  const [one = '', many = ''] = both.split('/');
  if (who.number === 'I') return one === 'is' ? 'am' : one === 'was' ? 'was' : many;
  return who.number === 'many' ? many : one;
}

/** Whether a sentence repeats a word other than the words that may repeat: `the wet vest is wet`. */
function hasTwice(said: string): boolean {
  const words = said
    .toLowerCase()
    .replace(/[.?]/g, '')
    .split(' ')
    .filter((word) => !MAY_REPEAT.has(word));
  return new Set(words).size < words.length;
}

const MAY_REPEAT = new Set('the a an to in on at and of my his her our their your for with'.split(' '));

/** Begins a sentence with a capital and writes an for a before a vowel: an egg, but a unicorn. */
function finish(said: string): string {
  const right = said.replace(/\ba (?=[aeiou])(?!uni|use|one|eu)/gi, 'an ');
  return right.charAt(0).toUpperCase() + right.slice(1);
}
