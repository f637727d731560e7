import { type LessonPlan, parsePlan } from '../../lesson/index.ts';
import { browser } from '../browser.ts';
import { readItem, readItems, storeItem } from './store-item.ts';

/** The identity of a lesson: its group, and its passage or null. */
export interface LessonName {
  readonly group: string;
  readonly passage: string | null;
}

const PREFIX = 'lesson/';

/** Loads the saved plan of a lesson; null when there is none. */
export async function loadLesson(name: LessonName): Promise<LessonPlan | null> {
  const key = itemOf(name);
  return parsePlan(await readItem(key));
}

/** Saves the plan of a lesson in this browser. Rejects with `StorageFault`. */
export function keepLesson(name: LessonName, plan: LessonPlan): Promise<void> {
  return storeItem(itemOf(name), plan);
}

/** Deletes the stored lessons of groups and passages that were deleted. */
export async function forgetLessons(isThere: (name: LessonName) => boolean): Promise<void> {
  const keys = Object.keys(await readItems(null)).filter((key) => key.startsWith(PREFIX));
  const gone = keys.filter((key) => {
    const [group = '', passage = ''] = key.slice(PREFIX.length).split('/');
    return !isThere({ group, passage: passage || null });
  });
  if (gone.length > 0) await browser.storage.local.remove(gone);
}

function itemOf({ group, passage }: LessonName): string {
  return `${PREFIX}${group}/${passage ?? ''}`;
}
