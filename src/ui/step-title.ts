import type { Sequence } from '../analyze/types.ts';
import { say, spokenLanguage } from '../wording/say.ts';
import { patternNames } from './pattern-names.ts';

/** The name of each sequence that comes with the extension, as used in the ids of its texts. */
const STARTERS: Readonly<Record<string, string>> = {
  'steady-steps': 'steady',
  'second-tide': 'tide',
  'england-2013': 'england',
};

/**
 * Returns the title of a step of a sequence, or else the patterns that the step teaches. Step 0 is before the first
 * step.
 */
export function stepTitle(
  sequence: Pick<Sequence, 'steps'> & { readonly id?: string },
  step: number,
): string {
  const found = sequence.steps[step - 1];
  if (!found) return say('ui.beforeFirst');
  const { title, teaches, bySight } = found;
  if (title) return translate(sequence.id, String(step)) ?? title;
  if (teaches.length > 0) return patternNames(teaches);
  return bySight.length > 0 ? say('ui.bySightWords', { words: bySight.join(', ') }) : say('ui.nothingNew');
}

/** Returns the note on a sequence for its teacher, or undefined if the sequence has none. */
export function sequenceNote({ id, note }: Pick<Sequence, 'id' | 'note'>): string | undefined {
  return note && (translate(id, 'Note') ?? note);
}

/**
 * Returns a text of a sequence that comes with the extension, in the reader's language. Returns undefined for English
 * and for a teacher's own sequence.
 */
function translate(id: string | undefined, text: string): string | undefined {
  if (id === undefined || !Object.hasOwn(STARTERS, id) || spokenLanguage() === 'en') return undefined;
  const name = `steps.${STARTERS[id]}${text}`;
  const said = say(name as 'steps.steadyNote');
  return said === name ? undefined : said;
}
