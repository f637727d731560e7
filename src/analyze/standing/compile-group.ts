import { accentOf, type Speech, speechOf } from '../accent/speech.ts';
import { catalogue, finerRows } from '../catalogue/catalogue.ts';
import { IRREGULAR } from '../patterns/irregular.ts';
import type { Accent, Group, GroupOptions, PatternId, Sequence } from '../types.ts';
import type { FineRows } from './fine-needs.ts';
import { addWhatFollows } from './follow-rules.ts';
import { GroupError } from './group-error.ts';
import { irregularForms } from './irregular-forms.ts';
import { addBit, bitsOf, hasBit, type PatternBits, removeBit } from './pattern-bits.ts';
import { syllableCount } from './pattern-roles.ts';

/** A group prepared for judging. All its options are converted to bits, so each check is a look-up. */
export interface CompiledGroup {
  readonly accent: Accent;
  /** The pronunciation used for the group, as passed to an analyser (`speaking`). */
  readonly speech: Speech;
  /** All patterns that count as known. */
  readonly taught: PatternBits;
  /** The known patterns of the step being taught now. */
  readonly fresh: PatternBits;
  /** The by-sight words, in lower case. */
  readonly bySight: ReadonlySet<string>;
  /** The group's names, in lower case. A word with a capital may be one of them. */
  readonly names: ReadonlySet<string>;
  /** The names that the group lists in lower case. Such a word is a name even in lower case. */
  readonly smallNames: ReadonlySet<string>;
  /** The words to skip, in lower case. */
  readonly skip: ReadonlySet<string>;
  readonly options: ResolvedOptions;
  /** The finer rows that count for the group, or null if there are none. */
  readonly fineRows: FineRows | null;
  /** Returns the first step (from 1) that teaches a pattern, or null if the sequence never teaches it. */
  stepOf(id: PatternId): number | null;
  /** Returns the same group with one more pattern taught. */
  alsoTeaching(id: PatternId): CompiledGroup;
}

/** A group's options with the defaults filled in. A `maxSyllables` of 3 or more sets no limit. */
export type ResolvedOptions = Required<Omit<GroupOptions, 'maxSyllables'>> &
  Pick<GroupOptions, 'maxSyllables'>;

/**
 * Finds the patterns a group knows. They are determined in this order: the steps taught so far, the limit on long words
 * by `maxSyllables`, `alsoTaught` and `notYet`, and finally the patterns that follow from these by the options.
 * `notYet` overrides everything else. Throws `GroupError` if the group's step is beyond the sequence.
 */
export function compileGroup(group: Group, sequence: Sequence | null): CompiledGroup {
  const steps = sequence?.steps ?? [];
  if (sequence !== null && group.step > steps.length) {
    throw new GroupError('step', `is ${group.step}, but "${sequence.id}" has ${steps.length} steps.`);
  }
  const known = steps.slice(0, group.step);
  const options: ResolvedOptions = { ...defaults, ...group.options };
  const inSteps = bitsOf(known.flatMap((step) => step.teaches));
  const inSequence = steps.flatMap((step) => step.teaches);
  const inCurrentStep = known.at(-1)?.teaches ?? [];
  const firstStep = firstSteps(sequence);
  const lists = {
    accent: accentOf(group),
    speech: speechOf(group),
    bySight: withForms(lowerCased([...known.flatMap((step) => step.bySight), ...group.bySight]), options),
    names: lowerCased(group.names),
    smallNames: new Set(group.names.filter((name) => name === name.toLowerCase())),
    skip: lowerCased(group.skip ?? []),
    options,
    stepOf: (id: PatternId) => firstStep.get(id) ?? null,
  };

  const compile = (alsoTaught: readonly PatternId[], notYet: readonly PatternId[]): CompiledGroup => {
    const taught = inSteps.slice();
    limitSyllables(taught, options);
    for (const id of [...alsoTaught, ...kindsOf(alsoTaught)]) addBit(taught, id);
    for (const id of notYet) removeBit(taught, id);
    addWhatFollows(taught, options);
    for (const id of [...notYet, IRREGULAR]) removeBit(taught, id);
    return {
      ...lists,
      taught,
      fineRows: findFineRows([...inSequence, ...alsoTaught, ...notYet], taught, options),
      fresh: bitsOf(inCurrentStep.filter((id) => hasBit(taught, id))),
      alsoTeaching: (id) =>
        compile(
          [...alsoTaught, id],
          notYet.filter((other) => other !== id),
        ),
    };
  };
  return compile(group.alsoTaught, group.notYet);
}

const defaults = {
  schwa: 'flex',
  shortOMerged: true,
  wh: 'counted',
  blends: 'counted',
  syllableTypes: 'free',
  irregularForms: 'counted',
  divisions: 'free',
  endings: 'parts',
  bath: 'father',
  soundMarks: 'dictionary',
} as const;

/** Lists the kinds of the taught patterns. A group taught contractions out of turn knows every kind of contraction. */
function kindsOf(taught: readonly PatternId[]): PatternId[] {
  if (taught.length === 0) return [];
  return finerRows.filter(({ kindOf }) => kindOf && taught.includes(kindOf)).map(({ id }) => id);
}

/**
 * Finds the finer rows a group is held to:
 *
 * - Kinds and roots: the rows that the group names, in any step of its sequence or in its own lists. So if a sequence
 * teaches contractions, and later contractions with have, the group has all other kinds from the first of these steps.
 * - Endings: the rows that the group names, if it takes endings as units.
 * - Ways to divide: all rows, if the options count them.
 */
function findFineRows(
  namedIds: readonly PatternId[],
  taught: PatternBits,
  { divisions, endings }: ResolvedOptions,
): FineRows | null {
  const named = new Set(namedIds);
  const held = new Set<PatternId>();
  let anyTaught = false;
  for (const { id, finer } of finerRows) {
    const isHeld =
      finer === 'division'
        ? divisions === 'counted'
        : named.has(id) && (finer !== 'unit' || endings === 'units');
    if (isHeld) held.add(id);
    anyTaught ||= hasBit(taught, id);
  }
  return anyTaught || held.size > 0 ? { held } : null;
}

/**
 * Adds irregular forms if the group's options allow: go brings went. Want does not bring wants here, because the judge
 * handles such forms.
 */
function withForms(words: ReadonlySet<string>, options: ResolvedOptions): ReadonlySet<string> {
  if (options.irregularForms === 'counted') return words;
  return new Set([...words].flatMap((word) => [word, ...irregularForms(word)]));
}

function limitSyllables(taught: PatternBits, { maxSyllables }: ResolvedOptions): void {
  if (maxSyllables === undefined) return;
  for (const pattern of catalogue) {
    const count = syllableCount(pattern);
    if (count !== null && count <= maxSyllables) addBit(taught, pattern.id);
    if (count !== null && count > maxSyllables) removeBit(taught, pattern.id);
  }
}

function firstSteps(sequence: Sequence | null): ReadonlyMap<PatternId, number> {
  const first = new Map<PatternId, number>();
  sequence?.steps.forEach((step, i) => {
    for (const id of step.teaches) if (!first.has(id)) first.set(id, i + 1);
  });
  return first;
}

function lowerCased(words: readonly string[]): ReadonlySet<string> {
  return new Set(words.map((word) => word.toLowerCase()));
}
