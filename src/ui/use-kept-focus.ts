import { useEffect, useRef } from 'preact/hooks';

/**
 * For a list whose rows vanish when they are ticked: `leave(i)` notes the row that is about to go, and once `rows`
 * has changed the focus is on the box that took its place, or on the panel when none is left.
 */
export function useKeptFocus<T extends HTMLElement>(rows: unknown) {
  const list = useRef<T>(null);
  const left = useRef<number | null>(null);
  useEffect(() => {
    if (left.current === null) return;
    const boxes = list.current?.querySelectorAll<HTMLElement>('input[type="checkbox"]') ?? [];
    const next = boxes[Math.min(left.current, boxes.length - 1)] ?? document.querySelector('main');
    left.current = null;
    next?.focus();
  }, [rows]);
  return {
    list,
    leave: (row: number): void => {
      left.current = row;
    },
  };
}
