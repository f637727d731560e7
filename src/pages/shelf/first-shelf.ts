import type { Sequence } from '../../analyze/types.ts';
import { accentAtFirst } from '../../host/store/groups-store.ts';
import { starterSequences } from '../../host/store/sequences.ts';
import { loadTexts, putTexts } from '../../host/store/shelf-store.ts';
import { stepTitle } from '../../ui/step-title.ts';
import { inVariety } from '../../variety/index.ts';
import { say, type TextId } from '../../wording/say.ts';
import type { FirstText } from './first-texts.ts';
import { countText } from './read-file.ts';

/** The prefix of the ids of these texts. No other id begins with it. */
const FIRST = 'first-shelf-';

const KIND_NAMES = {
  story: 'shelf.kindStory',
  news: 'shelf.kindNews',
  'how-to': 'shelf.kindHowTo',
  poem: 'shelf.kindPoem',
  letter: 'shelf.kindLetter',
} as const satisfies Record<FirstText['kind'], TextId>;

/** Returns whether a text of the shelf came with the extension. */
export function isFirstText({ id }: { readonly id: string }): boolean {
  return id.startsWith(FIRST);
}

/**
 * Puts the texts that come with the extension on the shelf, except texts that are already there. Returns the number of
 * texts added. The notes of each text name its step. Each text is in the English of its starter, or else of the
 * browser. Rejects with `StorageFault`.
 */
export async function addFirstShelf(): Promise<number> {
  const { firstTexts } = await import('./first-texts.ts');
  const there = new Set((await loadTexts(firstTexts.map(idOf))).map(({ id }) => id));
  const missing = firstTexts.filter((text) => !there.has(idOf(text)));
  const shelved = Date.now();
  const { signal } = new AbortController();
  const texts = [];
  for (const first of missing) {
    const ours = (text: string): string => inVariety(text, accentAtFirst(sequenceOf(first)));
    const text = ours(first.text);
    texts.push({
      ...(await countText(text, signal)),
      ...{ id: idOf(first), title: ours(first.title), text, shelved, url: null, byline: null, date: null },
      tags: ['Tarn Quay', say(KIND_NAMES[first.kind])],
      notes: noteOf(first),
    });
  }
  await putTexts(texts);
  return missing.length;
}

function idOf({ name }: FirstText): string {
  return FIRST + name;
}

function sequenceOf({ starter }: FirstText): Sequence {
  return starterSequences().find(({ id }) => id === starter)!;
}

function noteOf(text: FirstText): string {
  const { step } = text;
  const sequence = sequenceOf(text);
  return say('shelf.firstFor', { step, sequence: sequence.name, title: stepTitle(sequence, step) });
}
