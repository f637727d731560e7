import { existsSync, readFileSync } from 'node:fs';
import type { Question } from '../../analyze/homographs/choose-reading.ts';
import { contextFeatures } from '../../analyze/homographs/context-features.ts';
import { writeFeature } from '../../analyze/homographs/feature-weights.ts';
import { readContext } from '../../analyze/homographs/read-context.ts';
import { readBrown, wordsAround } from './read-brown.ts';

/** One occurrence of a homograph with its reading in that place. */
export interface Example {
  readonly word: string;
  /** The word as written. `before` and `after` are the words around it. */
  readonly shown: string;
  readonly before: readonly string[];
  readonly after: readonly string[];
  readonly features: readonly string[];
  /** The index of the reading in homographs.tsv. For a word that is not in that file, 1 means the verb. */
  readonly reading: number;
  /**
   * The question that this word shares with other words. `yes` is the index of the reading that is the verb or the
   * past.
   */
  readonly question: Question | undefined;
  readonly yes: number | undefined;
  /** The weight of the example in training. */
  readonly weight: number;
  /** Whether the table has both readings of the word. Only then are the weights learnt for the word kept. */
  readonly listed: boolean;
}

const source = new URL('../../../../shared/data/homographs_train.tsv', import.meta.url);
const VERB = 'verb';
/** Words with a past or participle reading (wound, dove), and the index of that reading. */
const PASTS: Readonly<Record<string, number>> = {
  aged: 0,
  blessed: 0,
  dove: 1,
  learned: 0,
  moped: 0,
  wound: 1,
};
const VERB_LABELS: Readonly<Record<string, string>> = { analyses: 'analyze' };
/**
 * The weight of a Brown corpus example. The corpus has other kinds of text than those read here. Found by
 * cross-validation.
 */
const BROWN_COUNTS = 0.4;

/**
 * Returns the sentences of the Wikipedia homograph data (Gorman, Mazovetskiy and Nikolaev 2018, training part). The
 * data is not in this repository. Null if it is not on this machine. labels.tsv maps its labels to readings. A word
 * that is not in labels.tsv only teaches general features of verbs. Places with other labels are left out.
 */
export function readExamples(): Example[] | null {
  if (!existsSync(source)) return null;
  const labels = readLabels();
  const rows = rowsOf(source);
  const seen = new Map<string, Set<string>>();
  for (const [, , , word, , label] of rows) seen.set(word!, (seen.get(word!) ?? new Set()).add(label!));

  return rows.flatMap(([sentence = '', start, end, word = '', , label = '']) => {
    const readings = labels.get(word) ?? otherWord(seen.get(word)!);
    const reading = readings?.indexOf(label) ?? -1;
    if (!readings || reading === -1) return [];
    const points = [...sentence];
    const from = points.slice(0, Number(start)).join('').length;
    const to = points.slice(0, Number(end)).join('').length;
    const shown = sentence.slice(from, to);
    return {
      word,
      ...placeOf(shown, readContext(sentence, from, to)),
      reading,
      ...questionOf(word, readings),
      weight: 1,
      listed: labels.has(word),
    };
  });
}

/** Returns more sentences to learn from. Null if the Brown corpus is not installed. */
export function readMoreExamples(): Example[] | null {
  const tagged = readTaggedExamples();
  return tagged && [...tagged, ...readOwnExamples()];
}

/** Returns homographs of the Brown corpus whose part of speech determines the reading: use as a noun, read as a past. */
function readTaggedExamples(): Example[] | null {
  const sentences = readBrown();
  if (!sentences) return null;
  const labels = readLabels();
  return sentences.flatMap((sentence) => {
    const words = sentence.map(({ word }) => word);
    return sentence.flatMap(({ word: shown, part }, i) => {
      const word = shown.toLowerCase();
      const readings = labels.get(word);
      if (!readings || !/^[vnaNzde]$/.test(part) || !/^[A-Za-z][a-z]+$/.test(shown)) return [];
      if (i > 0 && /^[A-Z]/.test(shown)) return [];
      const { question, yes } = questionOf(word, readings);
      if (question === undefined || yes === undefined || word in PASTS || word in VERB_LABELS) return [];
      const holds = question === 'tense' ? part !== 'v' : /[vzd]/.test(part);
      return {
        word,
        ...placeOf(shown, wordsAround(words, i)),
        reading: holds ? yes : 1 - yes,
        question,
        yes,
        weight: BROWN_COUNTS,
        listed: false,
      };
    });
  });
}

/**
 * Returns our own sentences for uses that are rare in an encyclopedia: a plural before a verb, a command, a past from
 * children's books.
 */
function readOwnExamples(): Example[] {
  const labels = readLabels();
  return rowsOf(new URL('own-sentences.tsv', import.meta.url)).flatMap(([reading, sentence = '']) => {
    const [start = '', shown = '', end = ''] = sentence.split('*');
    const word = shown.toLowerCase();
    const context = readContext(start + shown + end, start.length, start.length + shown.length);
    return {
      word,
      ...placeOf(shown, context),
      reading: Number(reading),
      ...questionOf(word, labels.get(word) ?? []),
      weight: 1,
      listed: false,
    };
  });
}

/** Returns the surroundings of a word. The caller adds the word and its reading. */
function placeOf(
  shown: string,
  { before, after }: Pick<Example, 'before' | 'after'>,
): Pick<Example, 'shown' | 'before' | 'after' | 'features'> {
  return { shown, before, after, features: contextFeatures(shown, before, after).map(writeFeature) };
}

function questionOf(word: string, readings: readonly string[]): Pick<Example, 'question' | 'yes'> {
  if (word === 'read') return { question: 'tense', yes: 1 };
  if (word in PASTS) return { question: 'past', yes: PASTS[word] };
  const verb = readings.indexOf(VERB_LABELS[word] ?? VERB);
  if (verb === -1) return { question: undefined, yes: undefined };
  return { question: /[^s]s$/.test(word) ? 'verb with s' : 'verb', yes: verb };
}

function readLabels(): Map<string, string[]> {
  return new Map(
    rowsOf(new URL('labels.tsv', import.meta.url)).map(([word, ...readings]) => [word!, readings]),
  );
}

function otherWord(labels: ReadonlySet<string>): string[] | null {
  const others = [...labels].filter((label) => label !== VERB);
  return others.length === 1 ? [others[0]!, VERB] : null;
}

function rowsOf(file: URL): string[][] {
  const [, ...lines] = readFileSync(file, 'utf8').trimEnd().split('\n');
  return lines.map((line) => line.split('\t'));
}
