import { createPortal, flushSync } from 'preact/compat';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Analyzer } from '../analyze/index.ts';
import type { Passage, PassageVersion } from '../host/passages-store.ts';
import type { ShadedLine } from '../passage/shade-line.ts';
import { saveFile } from '../ui/save-file.ts';
import { keepChoices, loadChoices } from './keep-choices.ts';
import { makeSheet, plainContent } from './make-sheet.ts';
import { nameFile } from './name-file.ts';
import { PrintView } from './print-view.tsx';
import { writeHtml, writeHtmlBody } from './write-html.ts';
import { writeText } from './write-text.ts';

interface OutMenuProps {
  readonly passage: Passage;
  readonly version: PassageVersion;
  /** The group's name goes into the names of files, never onto the sheet. */
  readonly groupName: string | null;
  /** Both null until the word table is there. */
  readonly shade: ((line: string) => ShadedLine) | null;
  readonly engine: Analyzer | null;
}

/** The ways a passage leaves the desk: on paper, as a file, by the clipboard. Each has the source line. */
export function OutMenu({ passage, version, groupName, shade, engine }: OutMenuProps) {
  const [printing, setPrinting] = useState(false);
  const [choices, setChoices] = useState(loadChoices);
  const [says, setSays] = useState('');
  const button = useRef<HTMLButtonElement>(null);
  const words = useMemo(() => shade && engine && { shade, engine }, [shade, engine]);
  // The browser's own print command prints the sheet too, not the desk around it.
  useEffect(() => {
    const controller = new AbortController();
    const show = (): void => flushSync(() => setPrinting(true));
    addEventListener('beforeprint', show, { signal: controller.signal });
    return () => controller.abort();
  }, []);

  const chosen = () => makeSheet(passage, version, choices, words);
  const plain = () => makeSheet(passage, version, plainContent, null);
  const save = async (extension: string, write: () => Blob | Promise<Blob>): Promise<void> => {
    try {
      saveFile(nameFile(passage.title, groupName, extension), await write());
      setSays('Saved with your downloads.');
    } catch {
      setSays('The file could not be made. Reload this page and try again, or copy the text.');
    }
  };
  const copy = async (): Promise<void> => {
    const sheet = plain();
    const item = new ClipboardItem({
      'text/plain': new Blob([writeText(sheet)], { type: 'text/plain' }),
      'text/html': new Blob([writeHtmlBody(sheet)], { type: 'text/html' }),
    });
    const done = await navigator.clipboard.write([item]).then(
      () => true,
      () => false,
    );
    setSays(
      done ? 'Copied.' : 'The browser did not let the text be copied. Save it as plain text, or try again.',
    );
  };
  return (
    <div class="desk-bar">
      <button ref={button} type="button" class="action" onClick={() => setPrinting(true)}>
        Print…
      </button>
      <button
        type="button"
        class="plain"
        onClick={() =>
          save('docx', async () => (await import('./write-docx.ts')).writeDocx(chosen(), choices))
        }
      >
        Save for Word
      </button>
      <button
        type="button"
        class="plain"
        onClick={() =>
          save('html', () => new Blob([writeHtml(chosen(), choices)], { type: 'text/html;charset=utf-8' }))
        }
      >
        Save as web page
      </button>
      <button
        type="button"
        class="plain"
        onClick={() =>
          save('txt', () => new Blob([writeText(plain())], { type: 'text/plain;charset=utf-8' }))
        }
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
          <PrintView
            sheet={chosen()}
            choices={choices}
            canMark={words !== null}
            onChange={(changed) => {
              setChoices(changed);
              keepChoices(changed);
            }}
            onClose={() => {
              flushSync(() => setPrinting(false));
              button.current?.focus();
            }}
          />,
          document.body,
        )}
    </div>
  );
}
