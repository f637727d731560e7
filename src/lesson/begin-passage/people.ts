import { HE, SHE } from '../first-names.ts';

/** A person in a story. */
export interface Person {
  readonly name: string;
  readonly pronoun: 'he' | 'she';
}

/** The forms of a pronoun. */
export const pronounForms = {
  he: { he: 'he', him: 'him', his: 'his' },
  she: { he: 'she', him: 'her', his: 'her' },
} as const;

/** The number of names from each list that may come into a story although no pupil has the name. */
const CAST = 13;

/** Returns the people whose names the group can read. The group's own names with a known pronoun come first. */
export function castFor(names: readonly string[], reads: (name: string) => boolean): Person[] {
  const own = names.flatMap((name): Person[] => {
    if (HE.includes(name)) return [{ name, pronoun: 'he' }];
    return SHE.includes(name) ? [{ name, pronoun: 'she' }] : [];
  });
  const others = [
    ...HE.slice(0, CAST).map((name): Person => ({ name, pronoun: 'he' })),
    ...SHE.slice(0, CAST).map((name): Person => ({ name, pronoun: 'she' })),
  ].filter(({ name }) => !names.includes(name));
  return [...own, ...(own.length < 2 ? others : [])].filter(({ name }) => reads(name));
}

/**
 * Replaces names by pronouns where nobody else in the story has the same pronoun: `Bram had a net. Bram ran.` → `Bram
 * had a net. He ran.`
 */
export function usePronouns(
  paragraph: string,
  people: readonly [Person, Person],
  reads: (word: string) => boolean,
): string {
  const [one, other] = people;
  if (one.pronoun === other.pronoun) return paragraph;
  const subjectOf = (sentence: string): Person | undefined =>
    people.find(({ name }) => sentence.startsWith(`${name} `) && !sentence.startsWith(`${name} and `));
  let before: Person | undefined;
  return paragraph
    .split(/(?<=[.?!]”?) (?=\p{Lu}|“)/u)
    .map((sentence) => {
      const subject = subjectOf(sentence);
      const isSame = subject !== undefined && subject === before && reads(subject.pronoun);
      // Only every second repetition of a name becomes a pronoun.
      before = isSame ? undefined : subject;
      if (!isSame) return sentence;
      const pronoun = subject.pronoun === 'he' ? 'He' : 'She';
      return pronoun + sentence.slice(subject.name.length);
    })
    .join(' ');
}
