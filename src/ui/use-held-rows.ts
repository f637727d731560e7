import { useRef, useState } from 'preact/hooks';

/**
 * Holds the rows of a list in which ticked rows disappear. After `hold()`, the rows keep their places and sizes until
 * pointer and keyboard focus have left the list. So no button moves under the pointer.
 */
export function useHeldRows<T>(rows: readonly T[], keyOf: (row: T) => string) {
  const [held, setHeld] = useState<readonly T[] | null>(null);
  const isOver = useRef(false);
  const now = new Set(rows.map(keyOf));
  const keys = new Set(held?.map(keyOf));
  const shown = held ? [...held, ...rows.filter((row) => !keys.has(keyOf(row)))] : rows;
  const release = (list: HTMLElement): void => {
    if (!held) return;
    if (list.contains(document.activeElement)) document.querySelector('main')?.focus();
    setHeld(null);
  };
  return {
    rows: shown,
    /** Whether a row is still shown although it is no longer in the list. */
    isGone: (row: T): boolean => !now.has(keyOf(row)),
    hold: (): void => setHeld(shown),
    /** Event handlers for the element around the rows. */
    leaving: {
      onPointerEnter: () => {
        isOver.current = true;
      },
      onPointerLeave: ({ pointerType, currentTarget }: PointerEvent & { currentTarget: HTMLElement }) => {
        isOver.current = false;
        // Lifting a finger does not count as leaving the list.
        if (pointerType !== 'touch' && !document.activeElement?.matches(':focus-visible'))
          release(currentTarget);
      },
      onFocusOut: ({ relatedTarget, currentTarget }: FocusEvent & { currentTarget: HTMLElement }) => {
        // The rows stay if the window lost the keyboard focus, or if the focus moved to another row.
        if (!isOver.current && relatedTarget instanceof Node && !currentTarget.contains(relatedTarget))
          release(currentTarget);
      },
    },
  };
}
