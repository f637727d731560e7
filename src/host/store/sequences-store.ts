import { parseSequence } from '../../analyze/index.ts';
import type { Sequence } from '../../analyze/types.ts';
import { byName, sortReadable } from './groups-store.ts';
import { inTurn } from './in-turn.ts';
import { loadSchoolPreset } from './school-preset.ts';
import { starterSequence, starterSequences } from './sequences.ts';
import { readItem, storeItem } from './store-item.ts';
import { SEQUENCES_KEY, watchStored } from './watch-stored.ts';

/** The available sequences: the sequences that ship with the extension, and the teacher's own. */
export interface Sequences {
  /**
   * The shipped sequences, after the school's sequences (set by policy). They can be followed and copied, but not
   * changed.
   */
  readonly starters: readonly Sequence[];
  /** Ids of the starters that the school has set. */
  readonly school: readonly string[];
  /** The id of the sequence that new groups follow, if the school has set one and that sequence exists. */
  readonly preset: string | null;
  /** The teacher's own sequences by id, which is never the id of a starter. Stored in this browser. */
  readonly own: Readonly<Record<string, Sequence>>;
  /** Stored sequences that this version cannot read. These sequences are kept unchanged for a version that can. */
  readonly unread: Readonly<Record<string, unknown>>;
}

const VERSION = 1;

/** Loads the starters, the school's sequences and the stored sequences. */
export async function loadSequences(): Promise<Sequences> {
  const [kept, preset] = await Promise.all([readItem(SEQUENCES_KEY), loadSchoolPreset()]);
  const { read: own, unread } = sortReadable(listIn(kept), parseSequence);
  const starters = starterSequences();
  const school = preset.sequences.filter(({ id }) => !starters.some((starter) => starter.id === id));
  const all = [...school, ...starters];
  return {
    starters: all,
    school: school.map(({ id }) => id),
    preset: all.find(({ id }) => id === preset.sequence)?.id ?? null,
    own: byName(own),
    unread,
  };
}

/**
 * Loads the sequence with this id. A starter is returned without reading the stored sequences. Returns null for a group
 * without a sequence, and for a sequence that is gone.
 */
export async function loadSequence(id: string | null): Promise<Sequence | null> {
  if (id === null) return null;
  const starter = starterSequence(id);
  if (starter) return starter;
  return findSequence(await loadSequences(), id);
}

/** Returns the readable sequences in a stored value, by id. */
export function readOwnSequences(value: unknown): Readonly<Record<string, Sequence>> {
  return sortReadable(listIn(value), parseSequence).read;
}

/** Returns the sequence with this id. Returns null for a group without a sequence, and for a sequence that is gone. */
export function findSequence({ own, starters }: Sequences, id: string | null): Sequence | null {
  if (id === null) return null;
  if (Object.hasOwn(own, id)) return own[id]!;
  return starters.find((sequence) => sequence.id === id) ?? null;
}

/** Every sequence, the teacher's own first. */
export function listSequences({ own, starters }: Sequences): readonly Sequence[] {
  return [...Object.values(own), ...starters];
}

/**
 * Replaces the teacher's own sequences with the result of `change`. Changes run one after another, so that none is
 * lost.
 */
export function changeSequences(
  change: (own: Readonly<Record<string, Sequence>>) => Readonly<Record<string, Sequence>>,
): Promise<void> {
  return inTurn(SEQUENCES_KEY, async () => {
    const { own, unread } = await loadSequences();
    const stored = { version: VERSION, sequences: { ...unread, ...change(own) } };
    await storeItem(SEQUENCES_KEY, stored);
  });
}

/** Calls `onChange` with the sequences each time they change, until the signal is aborted. */
export function watchSequences(onChange: (sequences: Sequences) => void, signal: AbortSignal): void {
  const tell = async (): Promise<void> => {
    const sequences = await loadSequences();
    if (!signal.aborted) onChange(sequences);
  };
  watchStored(SEQUENCES_KEY, () => void tell(), signal);
}

/** Returns an id that is made of a name's letters and that no given sequence has, such as `our-order` or `our-order-2`. */
export function freeSequenceId(name: string, sequences: Sequences): string {
  const stem = slug(name) || 'sequence';
  const taken = new Set([...listSequences(sequences).map(({ id }) => id), ...Object.keys(sequences.unread)]);
  let id = stem;
  for (let n = 2; taken.has(id); n++) id = `${stem}-${n}`;
  return id;
}

/** Converts a name to an id of letters, digits and hyphens, as the schema requires. */
function slug(name: string): string {
  return name
    .normalize('NFD')
    .toLowerCase()
    .replace(/[^a-z0-9\s-]/g, '')
    .trim()
    .replace(/[\s-]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 40);
}

function listIn(stored: unknown): unknown {
  return typeof stored === 'object' && stored !== null ? (stored as { sequences?: unknown }).sequences : null;
}
