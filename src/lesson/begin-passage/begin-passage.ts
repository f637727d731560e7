import type { Accent, PatternId } from '../../analyze/types.ts';
import { inVariety } from '../../variety/index.ts';
import type { KnownWords } from '../known-words.ts';
import type { Picker } from '../picker.ts';
import { readableFrames } from '../sentences/frames.ts';
import { createVocabulary, type Vocabulary } from '../sentences/vocabulary.ts';
import { type Beat, type BeatPiece, compileBeats, type Fact, piecesOf, type Way } from './compile-beats.ts';
import { castFor, type Person, usePronouns } from './people.ts';
import { type Plot, plots } from './plots.ts';
import { type Setting, settings } from './story-classes.ts';
import { drawStoryWords, type StoryWords } from './story-words.ts';

/** The wishes for a draft of a passage. */
export interface PassageWish {
  /** The group's own names. A name is used for a person of the story if its pronoun (he or she) is known. */
  readonly names: readonly string[];
  /** Patterns that the passage should practise where possible. */
  readonly focus: readonly PatternId[];
  /** Words that the passage should be about, where the group can read the words and they fit a place in a story. */
  readonly topic?: readonly string[];
}

/** A draft of a passage, to be edited. */
export interface BegunPassage {
  readonly title: string;
  /** The text of the draft. Each line is a paragraph. */
  readonly text: string;
  /** Running words that practise the focus. */
  readonly practised: number;
  /** The words of the topic that the passage has. */
  readonly used: readonly string[];
  /** The text, beat by beat, before any name became a pronoun, with the place of each person. */
  readonly told: readonly { readonly text: string; readonly facts: readonly Fact[] }[];
}

export const FEWEST_WORDS = 60;
export const MOST_WORDS = 120;
/** The number of words that should practise the focus. */
const PRACTISED = 8;
/** The rank of the rarest word of the bank that is used in a game with words. */
const COMMON = 4000;
/** The number of drafts of a plot before the best draft is taken or the next plot is tried. */
const TRIES = 20;

/**
 * Makes a connected text of 60 to 120 words, all of which the group can read. The text has two people, one setting and
 * a small plot. Returns null if the group knows too little for such a text. The same picker gives the same passage.
 */
export function beginPassage(known: KnownWords, wish: PassageWish, picker: Picker): BegunPassage | null {
  const vocabulary = createVocabulary(known, wish.focus);
  const topic = new Set((wish.topic ?? []).map((word) => word.toLowerCase()));
  const bank = known.words
    .filter(({ word, rank, parts }) => word.length > 2 && parts !== '' && rank <= COMMON)
    .map(({ word }) => word);
  const source = { vocabulary, frames: readableFrames(vocabulary), topic, bank, picker };
  const cast = castFor(wish.names, vocabulary.reads);
  if (cast.length < 2) return null;
  let best: { passage: BegunPassage; score: number } | null = null;
  const inTurn = picker.shuffle(plotsIn(known.accent));
  for (const plot of [...inTurn.filter(({ last }) => !last), ...inTurn.filter(({ last }) => last)]) {
    for (let tries = 0; tries < TRIES; tries++) {
      const setting = chooseSetting(plot, picker);
      const people = choosePeople(cast, picker);
      const words = drawStoryWords(plot, setting, people, source);
      const passage = words && tell(plot, words, vocabulary, people, picker);
      if (!passage || !known.reads(passage.text) || !known.reads(passage.title)) continue;
      const said = new Set(passage.text.toLowerCase().match(/[a-z]+/g));
      const used = [...topic].filter((word) => said.has(word));
      const score = Math.min(passage.practised, PRACTISED) + 4 * used.length;
      if (best === null || score > best.score) best = { passage: { ...passage, used }, score };
    }
    if (best && best.passage.practised >= PRACTISED && best.passage.used.length >= topic.size) break;
  }
  return best?.passage ?? null;
}

const compiled = new Map<Accent, readonly CompiledPlot[]>();

/** Returns the plots in a variety of English. */
function plotsIn(accent: Accent): readonly CompiledPlot[] {
  const before = compiled.get(accent);
  if (before) return before;
  const ours = (text: string): string => inVariety(text, accent);
  const found = plots.map((plot) => ({
    ...plot,
    titles: plot.titles.map((title) => piecesOf(title, ours)),
    beats: compileBeats(plot, ours),
  }));
  compiled.set(accent, found);
  return found;
}

function chooseSetting(plot: CompiledPlot, picker: Picker): Setting {
  const fitting = settings.filter(
    ({ id, water }) => (!plot.water || water !== '') && (!plot.settings || plot.settings.includes(id)),
  );
  return fitting[picker.below(fitting.length)]!;
}

/** Chooses two people. One he and one she are preferred, so that a pronoun shows who is meant. */
export function choosePeople(cast: readonly Person[], picker: Picker): [Person, Person] {
  const [first, ...rest] = picker.shuffle(cast);
  const other = rest.find(({ pronoun }) => pronoun !== first!.pronoun) ?? rest[0];
  return [first!, other!];
}

type CompiledPlot = Omit<Plot, 'beats' | 'titles'> & {
  readonly titles: readonly Way[];
  readonly beats: readonly Beat[];
};

interface ToldBeat {
  readonly beat: Beat;
  readonly text: string;
  readonly words: number;
  readonly practised: number;
}

/**
 * Tells a plot with the words drawn for it. Returns null where a beat cannot be told, or where the text is too short or
 * too long.
 */
function tell(
  { titles, beats }: CompiledPlot,
  words: StoryWords,
  vocabulary: Vocabulary,
  people: readonly [Person, Person],
  picker: Picker,
): Omit<BegunPassage, 'used'> | null {
  const names = new Set(people.map(({ name }) => name));
  const told: ToldBeat[] = [];
  for (const beat of beats) {
    const text = sayBeat(beat, words, vocabulary, names, picker);
    if (text === null && !beat.isOptional) return null;
    if (text === null || (beat.isOptional && speaksAgain(told.at(-1)?.text, text))) continue;
    const said = wordsOf(text, names);
    told.push({ beat, text, words: said.length, practised: said.filter(vocabulary.practises).length });
  }
  const most = FEWEST_WORDS + 15 + picker.below(MOST_WORDS - FEWEST_WORDS - 20);
  const kept = leaveOut(told, most, picker);
  const length = kept.reduce((sum, { words: count }) => sum + count, 0);
  if (length < FEWEST_WORDS || length > MOST_WORDS) return null;
  const title = titles
    .map((each) => fill(each, words))
    .find((each) => each !== null && wordsOf(each, names).every(vocabulary.reads));
  if (!title) return null;
  const paragraphs: string[] = [];
  for (const { beat, text: said } of kept) {
    if (beat.beginsParagraph || paragraphs.length === 0) paragraphs.push(said);
    else paragraphs.push(`${paragraphs.pop()} ${said}`);
  }
  const text = paragraphs.map((each) => usePronouns(each, people, vocabulary.reads)).join('\n');
  return {
    title: inPrint(title),
    text: inPrint(text),
    practised: wordsOf(text, names).filter(vocabulary.practises).length,
    told: kept.map(({ text: said, beat }) => ({ text: said, facts: beat.facts })),
  };
}

/**
 * Returns whether a speaker speaks twice in a row: `“It is lost,” said Bram. “I am sad,” said Bram.` This sounds like
 * someone who cannot stop talking.
 */
function speaksAgain(before: string | undefined, text: string): boolean {
  const speaker = /” (?:said|asked|cried|yelled) (\S+)\.$/.exec(before ?? '')?.[1];
  return speaker !== undefined && text.includes(`” said ${speaker}`);
}

/** Leaves out optional beats until the text is no longer than wanted. The beats that practise least are left out first. */
function leaveOut(told: readonly ToldBeat[], most: number, picker: Picker): ToldBeat[] {
  let length = told.reduce((sum, { words }) => sum + words, 0);
  const optional = picker.shuffle(told.filter(({ beat }) => beat.isOptional));
  const gone = new Set<ToldBeat>();
  for (const each of optional.sort((a, b) => a.practised - b.practised)) {
    const longest = each.practised > 0 ? MOST_WORDS - 5 : most;
    if (length <= longest || length - each.words < FEWEST_WORDS) continue;
    gone.add(each);
    length -= each.words;
  }
  return told.filter((each) => !gone.has(each));
}

/**
 * Returns one way to say a beat. A way that practises the focus or has longer sentences is likelier. Returns null where
 * the group can read no way.
 */
function sayBeat(
  { ways, spare }: Beat,
  words: StoryWords,
  vocabulary: Vocabulary,
  names: ReadonlySet<string>,
  picker: Picker,
): string | null {
  const sayAll = (some: readonly Way[]) =>
    some.flatMap((pieces) => {
      const literal = pieces.filter((piece) => typeof piece === 'string').join(' ');
      if (!wordsOf(literal, names).every(vocabulary.reads)) return [];
      const text = fill(pieces, words);
      if (text === null) return [];
      const all = wordsOf(text, names);
      if (!all.every(vocabulary.reads)) return [];
      return [{ text, weight: (1 + all.length / 8) * (1 + 8 * all.filter(vocabulary.practises).length) }];
    });
  const best = sayAll(ways);
  const said = best.length > 0 ? best : sayAll(spare);
  return picker.pickWeighted(said, ({ weight }) => weight, 1)[0]?.text ?? null;
}

/** Fills the slots of a way with words and begins each sentence with a capital. Returns null where a slot finds no word. */
function fill(pieces: readonly BeatPiece[], words: StoryWords): string | null {
  let text = '';
  for (const piece of pieces) {
    const said = typeof piece === 'string' ? piece : words.say(piece.slot);
    // A way must not say the same words twice: `She had plums and Bram had plums`.
    if (said === null || (typeof piece !== 'string' && piece.slot.startsWith('=') && text.includes(said)))
      return null;
    text += said;
  }
  return text.replace(
    /(^“?|[.?!] “?)(\p{Ll})/gu,
    (_, before: string, letter: string) => before + letter.toUpperCase(),
  );
}

/** Returns the words of a text as the vocabulary has them: in lower case, except for names and I. */
function wordsOf(text: string, names: ReadonlySet<string>): string[] {
  return (text.match(/\p{L}+(?:'\p{L}+)?/gu) ?? []).map((word) =>
    names.has(word.replace(/'s$/, '')) || /^I(?:'|$)/.test(word) ? word : word.toLowerCase(),
  );
}

function inPrint(text: string): string {
  return text.replaceAll("'", '’');
}
