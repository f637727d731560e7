/** Who a story is about. */
export interface Person {
  readonly name: string;
  readonly pronoun: 'he' | 'she';
}

/** The forms of a pronoun. */
export const pronounForms = {
  he: { he: 'he', him: 'him', his: 'his' },
  she: { he: 'she', him: 'her', his: 'her' },
} as const;

/** First names that are mostly one or the other, from memory; a group's names that are none of these may be places or boats. */
const HE =
  'Sam Ben Ned Kit Tim Dan Tom Jim Jack Ted Max Finn Fred Bram Otto Gus Sid Len Dev Raj Ravi Omar Jay Ali Ahmed Amir Noah Leo Luis Mateo Hugo Theo Adam Luke Jake Mike James Dean Paul Carl Karl Owen Yusuf Ivan Marco Pedro Diego Juan Carlos Ibrahim Hassan'.split(
    ' ',
  );
const SHE =
  'Meg Jen Pam Tess Beth Jess Nell Liz Jill Ines Wilma Kim Jan Bess Fran Jane Kate Eve Jade Ruth Ann Anna Emma Ella Mia Ava Zoe Lucy Amy Ruby Sara Sarah Nina Maya Aisha Fatima Zara Leila Layla Priya Mei Sofia Maria Rosa Elena Lola Carla Olivia Ada Ivy Molly Polly'.split(
    ' ',
  );
/** How many of each list may come into a story that no pupil is in. */
const CAST = 13;

/** Those of some names whose pronoun is known, then others; only such as the group can read. */
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

/** `Bram had a net. Bram ran.` → `Bram had a net. He ran.`, where nobody else in the story is he. */
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
      // Every second time the name comes again.
      before = isSame ? undefined : subject;
      if (!isSame) return sentence;
      const pronoun = subject.pronoun === 'he' ? 'He' : 'She';
      return pronoun + sentence.slice(subject.name.length);
    })
    .join(' ');
}
