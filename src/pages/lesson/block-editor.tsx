import type { LessonBlock } from '../../lesson/index.ts';
import { withoutMarks } from '../../marks/mark-word.ts';
import { say } from '../../wording/say.ts';
import { KeptField } from './kept-field.tsx';

interface BlockEditorProps {
  readonly block: LessonBlock;
  readonly reads: (text: string) => boolean;
  /** Null removes the whole piece. */
  readonly onChange: (block: LessonBlock | null) => void;
}

/**
 * Shows a piece of the lesson with a field for each text. Text that pupils see and cannot read yet is reported but
 * allowed.
 */
export function BlockEditor({ block, reads, onChange }: BlockEditorProps) {
  const { title, layout, columns, rows, note } = block;
  const setRows = (changed: LessonBlock['rows']): void => onChange({ ...block, rows: changed });
  const columnOf = (cell: number) => columns[cell] ?? columns[0]!;
  const unread = [
    ...new Set(
      rows.flatMap((row) =>
        row.filter((cell, j) => {
          const { shows, head } = columnOf(j);
          const isTold = shows === 'both' || shows === 'blank';
          return isTold && head !== 'Letters' && /\p{L}/u.test(cell) && !reads(withoutMarks(cell));
        }),
      ),
    ),
  ];
  return (
    <fieldset class="lesson-block lesson-editor">
      <legend lang={title ? 'en' : undefined}>{title || say('lesson.text')}</legend>
      {note !== undefined && (
        <KeptField
          long
          label={say('lesson.noteFor', { title })}
          value={note}
          onKeep={(text) => onChange({ ...block, note: text })}
        />
      )}
      {rows.map((row, i) => (
        <div class="lesson-fields" key={i}>
          {row.map((cell, j) => (
            <KeptField
              key={j}
              label={say('lesson.cell', { column: columnOf(j).head || title, line: i + 1 })}
              value={cell}
              onKeep={(text) => setRows(rows.with(i, row.with(j, text)))}
            />
          ))}
          <button
            type="button"
            class="plain"
            aria-label={say('lesson.takeOutLine', { line: i + 1 })}
            onClick={() => setRows(rows.toSpliced(i, 1))}
          >
            {say('lesson.takeOut')}
          </button>
        </div>
      ))}
      {unread.length > 0 && (
        <p class="lesson-unread" role="status">
          {say('lesson.unread', { words: unread.join(', ') })}
        </p>
      )}
      <p class="row">
        <button
          type="button"
          class="plain"
          onClick={() => setRows([...rows, (rows.at(-1) ?? columns).map(() => '')])}
        >
          {layout === 'words' ? say('lesson.addWord') : say('lesson.addLine')}
        </button>
        <button type="button" class="plain" onClick={() => onChange(null)}>
          {title ? say('lesson.takeOutAll', { title }) : say('lesson.takeOutThis')}
        </button>
      </p>
    </fieldset>
  );
}
