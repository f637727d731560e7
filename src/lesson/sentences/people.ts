import type { Article, Draft } from './draft.ts';
import type { Subject } from './subject.ts';

const PRONOUNS: readonly Subject[] = [
  { text: 'I', number: 'I', whose: 'my', self: 'me us' },
  { text: 'he', number: 'one', whose: 'his', self: 'him' },
  { text: 'she', number: 'one', whose: 'her', self: 'her' },
  { text: 'we', number: 'many', whose: 'our', self: 'us me' },
  { text: 'they', number: 'many', whose: 'their', self: 'them' },
  { text: 'you', number: 'many', whose: 'your', self: 'you' },
];
const HIS = new Set('man king prince boy lad dad grandad brother uncle postman fisherman'.split(' '));
const HER = new Set('woman lady queen princess girl lass mum gran granny sister aunt'.split(' '));

/**
 * Chooses any person as a subject: a group's own name, a pronoun, `the vet`, `my gran`, `the kids`. `mayBeYou` is false
 * where `you` is not suitable, as in `You are glad.`
 */
export function choosePerson(draft: Draft, mayBeYou: boolean): Subject {
  const ways: (() => Subject | null)[] = [
    () => nameSubject(draft),
    () => nameSubject(draft),
    () => {
      const readable = PRONOUNS.filter(({ text }) => draft.reads(text) && (mayBeYou || text !== 'you'));
      return readable[draft.below(readable.length)] ?? null;
    },
    () => nounSubject(draft, 'adult', 'free'),
    () => nounSubject(draft, 'adult', 'the'),
    () => nounSubject(draft, 'child', 'free'),
    () => nounSubject(draft, 'relation', 'my'),
    () => {
      const names = draft.names;
      if (names.length < 2 || !draft.reads('and') || draft.below(2) > 0) return null;
      const [one, other] = draft.pick(names, 2);
      draft.use(one!);
      draft.use(other!);
      return { text: `${one} and ${other}`, number: 'many', whose: 'their', self: 'them' };
    },
  ];
  for (const way of draft.pick(ways, ways.length)) {
    const subject = way();
    if (subject) return subject;
  }
  return PRONOUNS[0]!;
}

/** A noun as a subject. */
export function nounSubject(draft: Draft, nameOfClass: string, article: Article): Subject | null {
  const found = draft.nounPhrase(nameOfClass, article, null, true);
  if (!found) return null;
  const { text, many, name } = found;
  const whose = many ? 'their' : HIS.has(name) ? 'his' : HER.has(name) ? 'her' : null;
  return { text, number: many ? 'many' : 'one', whose, self: many ? 'them' : 'him her' };
}

/**
 * Chooses a person as the object of an action: `Bram`, `me`, `my gran`, `the cook`. Returns null where none can be
 * read.
 */
export function chooseOther(draft: Draft, subject: Subject | null): string | null {
  const self = (subject?.self ?? '').split(' ');
  const ways: (() => string | null)[] = [
    () => nameSubject(draft)?.text ?? null,
    () => nameSubject(draft)?.text ?? null,
    () => {
      const readable = ['me', 'him', 'us', 'them', 'her'].filter(
        (text) => draft.reads(text) && !self.includes(text) && subject?.number !== 'I',
      );
      return readable[draft.below(readable.length)] ?? null;
    },
    () => draft.nounPhrase('relation', 'my', subject, false)?.text ?? null,
    () => draft.nounPhrase('adult', 'the', subject, false)?.text ?? null,
    () => draft.nounPhrase('child', 'the', subject, false)?.text ?? null,
  ];
  for (const way of draft.pick(ways, ways.length)) {
    const text = way();
    if (text) return text;
  }
  return null;
}

function nameSubject(draft: Draft): Subject | null {
  const free = draft.names.filter((name) => !draft.used(name));
  const text = free[draft.below(free.length)];
  if (text === undefined) return null;
  draft.use(text);
  return { text, number: 'one', whose: null, self: '' };
}
