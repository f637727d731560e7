import {
  type Analyzer,
  catalogue,
  compileGroup,
  createJudge,
  isBlend,
  parseGroup,
} from '../../analyze/index.ts';
import type { Pattern, PatternId, Sequence } from '../../analyze/types.ts';
import { patternName } from '../../ui/pattern-name.ts';
import { say } from '../../wording/say.ts';
import { teachable } from './search-patterns.ts';

/** A point in a sequence that the teacher may want to look at. `step` counts from 0. */
export interface Oddity {
  readonly step: number;
  readonly says: string;
}

const rows = new Map<PatternId, Pattern>(catalogue.map((row) => [row.id, row]));

/**
 * Returns the oddities in the order of a sequence:
 * - a step without content
 * - a by-sight word that an earlier step already teaches
 * - a blend before its letters
 * - a spelling change before an ending at which it happens
 * - with the engine, a by-sight word that can be decoded by then
 * The oddities are advice only: common practice, no source.
 */
export function findOddities(
  { id, accent = 'american', steps }: Sequence,
  engine: Analyzer | null,
): readonly Oddity[] {
  const oddities: Oddity[] = [];
  const known = new Set<PatternId>();
  const knownLetters = new Set<string>();
  const words = new Map<string, number>();
  const wordless = {
    id,
    name: id,
    source: id,
    licence: id,
    steps: steps.map((s) => ({ ...s, bySight: [] })),
  };
  steps.forEach(({ teaches, bySight }, step) => {
    const note = (says: string): void => void oddities.push({ step, says });
    for (const pattern of teaches) {
      known.add(pattern);
      const row = rows.get(pattern);
      if (row && !isBlend(row)) for (const letters of row.letters.split(' ')) knownLetters.add(letters);
    }
    if (teaches.length + bySight.length === 0) note(say('sequences.teachesNothing'));
    for (const pattern of teaches) {
      const early = lackOf(rows.get(pattern), known, knownLetters);
      if (early) note(early);
    }
    for (const word of bySight) {
      const before = words.get(word.toLowerCase());
      if (before !== undefined) note(say('sequences.bySightAlready', { word, step: before + 1 }));
      words.set(word.toLowerCase(), before ?? step);
    }
    if (!engine || bySight.length === 0) return;
    const group = parseGroup({ name: id, accent, sequence: id, step: step + 1 });
    const judge = createJudge(engine, compileGroup(group, wordless));
    const decodable = bySight.filter((word) =>
      ['reads', 'fresh'].includes(judge(word.toLowerCase()).standing),
    );
    if (decodable.length > 0) {
      const words = decodable.map((word) => `“${word}”`).join(', ');
      note(say('sequences.decodableByNow', { words }));
    }
  });
  return oddities;
}

/**
 * Returns the patterns that no step teaches, in catalogue order. Finer rows are left out, because they count only if a
 * step names them.
 */
export function neverTaught({ steps }: Sequence): readonly Pattern[] {
  const taught = new Set(steps.flatMap(({ teaches }) => teaches));
  return teachable.filter(({ id, finer }) => !finer && !taught.has(id));
}

/** Returns a message if a pattern comes before the letters or endings that it needs, or else null. */
function lackOf(
  row: Pattern | undefined,
  known: ReadonlySet<PatternId>,
  letters: ReadonlySet<string>,
): string | null {
  if (!row) return null;
  const pattern = capital(patternName(row.id));
  if (isBlend(row) && !isCovered(row.letters, letters)) return say('sequences.beforeItsLetters', { pattern });
  if (row.family === 'spelling change') {
    const happens = [...known].some((id) => {
      const ending = rows.get(id);
      return ending?.family === 'suffix' && /^[aeiouy]/.test(ending.letters);
    });
    return happens ? null : say('sequences.beforeAnyEnding', { pattern, endings: '-ing, -ed, -es' });
  }
  return null;
}

/** Returns whether a text can be built from known spellings: th and r make up thr. */
function isCovered(text: string, letters: ReadonlySet<string>): boolean {
  if (text === '') return true;
  return [1, 2].some((n) => letters.has(text.slice(0, n)) && isCovered(text.slice(n), letters));
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
