import type { Picker } from '../picker.ts';
import { onlyThe } from './nouns.ts';
import type { Subject } from './subject.ts';
import type { Noun, Vocabulary } from './vocabulary.ts';

/** `free`: any article. `one`: the, without a plural. `bare`: the, without a plural or an adjective. */
export type Article = 'free' | 'a' | 'the' | 'one' | 'bare' | 'my';

/** A noun with the words before it: `six wet dogs`. */
export interface NounPhrase {
  readonly text: string;
  readonly many: boolean;
  readonly name: string;
}

/** A sentence while it is being made. The draft knows its words, so that no word comes twice. */
export interface Draft {
  readonly names: readonly string[];
  reads(phrase: string): boolean;
  phrases(nameOfClass: string): readonly string[];
  below(limit: number): number;
  pick<T>(items: readonly T[], count: number): T[];
  used(word: string): boolean;
  use(word: string): void;
  /** One of the phrases, more likely one that practises the lesson's patterns; undefined where all were used. */
  choose(phrases: readonly string[]): string | undefined;
  /** Returns null where the group can read no noun of the class, or where all were used. */
  nounPhrase(nameOfClass: string, article: Article, owner: Subject | null, first: boolean): NounPhrase | null;
}

/** Begins a sentence. `adjectives` is the number of nouns in ten that may have an adjective. */
export function startDraft(
  vocabulary: Vocabulary,
  names: readonly string[],
  adjectives: number,
  possessives: boolean,
  picker: Picker,
): Draft {
  const { reads, practises } = vocabulary;
  const has = new Set<string>();
  const used = (word: string): boolean => has.has(word);
  const use = (phrase: string): void => {
    for (const word of phrase.split(' ')) has.add(word);
  };
  const choose = (phrases: readonly string[]): string | undefined => {
    const free = phrases.filter((phrase) => !used(phrase.split(' ').at(-1)!));
    const focused = free.filter(practises);
    const from = focused.length > 0 && picker.below(100) < 75 ? focused : free;
    const chosen = from[picker.below(from.length)];
    if (chosen !== undefined) use(chosen);
    return chosen;
  };
  const draft: Draft = {
    names,
    reads,
    phrases: vocabulary.phrases,
    below: picker.below,
    pick: picker.pick,
    used,
    use,
    choose,
    nounPhrase(nameOfClass, article, owner, first) {
      const noun = chooseNoun(nameOfClass);
      if (!noun) return null;
      const { name, one, many } = noun;
      const bare = onlyThe.has(name);
      const plural = !bare && isPlural(noun, article, first);
      const form = plural ? many : one;
      if (form === null) return null;
      const before = bare ? 'the' : articleFor(article, plural, owner, name, nameOfClass);
      if (before === null) return null;
      use(name);
      const isRelation = nameOfClass === 'relation' && /^(my|his|her|our|their|your)$/.test(before);
      const takesAdjective = !bare && article !== 'bare' && !isRelation;
      const adjective = takesAdjective ? adjectiveFor(noun, before) : undefined;
      return {
        text: [before, adjective, form].filter(Boolean).join(' '),
        many: plural || (bare && /[^s]s$/.test(name)),
        name,
      };
    },
  };
  return draft;

  function chooseNoun(nameOfClass: string): Noun | undefined {
    const nouns = vocabulary.nouns(nameOfClass).filter(({ name }) => !used(name));
    const focused = nouns.filter((noun) => formsOf(noun).some(practises));
    const from = focused.length > 0 && picker.below(100) < 75 ? focused : nouns;
    return from[picker.below(from.length)];
  }

  function isPlural({ name, one, many }: Noun, article: Article, first: boolean): boolean {
    if (many === null || many === name || /^(?:a|one|bare)$/.test(article)) return false;
    if (article === 'my' && !first) return false;
    if (one === null || (practises(many) && !practises(one))) return true;
    return article === 'free' && picker.below(8) === 0;
  }

  function adjectiveFor({ adjectives: all }: Noun, before: string): string | undefined {
    const focused = all.filter((word) => practises(word) && !used(word));
    const likely = focused.length > 0 ? Math.max(adjectives, 6) : adjectives;
    if (picker.below(10) >= likely) return undefined;
    const fitting = all.filter((word) => before !== 'a' || !word.endsWith('est'));
    return choose(fitting);
  }

  function articleFor(
    article: Article,
    plural: boolean,
    owner: Subject | null,
    name: string,
    nameOfClass: string,
  ): string | null {
    const mayBeOwned = article === 'free' && OWNED.has(nameOfClass);
    const isOwned = article === 'my' || (mayBeOwned && picker.below(5) === 0);
    const whose = isOwned ? whoseBefore(owner, name) : undefined;
    if (whose !== undefined) return whose;
    if (mayBeOwned && possessives && picker.below(12) === 0) {
      const somebodys = nameBefore();
      if (somebodys !== undefined) return somebodys;
    }
    if (plural) return article === 'free' ? numberBefore() : 'the';
    if (article === 'free') return picker.below(2) === 0 ? 'a' : 'the';
    return article === 'a' ? 'a' : 'the';
  }

  /**
   * Returns the possessive of an owner (my, his), or undefined where the group cannot read it. Returns null where a
   * relation needs a possessive and none can be read: my aunt, not the aunt.
   */
  function whoseBefore(owner: Subject | null, name: string): string | null | undefined {
    const whose = owner ? owner.whose : 'my';
    if (whose !== null && reads(whose)) return whose;
    if (!RELATIONS.has(name)) return undefined;
    return reads('my') ? 'my' : null;
  }

  function nameBefore(): string | undefined {
    const free = names.filter((each) => !used(each));
    const chosen = free[picker.below(free.length)];
    if (chosen === undefined) return undefined;
    use(chosen);
    return `${chosen}'s`;
  }

  function numberBefore(): string {
    const number = choose(['two', 'six', 'ten', 'three', 'four', 'five', 'some'].filter(reads));
    return number !== undefined && picker.below(3) > 0 ? number : 'the';
  }
}

/** Classes of things that may belong to somebody: `his map`, but no `his gull`. */
const OWNED = new Set(
  'own hold clothing pet gift tinyThing container bigContainer made toy painted washed cleaned fixed dog cat placed hung knitted drawn written wrapped opened food sewn'.split(
    ' ',
  ),
);

const RELATIONS = new Set(
  'mum dad gran grandad brother sister aunt uncle pal friend twin cousin granny'.split(' '),
);

function formsOf({ one, many }: Noun): string[] {
  return [one, many].filter((form) => form !== null);
}
