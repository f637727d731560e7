import { isMinutes, isRecord, type LessonPlan, type PartName, planOf } from './lesson-plan.ts';

/** The parts of a lesson with their order, choices and minutes, but without words. */
export interface LessonPreset {
  readonly name: string;
  readonly parts: readonly PresetPart[];
}

/** A part that a preset puts on the sheet. */
export interface PresetPart {
  readonly id: string;
  readonly chosen: Readonly<Record<string, string>>;
  readonly minutes?: number;
}

/** A short lesson whose pupils' sheet fits a page: 25 minutes. */
export const onePage: LessonPreset = {
  name: 'A lesson in one page',
  parts: [
    { id: 'review', minutes: 3, chosen: { count: '6', sound: 'none' } },
    { id: 'new-pattern', minutes: 5, chosen: { count: '8' } },
    { id: 'word-lists', minutes: 5, chosen: { count: '8', kinds: 'list' } },
    { id: 'dictation', minutes: 5, chosen: { sounds: '2', words: '3', 'by-sight': '2', sentences: '1' } },
    { id: 'smooth-reading', minutes: 7, chosen: { count: '3' } },
  ],
};

const LONGEST_NAME = 60;

/**
 * Returns the plan with only the parts of a preset on the sheet. The words follow the plan's seed. Pinned parts of the
 * preset stay.
 */
export function applyPreset(plan: LessonPlan, preset: LessonPreset, makers: readonly PartName[]): LessonPlan {
  const wanted = new Map(preset.parts.map((part) => [part.id, part]));
  const parts = Object.fromEntries(
    makers.flatMap((maker) => {
      const { minutes: _, ...own } = planOf(plan, maker);
      const part = wanted.get(maker.id);
      if (!part)
        return maker.extra && !Object.hasOwn(plan.parts, maker.id) ? [] : [[maker.id, { ...own, out: true }]];
      const { chosen, minutes } = part;
      return [[maker.id, { ...own, out: false, chosen, ...(minutes !== undefined && { minutes }) }]];
    }),
  );
  const ids = preset.parts.map(({ id }) => id).filter((id) => makers.some((maker) => maker.id === id));
  const others = makers.map(({ id }) => id).filter((id) => !ids.includes(id));
  return { ...plan, parts, order: [...ids, ...others] };
}

/** Returns a preset of the parts on the sheet of a plan, so that they can be used again for other words. */
export function presetOf(plan: LessonPlan, name: string, ordered: readonly PartName[]): LessonPreset {
  return {
    name: name.trim().slice(0, LONGEST_NAME),
    parts: ordered.flatMap((maker) => {
      const { out, chosen, minutes } = planOf(plan, maker);
      return out ? [] : [{ id: maker.id, chosen, ...(minutes !== undefined && { minutes }) }];
    }),
  };
}

/** Reads stored presets as far as they are valid. Any value may be given. */
export function parsePresets(kept: unknown): LessonPreset[] {
  if (!Array.isArray(kept)) return [];
  const names = new Set<string>();
  return kept.flatMap((preset: unknown) => {
    if (!isRecord(preset) || typeof preset.name !== 'string' || !Array.isArray(preset.parts)) return [];
    const name = preset.name.trim().slice(0, LONGEST_NAME);
    if (name === '' || names.has(name)) return [];
    names.add(name);
    const parts = preset.parts.flatMap((part: unknown): PresetPart[] => {
      if (!isRecord(part) || typeof part.id !== 'string') return [];
      const chosen = Object.entries(isRecord(part.chosen) ? part.chosen : {}).filter(
        (entry): entry is [string, string] => typeof entry[1] === 'string',
      );
      return [
        {
          id: part.id,
          chosen: Object.fromEntries(chosen),
          ...(isMinutes(part.minutes) && { minutes: part.minutes }),
        },
      ];
    });
    return parts.length > 0 ? [{ name, parts }] : [];
  });
}
