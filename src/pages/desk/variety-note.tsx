import { useMemo } from 'preact/hooks';
import type { Accent } from '../../analyze/types.ts';
import { type ForeignWord, findForeign } from '../../variety/index.ts';
import { say } from '../../wording/say.ts';
import type { TextEdit } from './passage-editor.ts';

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
  const found = useMemo(() => findForeign(text, accent), [text, accent]);
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
              <button type="button" class="plain" onClick={() => onEdit(words.map(editOf))}>
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

const NAMES = { spelling: 'Spelling', word: 'Words' } as const;

function editOf({ start, end, to }: ForeignWord): TextEdit {
  return { from: start, to: end, text: to };
}

/** Lists each change once, as in harbour → harbor. */
function listChanges(words: readonly ForeignWord[]): string[] {
  return [...new Set(words.map(({ text, to }) => `${text.toLowerCase()} → ${to.toLowerCase()}`))];
}
