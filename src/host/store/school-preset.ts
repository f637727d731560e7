import { parseSequence } from '../../analyze/index.ts';
import type { Sequence } from '../../analyze/types.ts';
import { browser } from '../browser.ts';

/** The settings that a school makes for all its browsers by policy (`storage.managed`). profiles/README.md explains how. */
export interface SchoolPreset {
  readonly sequences: readonly Sequence[];
  /** The id of the sequence that new groups follow. */
  readonly sequence: string | null;
}

/** Loads the preset, which is empty if the school has set none. A sequence that cannot be read is skipped. */
export async function loadSchoolPreset(): Promise<SchoolPreset> {
  // Firefox rejects when no policy is set; Chromium returns an empty object.
  const set: unknown = await browser.storage.managed.get().catch(() => null);
  const { sequences, sequence } = (set ?? {}) as { sequences?: unknown; sequence?: unknown };
  return {
    sequences: Array.isArray(sequences) ? sequences.flatMap(readOne) : [],
    sequence: typeof sequence === 'string' ? sequence : null,
  };
}

const told = new Set<string>();

function readOne(value: unknown): Sequence[] {
  try {
    return [parseSequence(value)];
  } catch (error) {
    const why = `A sequence of the school’s policy cannot be used: ${error instanceof Error ? error.message : error}`;
    if (!told.has(why)) console.warn(why);
    told.add(why);
    return [];
  }
}
