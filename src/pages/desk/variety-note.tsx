import { useMemo } from 'preact/hooks';
import { remember } from '../../analyze/index.ts';
import type { Accent } from '../../analyze/types.ts';
import { takeSteps } from '../../passage/take-steps.ts';
import { type ForeignWord, findForeign } from '../../variety/index.ts';
import { say } from '../../wording/say.ts';
import type { TextEdit } from './passage-editor.ts';
import { useSteps } from './use-steps.ts';

interface VarietyNoteProps {
  readonly text: string;
  /** The accent of the group. */
  readonly accent: Accent;
  readonly onEdit: (edits: readonly TextEdit[]) => void;
}

/**
 * Offers the group's own spelling and words where a text has spellings and words of the other English. Each press
 * changes all the spellings, or all the words, as a single undo step.
 */
export function VarietyNote({ text, accent, onEdit }: VarietyNoteProps) {
  const find = useMemo(() => remember((line: string) => findForeign(line, accent), MOST), [accent]);
  const found = useSteps(useMemo(() => findInLines(text, find), [text, find])) ?? [];
  // The words shown may be those of the text before the last change.
  const change = (kind: ForeignWord['kind']): void =>
    onEdit(
      takeSteps(findInLines(text, find))
        .filter((each) => each.kind === kind)
        .map(editOf),
    );
  const other = accent === 'american' ? 'british' : 'american';
  return (
    <>
      {(['spelling', 'word'] as const).map((kind) => {
        const words = found.filter((each) => each.kind === kind);
        if (words.length === 0) return null;
        const title = say(`desk.${other}${NAMES[kind]}`, { count: words.length });
        return (
          <section key={kind} class="variety" aria-label={title}>
            <p class="row">
              <span>{title}</span>
              <button type="button" class="plain" onClick={() => change(kind)}>
                {say(accent === 'american' ? 'desk.makeAmerican' : 'desk.makeBritish')}
              </button>
            </p>
            <p class="quiet" lang="en">
              {listChanges(words).join(', ')}
            </p>
          </section>
        );
      })}
    </>
  );
}

/** The maximum number of cached lines. */
const MOST = 20_000;

/** Finds the words of the other English line by line, since none goes over the end of a line. */
function* findInLines(
  text: string,
  find: (line: string) => readonly ForeignWord[],
): Generator<undefined, readonly ForeignWord[]> {
  const found: ForeignWord[] = [];
  let from = 0;
  for (const line of text.split('\n')) {
    for (const word of find(line)) found.push({ ...word, start: word.start + from, end: word.end + from });
    from += line.length + 1;
    yield;
  }
  return found;
}

const NAMES = { spelling: 'Spelling', word: 'Words' } as const;

function editOf({ start, end, to }: ForeignWord): TextEdit {
  return { from: start, to: end, text: to };
}

/** Lists each change once, as in harbour → harbor. */
function listChanges(words: readonly ForeignWord[]): string[] {
  return [...new Set(words.map(({ text, to }) => `${text.toLowerCase()} → ${to.toLowerCase()}`))];
}
