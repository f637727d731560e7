import type { CellKind, PastedTable } from '../../analyze/index.ts';
import { say } from '../../wording/say.ts';

const kinds = [
  ['step', 'sequences.columnTitle'],
  ['title', 'sequences.columnTitleAndTeaches'],
  ['patterns', 'sequences.columnTeaches'],
  ['examples', 'sequences.columnExamples'],
  ['by-sight', 'sequences.columnWords'],
  ['notes', 'sequences.columnIgnore'],
] as const satisfies readonly (readonly [CellKind, string])[];

interface ColumnsTableProps {
  readonly table: PastedTable;
  /** The kind of each column, from the left. */
  readonly chosen: readonly CellKind[];
  readonly onChoose: (column: number, kind: CellKind) => void;
}

/** The first rows of a pasted table. Each column has a list for choosing the kind of its content. */
export function ColumnsTable({ table: { columns, rows }, chosen, onChoose }: ColumnsTableProps) {
  const nameOf = (place: number): string =>
    columns[place]!.name || say('sequences.numberedColumn', { column: place + 1 });
  return (
    <div class="columns-frame">
      <table class="column-kinds">
        <thead>
          <tr>
            {columns.map((_, i) => (
              <th key={i} scope="col">
                <label for={`column-${i}`}>{nameOf(i)}</label>
                <select
                  id={`column-${i}`}
                  class="field"
                  value={chosen[i]}
                  onChange={(event) => onChoose(i, event.currentTarget.value as CellKind)}
                >
                  {kinds.map(([kind, text]) => (
                    <option key={kind} value={kind}>
                      {say(text)}
                    </option>
                  ))}
                </select>
              </th>
            ))}
          </tr>
        </thead>
        <tbody lang="en">
          {rows.map((row, i) => (
            <tr key={i}>
              {row.map((cell, column) => (
                <td key={column} class={chosen[column] === 'notes' ? 'column-ignored' : undefined}>
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
