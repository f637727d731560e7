import { groupItems } from './group-items.ts';
import type { SheetLine, SheetRun } from './make-sheet.ts';
import type { SheetChoices } from './sheet-choices.ts';
import type { SheetPiece } from './sheet-parts.ts';

interface PageViewProps {
  readonly pieces: readonly SheetPiece[];
  readonly margin: SheetChoices['margin'];
  readonly source: string | null;
  /** The page number, from 1. The first page does not show its number. */
  readonly number: number;
}

/** The content of one page of a sheet. Each part has the attribute `data-part`. */
export function PageView({ pieces, margin, source, number }: PageViewProps) {
  const parts = pieces.map(({ part }) => part);
  const title = parts.find((part) => part.kind === 'title');
  const words = parts.flatMap((part) => (part.kind === 'story-word' ? [part.word] : []));
  // A box that continues from the page before does not repeat its label.
  const isLabelled = number === 1 || parts[0]?.kind !== 'story-word';
  const text = pieces.flatMap(({ part, lines, goesOn }) =>
    part.kind === 'text' ? [{ ...part.line, lines, goesOn }] : [],
  );
  return (
    <>
      {title && <h1 data-part>{title.text}</h1>}
      {parts.some(({ kind }) => kind === 'name') && (
        <p class="sheet-name" data-part>
          Name <span class="sheet-blank sheet-blank-long" /> Date <span class="sheet-blank" />
        </p>
      )}
      {words.length > 0 && (
        <section class="sheet-box" aria-label="Words to pre-teach">
          {isLabelled && <p class="sheet-box-label">Words to pre-teach</p>}
          <dl>
            {words.map(({ word, meaning }) => (
              <div key={word} data-part>
                <dt>{word}</dt>
                {meaning && <dd>{meaning}</dd>}
              </div>
            ))}
          </dl>
        </section>
      )}
      <div class={`set-text set-${margin}`}>
        {groupItems(text).map((piece, i) => {
          if (Array.isArray(piece))
            return (
              <ul key={i}>
                {piece.map((item, j) => (
                  <li key={j} class={item.goesOn ? 'set-on' : undefined} data-part>
                    <TextView {...item} />
                  </li>
                ))}
              </ul>
            );
          const Tag = piece.kind === 'heading' ? (`h${piece.level + 1}` as 'h2') : 'p';
          return (
            <Tag key={i} data-part>
              <TextView {...piece} />
            </Tag>
          );
        })}
      </div>
      <footer class="sheet-foot">
        <span class="sheet-source">{source}</span>
        <span class="sheet-number">{number > 1 && number}</span>
      </footer>
    </>
  );
}

/** Shows text freely, or in the measured lines so that printing cannot break the text elsewhere. */
function TextView({ runs, lines }: SheetLine & Pick<SheetPiece, 'lines'>) {
  if (!lines) return <Runs runs={runs} />;
  return (
    <>
      {lines.map((line, i) => (
        <span class="set-line" key={i}>
          <Runs runs={line.runs} />
          {line.number !== null && (
            <span class="set-number" aria-hidden="true">
              <small>{line.number}</small>
            </span>
          )}
          {i < lines.length - 1 && ' '}
        </span>
      ))}
    </>
  );
}

function Runs({ runs }: { runs: readonly SheetRun[] }) {
  return <>{runs.map(({ text, fresh }, i) => (fresh ? <u key={i}>{text}</u> : text))}</>;
}
