import { REACH } from './cut-context.ts';

/** The pieces around a word in its sentence, in reading order: words as written, and single marks. */
export interface Context {
  readonly before: readonly string[];
  readonly after: readonly string[];
}

const PIECE = piece('\\p{L}\\p{N}', '\\p{M}');
/** The same where a text has English letters alone, in half the time. */
const PLAIN_PIECE = piece('A-Za-z0-9', '');
const PLAIN = /^[\0-\x7f“”‘’—–…]*$/;
const SENTENCE_END = /^(?:[.!?]|\n\s*\n)$/;

/** The pieces around a span of a text, no further than its sentence or paragraph, whose end is kept behind. */
export function readContext(text: string, start: number, end: number): Context {
  const back = text.slice(Math.max(start - REACH, 0), start);
  const cut = start > REACH ? back.slice(back.search(/\s|$/)) : back;
  const before = piecesOf(cut);
  const from = before.findLastIndex((piece) => SENTENCE_END.test(piece));
  const after = piecesOf(text.slice(end, end + REACH));
  const to = after.findIndex((piece) => SENTENCE_END.test(piece));
  return {
    before: before.slice(from + 1),
    after: to === -1 ? after : after.slice(0, to + 1),
  };
}

function piecesOf(text: string): string[] {
  const straight = text.replace(/\u00AD/g, '').replace(/[’ʼ＇]/g, "'");
  return straight.match(PLAIN.test(straight) ? PLAIN_PIECE : PIECE) ?? [];
}

function piece(signs: string, marks: string): RegExp {
  return new RegExp(
    `(?:Mrs?|Ms|Dr|St)\\.|[${signs}${marks}]+(?:['’.-][${signs}]+)*|[.!?;:,()"“”—–]|\\n\\s*\\n`,
    'gu',
  );
}
