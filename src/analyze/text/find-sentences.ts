import type { Span } from '../types.ts';
import { isShortened, standsBeforeName } from './abbreviations.ts';

/** The segmenter is created when it is first needed, because it takes longer to start than the rest of a page's script. */
let segmenter: Intl.Segmenter | undefined;
/** The last letters of a piece and the full stop after them. */
const SHORTENED = /(?<![\p{L}\p{N}])(\p{L}+)\.\s*$/u;
/** A name's initials (J. Falk, Bram J. R. Falk) or U.S., before text that continues with a capital. */
const INITIALS = /(?:^|[^\p{L}\p{N}]|\p{Lu}\p{Ll}+\s)\p{Lu}\.\s*$/u;
const DOTTED = /\p{Lu}\.\p{Lu}\.\s*$/u;

/**
 * Returns the sentences of a text end to end, each with the blanks after it. The text is cut as in Unicode UAX #29. It
 * is not cut after Mr. and similar forms (Mr. Falk), after initials (J. Falk, the U.S. Navy), or between speech and its
 * speaker.
 */
export function findSentences(text: string): Span[] {
  const found: { start: number; end: number }[] = [];
  segmenter ??= new Intl.Segmenter('en', { granularity: 'sentence' });
  for (const { segment, index } of segmenter.segment(text)) {
    const last = found.at(-1);
    const end = index + segment.length;
    if (last && goesOn(text.slice(last.start, last.end), segment)) last.end = end;
    else found.push({ start: index, end });
  }
  return found;
}

function goesOn(before: string, next: string): boolean {
  // Speech stays together with its speaker: “Row!” said Bram.
  if (/^\p{Ll}/u.test(next)) return !/\n/.test(before.slice(before.trimEnd().length));
  const run = SHORTENED.exec(before)?.[1];
  if (run === undefined || /\n/.test(before.slice(before.trimEnd().length))) return false;
  if (run.length === 1)
    return run !== 'I' && (DOTTED.test(before) || INITIALS.test(before)) && /^\p{Lu}/u.test(next);
  if (standsBeforeName(run)) return isShortened(run, ` ${next.slice(0, 2)}`) && /^\p{Lu}/u.test(next);
  return /^\d/.test(next) && isShortened(run, ` ${next[0]}`);
}
