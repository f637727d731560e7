import type { Fit } from '../../analyze/index.ts';
import type { Group } from '../../analyze/types.ts';
import { dayOf, groupOn } from '../../host/store/move-group.ts';
import { newsSince, type SeenSteps } from '../../host/store/shelf-seen.ts';
import type { IndexedText } from './shelf-index.ts';
import type { Ranker } from './use-ranks.ts';

/** The texts that a group has become able to read by moving on since the teacher last looked. */
export interface GroupNews {
  readonly id: string;
  readonly group: Group;
  /** The texts with the highest share come first. */
  readonly texts: readonly IndexedText[];
}

/**
 * Returns the news for each group that has moved on, even if no text became readable. A text put on the shelf after the
 * move was readable from the start and is no news. This is decided by the days of the moves.
 */
export function findNews(
  texts: readonly IndexedText[],
  groups: Readonly<Record<string, Group>>,
  seen: SeenSteps,
  rank: (group: Group) => ReturnType<Ranker>,
): readonly GroupNews[] {
  return Object.entries(groups).flatMap(([id, group]) => {
    const since = newsSince(seen, id, group);
    if (since === null) return [];
    const fits = rank(group);
    const found = texts
      .map((text, i) => ({ text, fit: fits[i]! }))
      .filter(({ text, fit }) => hasCome(fit, since) && fit.step! > stepBefore(text, group))
      .sort((a, b) => b.fit.reach - a.fit.reach);
    return [{ id, group, texts: found.map(({ text }) => text) }];
  });
}

function hasCome({ now, step }: Fit, since: number): boolean {
  return now && step !== null && step > since;
}

/**
 * Returns the group's step on the day before a text was shelved. Returns -1 if that step is not known or belongs to
 * another sequence.
 */
function stepBefore({ shelved }: IndexedText, group: Group): number {
  if (!group.history) return -1;
  const day = new Date(shelved);
  day.setDate(day.getDate() - 1);
  const then = groupOn(group, dayOf(day));
  return then.sequence === group.sequence && then !== group ? then.step : -1;
}
