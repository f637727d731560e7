import { useEffect, useRef } from 'preact/hooks';
import { createPassageEditor, type PassageEditor, type PassageWord, type Shading } from './passage-editor.ts';

interface PassageFieldProps {
  readonly label: string;
  /** The text with which the field opens. After that the field keeps its own text. */
  readonly text: string;
  readonly shading: Shading | null;
  readonly onText: (text: string) => void;
  /** Called when typing has paused and the text can be counted and shown. */
  readonly onSettled: () => void;
  readonly onWord: (word: PassageWord | null) => void;
  readonly ready: (editor: PassageEditor) => void;
}

/** The field in which a passage is adapted. The text is shaded during writing. */
export function PassageField({ label, text, shading, onText, onSettled, onWord, ready }: PassageFieldProps) {
  const parent = useRef<HTMLDivElement>(null);
  const editor = useRef<PassageEditor | null>(null);
  const calls = useRef({ onText, onSettled, onWord });
  calls.current = { onText, onSettled, onWord };
  useEffect(() => {
    const controller = new AbortController();
    editor.current = createPassageEditor({
      parent: parent.current!,
      text,
      label,
      onChange: (changed) => calls.current.onText(changed),
      onSettled: () => calls.current.onSettled(),
      onWord: (word) => calls.current.onWord(word),
      signal: controller.signal,
    });
    ready(editor.current);
    return () => {
      controller.abort();
      calls.current.onWord(null);
    };
  }, []);
  const { shade, longest, preTeach } = shading ?? {};
  useEffect(() => {
    if (shade) editor.current?.setShading({ shade, longest: longest ?? null, preTeach: preTeach ?? [] });
  }, [shade, longest, preTeach]);
  return <div class="desk-field" ref={parent} />;
}
