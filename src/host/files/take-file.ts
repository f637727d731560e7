import type { Group, Sequence } from '../../analyze/types.ts';
import { type LessonPreset, parsePresets } from '../../lesson/index.ts';
import { freePassageId, type Passage } from '../../passage/kept/passage.ts';
import { changeGroups, type Groups, loadGroups, readGroups } from '../store/groups-store.ts';
import { datedMoves } from '../store/move-group.ts';
import { deletePassage, loadPassages, putPassages } from '../store/passages-store.ts';
import { keepPresets, loadPresets, PRESETS_KEY } from '../store/presets-store.ts';
import { changeSequences, loadSequences, readOwnSequences } from '../store/sequences-store.ts';
import {
  deleteTexts,
  findAlike,
  freeTextId,
  hasSameWords,
  loadWhole,
  putTexts,
  type WholeShelfText,
} from '../store/shelf-store.ts';
import { GROUPS_KEY, SEQUENCES_KEY } from '../store/watch-stored.ts';
import { takeIn } from './take-in.ts';
import { isWholeFile, readWordreachFile } from './wordreach-file.ts';

/** The number of texts that are written to the database at a time. */
const BATCH = 200;

/** The number of items of each kind in a file, or taken from a file. */
export interface FileCounts {
  readonly groups: number;
  readonly sequences: number;
  readonly presets: number;
  readonly lessons: number;
  readonly passages: number;
  readonly texts: number;
}

/** The facts about a file that the teacher is shown before the file is taken. */
export interface FileLook {
  /** Whether the file can replace everything in this browser. */
  readonly whole: boolean;
  readonly counts: FileCounts;
  /** The items of the file that this browser already has in another form. */
  readonly clashes: readonly Clash[];
}

/** An item that this browser has in another form than the file, and the facts that distinguish the two versions. */
export interface Clash {
  readonly name: string;
  readonly here: ClashSide;
  readonly file: ClashSide;
}

/** One version of an item. Each kind of item has only some of these fields. */
export interface ClashSide {
  /** The last step that was taught to a group. */
  readonly step?: number;
  /** The day on which the group came to this step, as `2026-11-25`. */
  readonly since?: string;
  /** The number of words and patterns that are exceptions for a group. */
  readonly exceptions?: number;
  /** The number of steps of a sequence. */
  readonly steps?: number;
  /** When a passage or a text was saved, in milliseconds. */
  readonly saved?: number;
}

/**
 * How a file is taken if this browser already has an item in another form. `merge` replaces the browser's item with the
 * file's form. `add` keeps the browser's item and adds the file's form beside it.
 */
export type Taking = 'merge' | 'add';

/** The outcome of taking a file. */
export interface TakenFile {
  readonly added: FileCounts;
  readonly changed: FileCounts;
  /** Restores everything as it was. Rejects with `StorageFault`. */
  readonly undo: () => Promise<void>;
}

/** The content of a file without the texts of the shelf, which may be more than fit into memory. */
interface Content {
  readonly groups: readonly Group[];
  readonly sequences: readonly Sequence[];
  readonly presets: readonly LessonPreset[];
  readonly passages: readonly Passage[];
}

type Counts = { -readonly [kind in keyof FileCounts]: number };

const none = (): Counts => ({ groups: 0, sequences: 0, presets: 0, lessons: 0, passages: 0, texts: 0 });

/** Reads and checks the whole file. Rejects with an error that `isFileError` knows, or with `StorageFault`. */
export async function lookIntoFile(file: Blob, signal: AbortSignal): Promise<FileLook> {
  const counts = none();
  const texts: Clash[] = [];
  const content = await readContent(file, signal, counts, async (found) => {
    counts.texts += found.length;
    for (const text of found) {
      if ((await findText(text)) !== 'other') continue;
      const here = await loadWhole(text.id);
      texts.push({ name: text.title, here: { saved: here!.shelved }, file: { saved: text.shelved } });
    }
  });
  // Items that this version cannot read are counted too, because they are restored together with everything else.
  counts.groups += content.groups.length;
  counts.sequences += content.sequences.length;
  counts.presets = content.presets.length;
  counts.passages = content.passages.length;
  const plan = await planTaking(content, 'merge');
  return { whole: await isWholeFile(file), counts, clashes: [...listClashes(plan, content), ...texts] };
}

function listClashes(plan: Awaited<ReturnType<typeof planTaking>>, content: Content): Clash[] {
  const { before, changedGroups, changedSequences, changedPresets } = plan;
  return [
    ...Object.entries(changedGroups).map(([id, group]) => ({
      name: group.name,
      here: groupSide(before.groups[id]!),
      file: groupSide(group),
    })),
    ...Object.entries(changedSequences).map(([id, sequence]) => ({
      name: sequence.name,
      here: { steps: before.sequences[id]!.steps.length },
      file: { steps: sequence.steps.length },
    })),
    ...changedPresets.map((name) => ({ name, here: {}, file: {} })),
    ...before.passages.map((passage) => ({
      name: passage.title,
      here: { saved: passage.saved },
      file: { saved: content.passages.find(({ id }) => id === passage.id)!.saved },
    })),
  ];
}

function groupSide(group: Group): ClashSide {
  const { step, alsoTaught, notYet, bySight, skip = [] } = group;
  const since = datedMoves(group)[0]?.date;
  const exceptions = alsoTaught.length + notYet.length + bySight.length + skip.length;
  return { step, exceptions, ...(since && { since }) };
}

/**
 * Takes the content of a file in addition to the content of this browser. An item that this browser already has with
 * equal content is not added again. The whole file is read and checked before anything changes. If something cannot be
 * stored, everything is restored as before. Rejects with an error that `isFileError` knows, or with `StorageFault`.
 */
export async function takeFile(file: Blob, how: Taking, signal: AbortSignal): Promise<TakenFile> {
  const content = await readContent(file, signal, none(), async () => undefined);
  const plan = await planTaking(content, how);
  const { before } = plan;
  const added = none();
  const changed = none();
  const undos: (() => Promise<void>)[] = [];
  const undo = async (): Promise<void> => {
    for (const each of undos.toReversed()) await each();
  };
  const sequences = { ...plan.addedSequences, ...plan.changedSequences };
  const groups = { ...plan.addedGroups, ...plan.changedGroups };
  const passages = [...plan.addedPassages, ...Object.values(plan.changedPassages)];
  try {
    if (Object.keys(sequences).length > 0) {
      await changeSequences((own) => ({ ...own, ...sequences }));
      undos.push(() => changeSequences((own) => ({ ...without(own, sequences), ...before.sequences })));
    }
    if (Object.keys(groups).length > 0) {
      await changeGroups((now) => ({ ...now, groups: { ...now.groups, ...groups } }));
      undos.push(() =>
        changeGroups((now) => ({ ...now, groups: { ...without(now.groups, groups), ...before.groups } })),
      );
    }
    if (plan.presets !== before.presets) {
      await keepPresets(plan.presets);
      undos.push(() => keepPresets(before.presets));
    }
    if (passages.length > 0) {
      await putPassages(passages);
      undos.push(async () => {
        for (const { id } of plan.addedPassages) await deletePassage(id);
        await putPassages(before.passages);
      });
    }
    await readContent(file, signal, none(), async (texts) => {
      const taken = await takeTexts(texts, how);
      added.texts += taken.added.length;
      changed.texts += taken.before.length;
      undos.push(async () => {
        await deleteTexts(taken.added);
        await putTexts(taken.before);
      });
    });
  } catch (error) {
    await undo();
    throw error;
  }
  added.groups = Object.keys(plan.addedGroups).length;
  added.sequences = Object.keys(plan.addedSequences).length;
  added.presets = plan.presets.length - before.presets.length;
  added.passages = plan.addedPassages.length;
  changed.groups = Object.keys(plan.changedGroups).length;
  changed.sequences = Object.keys(plan.changedSequences).length;
  changed.presets = plan.changedPresets.length;
  changed.passages = Object.keys(plan.changedPassages).length;
  return { added, changed, undo };
}

async function readContent(
  file: Blob,
  signal: AbortSignal,
  counts: Counts,
  onTexts: (texts: readonly WholeShelfText[]) => Promise<void>,
): Promise<Content> {
  const groups: Group[] = [];
  const sequences: Sequence[] = [];
  const presets: LessonPreset[] = [];
  const passages: Passage[] = [];
  let batch = new Map<string, WholeShelfText>();
  const flush = async (): Promise<void> => {
    const texts = [...batch.values()];
    batch = new Map();
    if (texts.length > 0) await onTexts(texts);
  };
  for await (const item of readWordreachFile(file)) {
    signal.throwIfAborted();
    if ('text' in item) {
      if (batch.has(item.text.id) || batch.size >= BATCH) await flush();
      batch.set(item.text.id, item.text);
    } else if ('passage' in item) passages.push(item.passage);
    else if ('group' in item) groups.push(item.group);
    else if ('sequence' in item) sequences.push(item.sequence);
    else if ('preset' in item) presets.push(item.preset);
    else if (item.stored === GROUPS_KEY) {
      const read = Object.values(readGroups(item.value));
      groups.push(...read);
      counts.groups += countIn(item.value, 'groups') - read.length;
    } else if (item.stored === SEQUENCES_KEY) {
      const read = Object.values(readOwnSequences(item.value));
      sequences.push(...read);
      counts.sequences += countIn(item.value, 'sequences') - read.length;
    } else if (item.stored === PRESETS_KEY) presets.push(...parsePresets(item.value));
    else if (item.stored.startsWith('lesson/')) counts.lessons++;
  }
  await flush();
  return { groups, sequences, presets, passages };
}

/** Returns the items that a file adds and changes in this browser, and the previous versions of the changed items. */
async function planTaking(content: Content, how: Taking) {
  const [groups, sequences, presets, passages] = await Promise.all([
    loadGroups(),
    loadSequences(),
    loadPresets(),
    loadPassages(),
  ]);
  const isMerged = how === 'merge';
  const changedSequences = Object.fromEntries(
    content.sequences
      .filter(({ id }) => isMerged && Object.hasOwn(sequences.own, id))
      .filter((sequence) => !isSame(sequences.own[sequence.id], sequence))
      .map((sequence) => [sequence.id, sequence] as const),
  );
  const fresh = content.groups.filter((group) => !isGroupHere(group, groups));
  const taken = takeIn(
    { groups: fresh, sequences: content.sequences },
    { groups, sequences: { ...sequences, own: { ...sequences.own, ...changedSequences } } },
  );
  const placed = Object.entries(taken.groups).map(([id, group], i) => {
    const same = isMerged ? findByName(groups, fresh[i]!.name) : undefined;
    if (!same) return { id, group, isNew: true };
    // If the file has no names, the group keeps the names that it has in this browser.
    const names = [...new Set([...same.group.names, ...group.names])];
    return { id: same.id, group: { ...group, name: same.group.name, names }, isNew: false };
  });
  const groupsThat = (isNew: boolean): Readonly<Record<string, Group>> =>
    Object.fromEntries(
      placed.filter((each) => each.isNew === isNew).map(({ id, group }) => [id, group] as const),
    );
  const addedGroups = groupsThat(true);
  const changedGroups = groupsThat(false);
  const planned = planPresets(content.presets, presets, isMerged);
  const byId = new Map(passages.map((passage) => [passage.id, passage]));
  const newPassages = content.passages.filter(
    (passage) => !passages.some((here) => isSame(contentOf(here), contentOf(passage))),
  );
  const clashing = newPassages.filter(({ id }) => byId.has(id));
  return {
    before: {
      groups: pick(groups.groups, Object.keys(changedGroups)),
      sequences: pick(sequences.own, Object.keys(changedSequences)),
      presets,
      passages: isMerged ? clashing.map(({ id }) => byId.get(id)!) : [],
    },
    addedGroups,
    changedGroups,
    addedSequences: taken.sequences,
    changedSequences,
    presets: planned.presets,
    changedPresets: planned.changed,
    addedPassages: newPassages
      .filter(({ id }) => !isMerged || !byId.has(id))
      .map((passage) => (byId.has(passage.id) ? { ...passage, id: freePassageId() } : passage)),
    changedPassages: Object.fromEntries(
      (isMerged ? clashing : []).map((passage) => {
        const { rev } = byId.get(passage.id)!;
        return [passage.id, { ...passage, rev: rev + 1, saved: Date.now() }];
      }),
    ),
  };
}

function planPresets(found: readonly LessonPreset[], here: readonly LessonPreset[], isMerged: boolean) {
  let presets = here;
  const changed: string[] = [];
  for (const preset of found) {
    const same = presets.find(({ name }) => name === preset.name);
    if (same && isSame(same, preset)) continue;
    if (same && isMerged) {
      presets = presets.map((each) => (each === same ? preset : each));
      changed.push(preset.name);
    } else {
      let { name } = preset;
      for (let n = 2; presets.some((each) => each.name === name); n++) name = `${preset.name} ${n}`;
      presets = [...presets, { ...preset, name }];
    }
  }
  return { presets, changed };
}

async function takeTexts(texts: readonly WholeShelfText[], how: Taking) {
  const put: WholeShelfText[] = [];
  const added: string[] = [];
  const before: WholeShelfText[] = [];
  for (const text of texts) {
    const found = await findText(text);
    if (found === 'here') continue;
    const there = found === 'other' && how === 'merge' ? await loadWhole(text.id) : undefined;
    if (there) before.push(there);
    const taken = found === 'other' && !there ? { ...text, id: freeTextId() } : text;
    if (!there) added.push(taken.id);
    put.push(taken);
  }
  await putTexts(put);
  return { added, before };
}

/** Returns `here` if the text is on the shelf, `other` if another text has its id, and `none` otherwise. */
async function findText(text: WholeShelfText): Promise<'here' | 'other' | 'none'> {
  const there = await loadWhole(text.id);
  if (!there) return 'none';
  if (hasSameContent(there, text)) return 'here';
  return (await findAlike(text)).some((other) => hasSameContent(other, text)) ? 'here' : 'other';
}

/** Returns whether two texts are equal in everything but the id. */
function hasSameContent(a: WholeShelfText, b: WholeShelfText): boolean {
  const { id: _a, words: _wa, ...restA } = a;
  const { id: _b, words: _wb, ...restB } = b;
  return hasSameWords(a, b) && isSame(restA, restB);
}

function isGroupHere(group: Group, here: Groups): boolean {
  const same = findByName(here, group.name)?.group;
  return (
    same !== undefined && isSame(same, group.names.length === 0 ? { ...group, names: same.names } : group)
  );
}

function countIn(value: unknown, list: string): number {
  return Object.keys((value as Record<string, object | undefined> | null)?.[list] ?? {}).length;
}

function findByName({ groups }: Groups, name: string): { id: string; group: Group } | undefined {
  const found = Object.entries(groups).find(([, group]) => group.name === name);
  return found && { id: found[0], group: found[1] };
}

function contentOf({ title, source, original, versions }: Passage): object {
  return { title, source, original, versions };
}

/** Keys are sorted, because browsers do not keep the order of stored fields. */
function isSame(a: unknown, b: unknown): boolean {
  return inOrder(a) === inOrder(b);
}

function inOrder(value: unknown): string {
  return JSON.stringify(value, (_, part: unknown) =>
    part?.constructor === Object ? Object.fromEntries(Object.entries(part).sort()) : part,
  );
}

function pick<T>(items: Readonly<Record<string, T>>, ids: readonly string[]): Record<string, T> {
  return Object.fromEntries(ids.map((id) => [id, items[id]!]));
}

function without<T>(items: Readonly<Record<string, T>>, taken: object): Readonly<Record<string, T>> {
  return Object.fromEntries(Object.entries(items).filter(([id]) => !Object.hasOwn(taken, id)));
}
