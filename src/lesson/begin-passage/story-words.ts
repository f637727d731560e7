import type { Picker } from '../picker.ts';
import type { Frame, VerbForms } from '../sentences/frames.ts';
import { onlyThe } from '../sentences/nouns.ts';
import type { Noun, Vocabulary } from '../sentences/vocabulary.ts';
import { canStandAlone, mayAlsoBe } from './adjectives.ts';
import { type Person, pronounForms } from './people.ts';
import { jobVerbs, type Setting, storyClasses, storyPhrases } from './story-classes.ts';

/** The sources of a story. */
export interface StorySource {
  readonly vocabulary: Vocabulary;
  /** The frames of sentences that the group can read. */
  readonly frames: readonly Frame[];
  readonly topic: ReadonlySet<string>;
  /** Words of the bank that the group can read and that suit a game with words. */
  readonly bank: readonly string[];
  readonly picker: Picker;
}

/** A job: the forms of its verb, and the words after the verb: `paint`, `the shed`. */
interface Job {
  readonly verb: VerbForms;
  readonly rest: string;
}

/** The words of one story. A thing drawn once keeps its name to the end. */
export interface StoryWords {
  /** Returns the words of a slot. Returns null if the group can read nothing that fits. */
  say(slot: string): string | null;
  readonly place: string;
}

/** Returns the places of a setting that the group can read, with how one is there: `dock`, `on`. */
export function readablePlaces(
  setting: Setting,
  { ours, reads }: Vocabulary,
): { readonly name: string; readonly at: string }[] {
  return setting.places.split(' ; ').flatMap((line) => {
    const [written = '', at = ''] = line.split(' ');
    const name = ours(written);
    return reads(`${at} the ${name}`) ? [{ name, at }] : [];
  });
}

/** Draws the words of a story. Returns null where the group cannot read something that the story needs. */
export function drawStoryWords(
  { things, water }: { readonly things: string; readonly water?: true },
  setting: Setting,
  people: readonly [Person, Person],
  { vocabulary, frames, topic, bank, picker }: StorySource,
): StoryWords | null {
  const { ours, reads, practises } = vocabulary;
  const used = new Set<string>();
  const nouns = new Map<string, Noun>();
  const jobs = new Map<string, Job>();
  const bankWords = new Map<string, string>();
  const adjectives = new Map<string, string | undefined>();
  const timesSaid = new Map<string, number>();
  const [A, B] = people;
  const persons: Readonly<Record<string, Person>> = { A, B };
  const areAlike = A.pronoun === B.pronoun;

  const places = readablePlaces(setting, vocabulary);
  const byWater = new Set(setting.water.split(' ').map(ours));
  const chosen = likely(places.map(({ name }) => name).filter((name) => !water || byWater.has(name)));
  const place = places.find(({ name }) => name === chosen);
  if (!place) return null;
  used.add(place.name);

  for (const each of things.split(' ')) {
    const [name = '', of = ''] = each.split(':');
    if (of === 'job') {
      const job = drawJob();
      if (!job) return null;
      jobs.set(name, job);
      continue;
    }
    if (of === 'word') {
      const word = likely(bank);
      if (word === undefined) return null;
      used.add(word);
      bankWords.set(name, word);
      continue;
    }
    const noun = drawNoun(of);
    // A story does without a missing thing, such as a fourth sight. The beats that need the thing are not told.
    if (noun) nouns.set(name, noun);
  }
  return { say, place: place.name };

  /**
   * Returns one of the given words. A word of the topic is likelier than other words, and so is a word that practises
   * the patterns of the lesson.
   */
  function likely(words: readonly string[]): string | undefined {
    const free = words.filter((word) => !used.has(word));
    const topical = free.filter((word) => topic.has(word));
    const focused = free.filter(practises);
    const from = topical.length > 0 ? topical : focused.length > 0 && picker.below(20) < 19 ? focused : free;
    return from[picker.below(from.length)];
  }
  function drawNoun(of: string): Noun | undefined {
    const names = (setting.classes[of] ?? storyClasses[of] ?? of).split(' ');
    const readable = names.filter((name) => find(name)?.one);
    const chosen = likely(readable);
    if (chosen === undefined) return undefined;
    used.add(chosen);
    return find(chosen);
  }
  function find(name: string): Noun | undefined {
    return vocabulary.nouns(name).find((noun) => noun.name === name);
  }
  function drawJob(): Job | null {
    const worked = new Set(setting.worked.split(' '));
    const fits = frames.filter(({ who, verb }) => who === 'people' && verb?.base && jobVerbs.has(verb.base));
    const focused = fits.filter(({ verb }) =>
      [verb?.base, verb?.past].some((form) => form && practises(form)),
    );
    for (let tries = 0; tries < 12; tries++) {
      const from = focused.length > 0 && picker.below(10) < 6 ? focused : fits;
      const frame = from[picker.below(from.length)];
      if (!frame?.verb?.base || used.has(frame.verb.base)) continue;
      const rest = fillJob(frame, worked);
      if (rest === null) continue;
      used.add(frame.verb.base);
      for (const word of rest.split(' ')) if (worked.has(word)) used.add(word);
      return { verb: frame.verb, rest };
    }
    return null;
  }
  function fillJob({ pieces }: Frame, worked: ReadonlySet<string>): string | null {
    let text = '';
    for (const piece of pieces) {
      if (piece.kind === 'agrees') return null;
      if (piece.kind === 'words') {
        text += piece.text;
        continue;
      }
      const { of, article } = piece.slot;
      if (of === 'people' || of === 'person' || article === 'my') return null;
      if (article.endsWith('as-is')) {
        const word = likely(vocabulary.phrases(of).filter((phrase) => worked.has(phrase)));
        if (word === undefined) return null;
        text += article === 'as-is' ? word : `the ${word}`;
      } else {
        const fitting = vocabulary.nouns(of).filter(({ name }) => worked.has(name));
        const word = likely(fitting.flatMap(({ one }) => one ?? []));
        if (word === undefined) return null;
        const isOnly = onlyThe.has(word) || /[^s]s$/.test(word);
        text += article === 'a' && !isOnly ? `${articleOf(word)} ${word}` : `the ${word}`;
      }
    }
    return text.trim();
  }

  function say(slot: string): string | null {
    if (slot in persons) return persons[slot]!.name;
    const pronoun = /^([AB])\.(he|him|his)$/.exec(slot);
    if (pronoun) return sayPronoun(persons[pronoun[1]!]!, pronoun[2] as 'he');
    const atPlace = /^(?:(at|to) )?place$/.exec(slot);
    if (atPlace) return sayPlace(atPlace[1]);
    if (slot.startsWith('=')) return sayAsIs(slot.slice(1));
    const [first = '', name = first] = slot.split(' ');
    const word = bankWords.get(name);
    if (word !== undefined) return word;
    const job = jobs.get(name);
    if (job) {
      const form = job.verb[first as keyof VerbForms];
      return form ? `${form} ${job.rest}` : null;
    }
    const [bare = '', asks] = name.split('.');
    const noun = nouns.get(bare);
    if (!noun?.one) return null;
    if (asks === 'adj') return adjectiveOf(noun, true) ?? null;
    if (first === name) return noun.one;
    const adjective = first === 'a+' ? adjectiveOf(noun, false) : undefined;
    const said = [adjective, noun.one].filter(Boolean).join(' ');
    const article = articleOf(said);
    return reads(article) ? `${article} ${said}` : null;
  }
  function sayPronoun(person: Person, form: 'he' | 'him' | 'his'): string | null {
    if (form === 'he' && areAlike) return person.name;
    const said = pronounForms[person.pronoun][form];
    if (reads(said)) return said;
    return form === 'he' ? person.name : null;
  }
  function sayPlace(preposition: string | undefined): string {
    const { name, at } = place!;
    if (preposition === undefined) return name;
    return `${preposition === 'at' ? at : 'to'} the ${name}`;
  }
  function sayAsIs(of: string): string | null {
    const words =
      storyPhrases[of] ?? (setting.classes[of] ?? storyClasses[of])?.split(' ') ?? vocabulary.phrases(of);
    return likely(words.map(ours).filter((word) => reads(word))) ?? null;
  }
  /** Returns the same adjective each time. A way to say a beat that is not chosen therefore uses up no adjective. */
  function adjectiveOf({ name, adjectives: all }: Noun, isAlone: boolean): string | undefined {
    const key = `${isAlone} ${name}`;
    if (adjectives.has(key)) return adjectives.get(key);
    const other = adjectives.get(`${!isAlone} ${name}`);
    const free = all.filter(
      (word) =>
        !/est$/.test(word) &&
        (timesSaid.get(word) ?? 0) < MOST_OF_ONE &&
        (other === undefined || mayAlsoBe(word, other)) &&
        (!isAlone || canStandAlone(word)),
    );
    const focused = free.filter(practises);
    const from = focused.length > 0 ? focused : free;
    const chosen = from[picker.below(from.length)];
    adjectives.set(key, chosen);
    if (chosen !== undefined) timesSaid.set(chosen, (timesSaid.get(chosen) ?? 0) + 1);
    return chosen;
  }
}

/** The most things in one story that may have the same adjective. */
const MOST_OF_ONE = 2;

function articleOf(said: string): string {
  return /^(?:[aeio]|u(?!ni|se))/.test(said) ? 'an' : 'a';
}
