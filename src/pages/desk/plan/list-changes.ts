import type { Judge } from '../../../analyze/index.ts';
import { splitKey } from '../../../analyze/index.ts';
import type { Standing } from '../../../analyze/types.ts';
import { findSentences } from '../../../passage/find-sentences.ts';
import type { ShadedLine } from '../../../passage/shade-line.ts';
import { reachOf, type Swapper } from '../../../swap/index.ts';
import type { Edit } from '../../../swap/types.ts';
import { glossOf } from '../gloss-of.ts';
import type { TextEdit } from '../passage-editor.ts';
import type { Change, PlanWord } from './plan-changes.ts';

/** A word of the passage by its place in the whole text. */
export interface PlanPlace extends PlanWord {
  readonly from: number;
  readonly to: number;
}

/** What a passage may be changed by. */
export interface PossibleChanges {
  readonly places: readonly PlanPlace[];
  readonly changes: readonly Change[];
  /** The a or an that has to change with the swap of a place, by the number of the place. */
  readonly articles: ReadonlyMap<number, TextEdit>;
  /** Where each sentence stands in the whole text. */
  readonly sentences: readonly { readonly from: number; readonly to: number }[];
}

const COUNTED: ReadonlySet<Standing> = new Set(['reads', 'fresh', 'by-sight', 'unsure', 'beyond']);
const READ: ReadonlySet<Standing> = new Set(['reads', 'fresh', 'by-sight']);

/**
 * Every swap, story word and sentence to drop that a passage offers to a group. A word is swapped in the places where the
 * same swap fits best; headings are not dropped.
 */
export function listChanges(
  text: string,
  shade: (line: string) => ShadedLine,
  judge: Judge,
  swapper: Swapper,
  known: ReadonlySet<string>,
): PossibleChanges {
  const places: PlanPlace[] = [];
  const sentences: { from: number; to: number }[] = [];
  const articles = new Map<number, TextEdit>();
  const droppable: number[] = [];
  const swaps = new Map<string, { word: string; swap: string; places: number[] }>();
  const teach = new Map<string, { meaning: string; places: number[] }>();
  const reach = (word: string) => reachOf(judge(word).standing);
  let lineStart = 0;
  for (const line of text.split('\n')) {
    const { words } = shade(line);
    for (const { start, end } of findSentences(line)) {
      const number = sentences.push({ from: lineStart + start, to: lineStart + end }) - 1;
      if (!/^#{1,3} /.test(line)) droppable.push(number);
      for (const word of words) {
        if (word.start < start || word.end > end || !COUNTED.has(word.standing)) continue;
        const shown = splitKey(word.key).word.toLowerCase();
        const readable = READ.has(word.standing) || known.has(shown);
        const place = places.push({
          readable,
          sentence: number,
          from: lineStart + word.start,
          to: lineStart + word.end,
        });
        if (readable) continue;
        const found = swapper.findSwaps(line.slice(start, end), word.start - start, word.end - start, {
          reach,
        });
        const taught = teach.get(shown) ?? { meaning: glossOf(found.swaps), places: [] };
        taught.places.push(place - 1);
        teach.set(shown, taught);
        const swap = found.swaps.slice(0, found.best).find(({ reads }) => reads);
        if (!swap) continue;
        if (swap.article) articles.set(place - 1, moved(swap.article, lineStart + start));
        const id = `${line.slice(word.start, word.end).toLowerCase()} ${swap.text.toLowerCase()}`;
        const same = swaps.get(id) ?? { word: shown, swap: swap.text.toLowerCase(), places: [] };
        same.places.push(place - 1);
        swaps.set(id, same);
      }
    }
    lineStart += line.length + 1;
  }
  return {
    places,
    articles,
    sentences,
    changes: [
      ...[...swaps.values()].map((swap): Change => ({ kind: 'swap', ...swap })),
      ...[...teach].map(([word, taught]): Change => ({ kind: 'story-word', word, ...taught })),
      ...droppable.map((sentence): Change => ({ kind: 'drop', sentence })),
    ],
  };
}

function moved({ start, end, text }: Edit, by: number): TextEdit {
  return { from: start + by, to: end + by, text };
}
