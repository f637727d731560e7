import { diffWordsWithSpace } from 'diff';
import { findSentences } from '../../../passage/find-sentences.ts';
import type { TextEdit } from '../passage-editor.ts';
import type { Change, PlanWord, RewriteChange } from './plan-changes.ts';

/** A word of the passage, with its place in the whole text. */
export interface PlanPlace extends PlanWord {
  readonly from: number;
  readonly to: number;
}

/** The changes that are possible in a passage. */
export interface PossibleChanges {
  readonly places: readonly PlanPlace[];
  readonly changes: readonly Change[];
  /** The article 'a' or 'an' that has to change with the swap at a place, by the number of the place. */
  readonly articles: ReadonlyMap<number, TextEdit>;
  /** The text that a swap replaces if the text is more than the word, by the number of the swap's place. */
  readonly spans?: ReadonlyMap<number, { readonly from: number; readonly to: number }>;
  /** The place of each sentence in the whole text. */
  readonly sentences: readonly { readonly from: number; readonly to: number }[];
}

/**
 * A rewritten sentence of the passage, made by the shortening rules or by any other source of texts. `addProposals`
 * turns proposals into changes, which are planned, shown and ticked like all other changes.
 */
export interface SentenceProposal {
  /** The number of the sentence in `PossibleChanges.sentences`. */
  readonly sentence: number;
  /** The text that replaces the sentence. Several sentences are separated by a blank. */
  readonly text: string;
  /** The description of the proposal for the teacher. */
  readonly what: string;
  /** Whether the proposal is ticked at once. Otherwise the teacher ticks it. */
  readonly isSafe?: boolean;
  /** Whether the teacher asked for the proposal. Such a proposal is in the plan whatever else the plan contains. */
  readonly isAskedFor?: boolean;
}

/** Counts the words of a text, and the words among them that the group cannot read. */
export type CountWords = (text: string) => { readonly words: number; readonly beyond: number };

/** Adds more ways to write sentences to the possible changes. A text that leaves its sentence unchanged is skipped. */
export function addProposals(
  possible: PossibleChanges,
  text: string,
  proposals: readonly SentenceProposal[],
  count: CountWords,
): PossibleChanges {
  const more = proposals.flatMap((proposal) => rewriteFor(possible, text, proposal, count) ?? []);
  return { ...possible, changes: [...possible.changes, ...more] };
}

function rewriteFor(
  { places, sentences }: PossibleChanges,
  text: string,
  { sentence, text: anew, what, isSafe = false, isAskedFor = false }: SentenceProposal,
  count: CountWords,
): RewriteChange | null {
  const span = sentences[sentence];
  if (!span) return null;
  const old = text.slice(span.from, span.to);
  const edits = editsBetween(old, anew, span.from);
  if (edits.length === 0) return null;
  const own = places.flatMap((place, i) => (place.sentence === sentence ? [i] : []));
  const gone = own.filter((i) => edits.some(({ from, to }) => places[i]!.from < to && places[i]!.to > from));
  const kept = own.filter((i) => !gone.includes(i));
  const all = count(anew);
  return {
    kind: 'rewrite',
    sentence,
    text: anew,
    what,
    isSafe,
    ...(isAskedFor && { isAskedFor }),
    gone,
    comes: {
      words: Math.max(0, all.words - kept.length),
      unread: Math.max(0, all.beyond - kept.filter((i) => !places[i]!.readable).length),
    },
    edits,
    longest: { before: longestOf(old), after: longestOf(anew) },
  };
}

/** Returns the edits that turn one text into the other, in whole words. Edits separated only by a blank are joined. */
function editsBetween(old: string, anew: string, from: number): { from: number; to: number; text: string }[] {
  const edits: { from: number; to: number; text: string }[] = [];
  let at = from;
  let blank: string | null = null;
  for (const { value, added, removed } of diffWordsWithSpace(old, anew)) {
    if (!added && !removed) {
      blank = /^\s*$/.test(value) ? value : null;
      at += value.length;
      continue;
    }
    const last = edits.at(-1);
    if (last && (last.to === at || (blank !== null && last.to + blank.length === at))) {
      if (last.to !== at) {
        last.text += blank;
        last.to = at;
      }
    } else edits.push({ from: at, to: at, text: '' });
    const edit = edits.at(-1)!;
    if (added) edit.text += value;
    else {
      edit.to += value.length;
      at += value.length;
    }
  }
  return edits;
}

function longestOf(text: string): number {
  return Math.max(0, ...findSentences(text).map(({ words }) => words));
}
