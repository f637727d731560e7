import { REACH } from './cut-context.ts';

/**
 * The pieces around a word in its sentence, in reading order. A piece is a word as written or a single punctuation
 * mark.
 */
export interface Context {
  readonly before: readonly string[];
  readonly after: readonly string[];
}

const PIECE = /(?:Mrs?|Ms|Dr|St)\.|[\p{L}\p{N}\p{M}]+(?:['’.-][\p{L}\p{N}]+)*|[.!?;:,()"“”—–]|\n\s*\n/gu;
/** The same pattern for texts with English letters only. It takes half the time. */
const PLAIN_PIECE = /(?:Mrs?|Ms|Dr|St)\.|[A-Za-z0-9]+(?:['’.-][A-Za-z0-9]+)*|[.!?;:,()"“”—–]|\n\s*\n/gu;
const PLAIN = /^[\0-\x7f“”‘’—–…]*$/;
/** The first characters of pieces that end a sentence. No other piece begins with one of them. */
const ENDS = '.!?\n';

/**
 * Returns the pieces around a span of a text, within its sentence or paragraph. The end mark of the sentence or
 * paragraph is included in the pieces after the span.
 */
export function readContext(text: string, start: number, end: number): Context {
  const back = text.slice(Math.max(start - REACH, 0), start);
  const cut = start > REACH ? back.slice(back.search(/\s|$/)) : back;
  const before = piecesOf(cut);
  const from = before.findLastIndex(endsSentence);
  const after = piecesOf(text.slice(end, end + REACH));
  const to = after.findIndex(endsSentence);
  return {
    before: before.slice(from + 1),
    after: to === -1 ? after : after.slice(0, to + 1),
  };
}

function endsSentence(piece: string): boolean {
  return ENDS.includes(piece[0]!);
}

function piecesOf(text: string): string[] {
  const straight = /[\u00AD’ʼ＇]/.test(text) ? text.replace(/\u00AD/g, '').replace(/[’ʼ＇]/g, "'") : text;
  return straight.match(PLAIN.test(straight) ? PLAIN_PIECE : PIECE) ?? [];
}
