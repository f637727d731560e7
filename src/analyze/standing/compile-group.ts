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

/** A group made ready for judging: whatever its options say is in the bits, so that a test is a look-up. */
export interface CompiledGroup {
  readonly accent: Accent;
  /** How words are said to it, which an analyser is asked for (`speaking`). */
  readonly speech: Speech;
  /** Every pattern that counts as known. */
  readonly taught: PatternBits;
  /** The known patterns of the step being taught now. */
  readonly fresh: PatternBits;
  /** Lower case. */
  readonly bySight: ReadonlySet<string>;
  /** Lower case; names with a capital, which a word with a capital may be. */
  readonly names: ReadonlySet<string>;
  /** The names that the group lists with small letters, so that they are names with small letters too. */
  readonly smallNames: ReadonlySet<string>;
  /** Lower case. */
  readonly skip: ReadonlySet<string>;
  readonly options: ResolvedOptions;
  /** The finer rows that count for the group; null where none does. */
  readonly fineRows: FineRows | null;
  /** The first step, 1-based, that teaches a pattern; null when the sequence never does. */
  stepOf(id: PatternId): number | null;
  /** The same group with one more pattern taught. */
  alsoTeaching(id: PatternId): CompiledGroup;
}

/** A group's options with the defaults filled in; `maxSyllables` 3 or more sets no limit. */
export type ResolvedOptions = Required<Omit<GroupOptions, 'maxSyllables'>> &
  Pick<GroupOptions, 'maxSyllables'>;

/**
 * Works out what a group knows: the steps taught so far, what `maxSyllables` says about long words, then
 * `alsoTaught` and `notYet`, then what follows from these by the options. `notYet` has the last word.
 * Throws `GroupError` when the group's step is beyond the sequence.
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

/** Who was taught contractions out of turn was taught each kind of them. */
function kindsOf(taught: readonly PatternId[]): PatternId[] {
  if (taught.length === 0) return [];
  return finerRows.filter(({ kindOf }) => kindOf && taught.includes(kindOf)).map(({ id }) => id);
}

/**
 * The finer rows a group is held to. Kinds and roots: those it names, in any step of its sequence or in its own lists; so a
 * sequence that teaches contractions, and contractions with have later, has all but those at the first. Endings: those it
 * names, where it takes them as units. Ways to divide: all, where its options count them.
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

/** Where the group's options say so, go brings went with it; want never brings wants, which the judge finds. */
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
