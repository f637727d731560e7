import type { Span } from '../types.ts';
import { isShortened, standsBeforeName } from './abbreviations.ts';

/** Made when it is first needed: it takes longer than all else of a page's script to begin. */
let segmenter: Intl.Segmenter | undefined;
/** The last letters of a piece with the full stop behind them. */
const SHORTENED = /(?<![\p{L}\p{N}])(\p{L}+)\.\s*$/u;
/** A name's first letters (J. Falk, Bram J. R. Falk) or U.S., before what goes on with a capital. */
const INITIALS = /(?:^|[^\p{L}\p{N}]|\p{Lu}\p{Ll}+\s)\p{Lu}\.\s*$/u;
const DOTTED = /\p{Lu}\.\p{Lu}\.\s*$/u;

/**
 * The sentences of a text with the blanks behind them, end to end: as Unicode UAX #29 cuts them, but not after Mr. and
 * the like (Mr. Falk), nor after first letters (J. Falk, the U.S. Navy), nor between speech and the one who said it.
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
  // Speech keeps the one who said it: “Row!” said Bram.
  if (/^\p{Ll}/u.test(next)) return !/\n/.test(before.slice(before.trimEnd().length));
  const run = SHORTENED.exec(before)?.[1];
  if (run === undefined || /\n/.test(before.slice(before.trimEnd().length))) return false;
  if (run.length === 1)
    return run !== 'I' && (DOTTED.test(before) || INITIALS.test(before)) && /^\p{Lu}/u.test(next);
  if (standsBeforeName(run)) return isShortened(run, ` ${next.slice(0, 2)}`) && /^\p{Lu}/u.test(next);
  return /^\d/.test(next) && isShortened(run, ` ${next[0]}`);
}
