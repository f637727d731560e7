import type { Judge } from '../../../analyze/index.ts';
import { splitKey } from '../../../analyze/index.ts';
import type { Standing } from '../../../analyze/types.ts';
import { findSentences } from '../../../passage/find-sentences.ts';
import type { ShadedLine } from '../../../passage/shade-line.ts';
import type { Shortener } from '../../../shorten/index.ts';
import { reachFor, type Swapper } from '../../../swap/index.ts';
import type { Edit, Swap } from '../../../swap/types.ts';
import { glossOf } from '../gloss-of.ts';
import type { TextEdit } from '../passage-editor.ts';
import { describeSteps } from './describe-steps.ts';
import { isReferredTo } from './is-referred-to.ts';
import type { Change } from './plan-changes.ts';
import {
  addProposals,
  type CountWords,
  type PlanPlace,
  type PossibleChanges,
  type SentenceProposal,
} from './possible-changes.ts';

/** The tools that find the changes, and the reader for whom they search. */
export interface Finders {
  readonly shade: (line: string) => ShadedLine;
  readonly judge: Judge;
  readonly swapper: Swapper;
  readonly shortener: Shortener;
  /** The words that the passage already pre-teaches. */
  readonly known: ReadonlySet<string>;
  /** The most words a sentence should have; null for no limit. */
  readonly longest: number | null;
}

const COUNTED: ReadonlySet<Standing> = new Set(['reads', 'fresh', 'by-sight', 'unsure', 'beyond']);
const READ: ReadonlySet<Standing> = new Set(['reads', 'fresh', 'by-sight']);

/** Creates a function that counts the words of a text in the same way as the plan. */
export function createCounter({ shade, known }: Pick<Finders, 'shade' | 'known'>): CountWords {
  return (text) => {
    const counted = text
      .split('\n')
      .flatMap((line) => shade(line).words.filter(({ standing }) => COUNTED.has(standing)));
    const beyond = counted.filter(
      ({ standing, key }) => !READ.has(standing) && !known.has(splitKey(key).word.toLowerCase()),
    );
    return { words: counted.length, beyond: beyond.length };
  };
}

/**
 * Lists every swap, story word, shorter sentence and sentence to drop that a passage offers to a group. A word is
 * swapped in the places where the same swap fits best. Headings are neither shortened nor dropped. `rest` is called
 * after each step. It may wait so that the page gets a turn.
 */
export async function listChanges(
  text: string,
  finders: Finders,
  rest: () => Promise<void> | undefined,
): Promise<PossibleChanges> {
  const { shade, known } = finders;
  const places: PlanPlace[] = [];
  const sentences: { from: number; to: number }[] = [];
  const drops: Change[] = [];
  const shorter: SentenceProposal[] = [];
  const wordChanges = createWordChanges(finders);
  const count = createCounter(finders);
  let lineStart = 0;
  for (const line of text.split('\n')) {
    const { words } = shade(line);
    const isHeading = /^#{1,3} /.test(line);
    const spans = findSentences(line);
    for (const [i, { start, end }] of spans.entries()) {
      const from = lineStart + start;
      const number = sentences.push({ from, to: lineStart + end }) - 1;
      const sentence = line.slice(start, end);
      if (!isHeading) {
        const isNeeded = i === 0 || isReferredTo(sentence, text.slice(0, from), text.slice(lineStart + end));
        drops.push({ kind: 'drop', sentence: number, ...(isNeeded && { isNeeded }) });
        const next = line.slice(end, spans[i + 2]?.end ?? line.length).trim();
        const found = shorten(sentence, next, finders, count);
        if (found) shorter.push({ sentence: number, ...found });
      }
      for (const word of words) {
        if (word.start < start || word.end > end || !COUNTED.has(word.standing)) continue;
        const shown = splitKey(word.key).word.toLowerCase();
        const readable = READ.has(word.standing) || known.has(shown);
        const [wordFrom, wordTo] = [lineStart + word.start, lineStart + word.end];
        const place = places.push({ readable, sentence: number, from: wordFrom, to: wordTo }) - 1;
        if (readable) continue;
        const waits = rest();
        if (waits) await waits;
        wordChanges.add({ place, shown, sentence, from, start: wordFrom - from, end: wordTo - from });
      }
      const waits = rest();
      if (waits) await waits;
    }
    lineStart += line.length + 1;
  }
  const changes = [...wordChanges.list(), ...drops];
  const { articles, spans } = wordChanges;
  return addProposals({ places, articles, spans, sentences, changes }, text, shorter, count);
}

/** Shortens a sentence and keeps a list sign before it; returns null if the sentence cannot be shortened. */
function shorten(
  sentence: string,
  next: string,
  { shortener, longest }: Finders,
  measure: CountWords,
): Omit<SentenceProposal, 'sentence'> | null {
  const sign = /^(?:- )?/.exec(sentence)![0];
  const options = { measure, next, ...(longest && { longest }) };
  const found = shortener.shorten(sentence.slice(sign.length), options);
  if (!found) return null;
  return { text: sign + found.text, what: describeSteps(found.steps), isSafe: found.isSafe };
}

/** A word that the group cannot read. */
interface UnreadWord {
  /** The number of the word's place. */
  readonly place: number;
  /** The word as shown, in lower case. */
  readonly shown: string;
  readonly sentence: string;
  /** The place in the text where the sentence begins. */
  readonly from: number;
  /** The place of the word in the sentence. */
  readonly start: number;
  readonly end: number;
}

interface WordChanges {
  readonly articles: ReadonlyMap<number, TextEdit>;
  readonly spans: ReadonlyMap<number, { from: number; to: number }>;
  readonly add: (word: UnreadWord) => void;
  /** Returns the swaps, then the story words, each with all of its places. */
  readonly list: () => Change[];
}

function createWordChanges({ judge, swapper }: Finders): WordChanges {
  const articles = new Map<number, TextEdit>();
  const spans = new Map<number, { from: number; to: number }>();
  const swaps = new Map<string, { word: string; swap: string; places: number[] }>();
  const teach = new Map<string, { meaning: string; places: number[] }>();
  const reach = reachFor(judge);
  return {
    articles,
    spans,
    add({ place, shown, sentence, from, start, end }) {
      const found = swapper.findSwaps(sentence, start, end, { reach, phrases: true });
      const taught = teach.get(shown) ?? { meaning: glossOf(found.swaps), places: [] };
      taught.places.push(place);
      teach.set(shown, taught);
      const swap = found.swaps.slice(0, found.best).find(({ reads }) => reads);
      if (!swap) return;
      if (swap.article) articles.set(place, moved(swap.article, from));
      const { word, text } = describe(swap, sentence, shown);
      if (swap.span) spans.set(place, { from: from + swap.span.start, to: from + swap.span.end });
      const id = `${swap.span ? word : sentence.slice(start, end).toLowerCase()} ${text}`;
      const same = swaps.get(id) ?? { word, swap: text, places: [] };
      same.places.push(place);
      swaps.set(id, same);
    },
    list: () => [
      ...[...swaps.values()].map((swap): Change => ({ kind: 'swap', ...swap })),
      ...[...teach].map(([word, taught]): Change => ({ kind: 'story-word', word, ...taught })),
    ],
  };
}

/**
 * Returns the text of a swap. A single word is in lower case. Several words keep their capitals, since names may be
 * among them.
 */
function describe({ text, span }: Swap, sentence: string, shown: string): { word: string; text: string } {
  if (!span) return { word: shown, text: text.toLowerCase() };
  return { word: sentence.slice(span.start, span.end).trim(), text };
}

function moved({ start, end, text }: Edit, by: number): TextEdit {
  return { from: start + by, to: end + by, text };
}
