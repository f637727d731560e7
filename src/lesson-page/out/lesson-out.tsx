import { createPortal, flushSync } from 'preact/compat';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Group } from '../../analyze/types.ts';
import type { Passage } from '../../host/passages-store.ts';
import type { PlannedPart } from '../../lesson/index.ts';
import { sourceLine } from '../../passage/source-line.ts';
import { cleanText } from '../../print/clean-text.ts';
import { keepChoices, loadChoices } from '../../print/keep-choices.ts';
import { nameFile } from '../../print/name-file.ts';
import { saveFile } from '../../ui/save-file.ts';
import { LessonPaper, type LessonPaperProps } from './lesson-paper.tsx';
import './lesson-paper.css';
import { LessonPrintView } from './lesson-print-view.tsx';
import { type Audience, printParts } from './printed-part.ts';
import { writeLessonBody, writeLessonHtml } from './write-lesson-html.tsx';
import { writeLessonText } from './write-lesson-text.ts';

interface LessonOutProps {
  readonly parts: readonly PlannedPart[];
  /** The passage's, or empty. */
  readonly title: string;
  readonly group: Group;
  readonly passage: Passage | null;
}

/** The ways a lesson leaves the page: on paper, as a file, by the clipboard; the pupils' sheet or the teacher's key. */
export function LessonOut({ parts, title, group, passage }: LessonOutProps) {
  const [printing, setPrinting] = useState(false);
  const [audience, setAudience] = useState<Audience>('pupils');
  const [choices, setChoices] = useState(loadChoices);
  const [says, setSays] = useState('');
  const button = useRef<HTMLButtonElement>(null);
  // The browser's own print command prints the sheet too, not the page around it.
  useEffect(() => {
    const controller = new AbortController();
    const show = (): void => flushSync(() => setPrinting(true));
    addEventListener('beforeprint', show, { signal: controller.signal });
    return () => controller.abort();
  }, []);
  const source = passage && sourceLine(passage);
  const paper = (): LessonPaperProps => ({
    title: cleanText(title),
    nameLine: audience === 'pupils' && choices.nameLine,
    parts: printParts(parts, audience),
    source: source && cleanText(source),
  });
  const save = async (extension: string, write: () => Blob | Promise<Blob>): Promise<void> => {
    try {
      const name = `Lesson ${title} ${audience === 'key' ? '(key)' : ''}`;
      saveFile(nameFile(name, group.name, extension), await write());
      setSays('Saved with your downloads.');
    } catch {
      setSays('The file could not be made. Reload this page and try again, or copy the text.');
    }
  };
  const text = (): string => {
    const { title, parts, source } = paper();
    return writeLessonText(title, parts, source);
  };
  const copy = async (): Promise<void> => {
    const item = new ClipboardItem({
      'text/plain': new Blob([text()], { type: 'text/plain' }),
      'text/html': new Blob([writeLessonBody(paper())], { type: 'text/html' }),
    });
    const done = await navigator.clipboard.write([item]).then(
      () => true,
      () => false,
    );
    setSays(done ? 'Copied.' : 'The browser did not let it be copied. Save it as plain text, or try again.');
  };
  return (
    <div class="lesson-bar">
      <button ref={button} type="button" class="action" onClick={() => setPrinting(true)}>
        Print…
      </button>
      <label>
        <span class="unseen">Which sheet</span>
        <select
          class="field"
          value={audience}
          onChange={(event) => setAudience(event.currentTarget.value as Audience)}
        >
          <option value="pupils">Pupils’ sheet</option>
          <option value="key">Your key</option>
        </select>
      </label>
      <button
        type="button"
        class="plain"
        onClick={() =>
          save('docx', async () => (await import('./write-lesson-docx.ts')).writeLessonDocx(paper(), choices))
        }
      >
        Save for Word
      </button>
      <button
        type="button"
        class="plain"
        onClick={() =>
          save(
            'html',
            () => new Blob([writeLessonHtml(paper(), choices)], { type: 'text/html;charset=utf-8' }),
          )
        }
      >
        Save as web page
      </button>
      <button
        type="button"
        class="plain"
        onClick={() => save('txt', () => new Blob([text()], { type: 'text/plain;charset=utf-8' }))}
      >
        Save as plain text
      </button>
      <button type="button" class="plain" onClick={copy}>
        Copy
      </button>
      <span role="status" class="quiet">
        {says}
      </span>
      {printing &&
        createPortal(
          <LessonPrintView
            audience={audience}
            choices={choices}
            onAudience={setAudience}
            onChange={(changed) => {
              setChoices(changed);
              keepChoices(changed);
            }}
            onClose={() => {
              flushSync(() => setPrinting(false));
              button.current?.focus();
            }}
          >
            <LessonPaper {...paper()} />
          </LessonPrintView>,
          document.body,
        )}
    </div>
  );
}
