import { hasCells, isWide, languageOf, type PrintedBlock, type PrintedPart } from './printed-part.ts';

export interface LessonPaperProps {
  /** The title, such as `Lesson for Herons`. It is on the key only, since a sheet needs no label of the group. */
  readonly title: string;
  readonly nameLine: boolean;
  readonly parts: readonly PrintedPart[];
  readonly source: string | null;
}

/** A lesson on paper, for pupils or as the teacher's key. */
export function LessonPaper({ title, nameLine, parts, source }: LessonPaperProps) {
  return (
    <>
      {title && <h1>{title}</h1>}
      {nameLine && (
        <p class="paper-name">
          Name <span class="paper-blank" /> Date <span class="paper-blank" />
        </p>
      )}
      {parts.map(({ id, title, close, blocks }) => (
        <section key={id} class={`paper-part paper-part-${id}${close ? ' paper-close' : ''}`}>
          <h2>{title}</h2>
          <div class="paper-blocks">
            {blocks.map((block) => (
              <Block key={block.id} {...block} />
            ))}
          </div>
        </section>
      ))}
      {source && <footer>{source}</footer>}
    </>
  );
}

function Block(block: PrintedBlock) {
  const { title, layout, note, numbered, columns, rows } = block;
  const { blank, forTeacher } = columns[0]!;
  return (
    <div
      class={`paper-block${isWide(block) ? ' paper-wide' : ''}`}
      lang={languageOf(block) === 'es' ? 'es' : undefined}
    >
      {title && <h3>{title}</h3>}
      {note && <p class="paper-note">{note}</p>}
      {hasCells(layout) ? (
        <table class={layout === 'table' ? undefined : `paper-${layout}`}>
          {columns.some(({ head }) => head !== '') && (
            <thead>
              <tr>
                {numbered && <td />}
                {columns.map(({ head }, i) => (
                  <th key={i}>{head}</th>
                ))}
              </tr>
            </thead>
          )}
          <tbody>
            {rows.map((row, i) => (
              <tr key={i}>
                {numbered && (
                  <td>
                    <span class="paper-number">{i + 1}</span>
                  </td>
                )}
                {row.map((cell, j) => (
                  <td key={j} class={columns[j]!.forTeacher ? 'paper-teacher' : ''}>
                    {columns[j]!.blank ? <span class="paper-blank" /> : cell}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      ) : (
        <ul class={`paper-${layout}${forTeacher ? ' paper-teacher' : ''}`}>
          {rows.map((row, i) => (
            <li key={i}>
              {numbered && <span class="paper-number">{i + 1} </span>}
              {blank ? <span class="paper-blank" /> : layout === 'chain' ? row.join(' → ') : row[0]}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
