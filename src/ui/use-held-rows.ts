import { useRef, useState } from 'preact/hooks';

/**
 * For a list whose rows go when they are ticked: from `hold()` on, the rows stay in their places as they are, so that none takes more or less room, until
 * pointer and keyboard have left the list, so that no button moves under the pointer.
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
    /** Whether a row is kept though it has gone. */
    isGone: (row: T): boolean => !now.has(keyOf(row)),
    hold: (): void => setHeld(shown),
    /** For the element around the rows. */
    leaving: {
      onPointerEnter: () => {
        isOver.current = true;
      },
      onPointerLeave: ({ pointerType, currentTarget }: PointerEvent & { currentTarget: HTMLElement }) => {
        isOver.current = false;
        // A finger that is lifted has left nothing.
        if (pointerType !== 'touch' && !document.activeElement?.matches(':focus-visible'))
          release(currentTarget);
      },
      onFocusOut: ({ relatedTarget, currentTarget }: FocusEvent & { currentTarget: HTMLElement }) => {
        // The window may have lost the keyboard, or the focus gone to another row.
        if (!isOver.current && relatedTarget instanceof Node && !currentTarget.contains(relatedTarget))
          release(currentTarget);
      },
    },
  };
}
