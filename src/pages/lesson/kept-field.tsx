import { useEffect, useRef, useState } from 'preact/hooks';

/** Milliseconds from the first key press until typed text is saved. A crash loses less than a second of typing. */
const OFTEN = 700;

interface KeptFieldProps {
  readonly label: string;
  readonly value: string;
  /** True if the field may have more than one line. */
  readonly long?: boolean;
  readonly onKeep: (text: string) => void;
}

/**
 * A field whose text is saved during typing and when the field loses focus. During typing the field shows the typed
 * text, not the saved text.
 */
export function KeptField({ label, value, long = false, onKeep }: KeptFieldProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const waiting = useRef<{ text: string; timer: ReturnType<typeof setTimeout> } | null>(null);
  const keep = useRef(onKeep);
  keep.current = onKeep;
  const flush = useRef(() => {
    if (!waiting.current) return;
    const { text, timer } = waiting.current;
    clearTimeout(timer);
    waiting.current = null;
    keep.current(text);
  });
  useEffect(() => {
    const leave = flush.current;
    addEventListener('pagehide', leave);
    return () => {
      removeEventListener('pagehide', leave);
      leave();
    };
  }, []);
  const props = {
    class: 'field',
    'aria-label': label,
    value: typed ?? value,
    onInput: ({ currentTarget: { value: text } }: { readonly currentTarget: { readonly value: string } }) => {
      setTyped(text);
      waiting.current = { text, timer: waiting.current?.timer ?? setTimeout(flush.current, OFTEN) };
    },
    onBlur: () => {
      flush.current();
      setTyped(null);
    },
  };
  return long ? (
    <textarea rows={2} {...props} />
  ) : (
    <input type="text" size={Math.max(4, Math.min(60, value.length))} {...props} />
  );
}
