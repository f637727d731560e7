import type { LessonBlock } from '../../lesson/index.ts';
import { hasCells, isWide, languageOf } from './out/printed-part.ts';

/** Shows a piece of the lesson as it is on the teacher’s key. Text that pupils are to write is shown on a line. */
export function BlockView({ block }: { block: LessonBlock }) {
  const { title, layout, rows, note } = block;
  const shows = block.columns[0]!.shows;
  const columns = block.columns
    .map((column, at) => ({ ...column, at }))
    .filter(({ at }) => rows.some((row) => row[at]));
  return (
    <div class={`lesson-block${isWide(block) ? ' lesson-wide' : ''}`} lang={languageOf(block)} dir="ltr">
      {title && <h3>{title}</h3>}
      {note && <p class="lesson-note">{note}</p>}
      {hasCells(layout) ? (
        // biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a block wider than the page is scrolled by key
        <div class="lesson-scroll scrolls-aside" role="group" aria-label={title || note} tabIndex={0}>
          <table class={`lesson-${layout}`}>
            {columns.some(({ head }) => head !== '') && (
              <thead>
                <tr>
                  {columns.map(({ head }, i) => (
                    <th key={i} scope="col">
                      {head}
                    </th>
                  ))}
                </tr>
              </thead>
            )}
            <tbody>
              {rows.map((row, i) => (
                <tr key={i}>
                  {columns.map(({ shows, at }) => (
                    <td key={at} class={`lesson-${shows}`}>
                      <span>{row[at] ?? ''}</span>
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      ) : (
        <ul class={`lesson-${layout} lesson-${shows}`}>
          {rows.map((row, i) => (
            <li key={i}>
              {layout === 'chain' ? (
                row.map((word, j) => (
                  <span key={j} class="lesson-link">
                    {word}
                  </span>
                ))
              ) : (
                <span>{row[0] ?? ''}</span>
              )}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
