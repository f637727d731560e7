import { useState } from 'preact/hooks';

type DragEventOf = DragEvent & { readonly currentTarget: Element };

/**
 * The events that move a row of a list, or a column of a table. The row is moved by dragging its handle, or by Alt and
 * an arrow key.
 */
export interface RowDrag {
  /** Returns the class of a row: `drop-before` or `drop-after` where the dragged row would come, else an empty string. */
  dropClass(row: number): string;
  rowEvents(row: number): {
    onDragOver(event: DragEvent): void;
    onDrop(event: DragEvent): void;
    onKeyDown(event: KeyboardEvent): void;
  };
  handleEvents(row: number, name: string): { onDragStart(event: DragEventOf): void; onDragEnd(): void };
}

/**
 * Calls `move` with the row that is moved and the row whose place it takes. Either row may be outside the list. `keys`
 * are the keys that move a row back and on.
 */
export function useRowDrag(
  move: (from: number, to: number) => void,
  keys: readonly [back: string, on: string] = ['ArrowUp', 'ArrowDown'],
): RowDrag {
  const [dragged, setDragged] = useState<number | null>(null);
  const [over, setOver] = useState<number | null>(null);
  const end = (): void => {
    setDragged(null);
    setOver(null);
  };
  return {
    dropClass: (row) =>
      over !== row || dragged === null ? '' : dragged < row ? 'drop-after' : 'drop-before',
    rowEvents: (row) => ({
      onDragOver(event) {
        if (dragged === null) return;
        event.preventDefault();
        setOver(row);
      },
      onDrop(event) {
        event.preventDefault();
        if (dragged !== null) move(dragged, row);
        end();
      },
      onKeyDown(event) {
        const way = keys.indexOf(event.key);
        if (!event.altKey || way < 0) return;
        event.preventDefault();
        move(row, way === 0 ? row - 1 : row + 1);
      },
    }),
    handleEvents: (row, name) => ({
      onDragStart(event) {
        const line = event.currentTarget.closest('li, th');
        if (line) event.dataTransfer?.setDragImage(line, 12, 12);
        event.dataTransfer?.setData('text/plain', name);
        setDragged(row);
      },
      onDragEnd: end,
    }),
  };
}
