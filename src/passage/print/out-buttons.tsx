import type { ComponentChildren } from 'preact';
import { createPortal, flushSync } from 'preact/compat';
import { useEffect, useRef, useState } from 'preact/hooks';
import { saveFile } from '../../ui/save-file.ts';
import { say } from '../../wording/say.ts';
import { loadSheetFont, withSheetFont } from './sheet-font.ts';

interface OutButtonsProps {
  /** Returns the name of the file with this extension. */
  readonly name: (extension: string) => string;
  readonly docx: () => Promise<Blob>;
  readonly html: () => string;
  readonly text: () => string;
  /** Returns the content that is copied as rich text. The plain text of the copy comes from `text`. */
  readonly richText: () => string;
  /** Returns the print view. The view calls the given function to close itself. */
  readonly print: (close: () => void) => ComponentChildren;
  /** Other choices beside the print button. */
  readonly children?: ComponentChildren;
}

/** The buttons that print content, save it as a file or copy it to the clipboard. */
export function OutButtons({ name, docx, html, text, richText, print, children }: OutButtonsProps) {
  const [printing, setPrinting] = useState(false);
  const [says, setSays] = useState('');
  const button = useRef<HTMLButtonElement>(null);
  // The font of the sheet is loaded before printing, since the sheet is measured in this font.
  useEffect(() => void loadSheetFont(), []);
  // The browser's own print command also prints the sheet, and leaves out the page around it.
  useEffect(() => {
    const controller = new AbortController();
    const show = (): void => flushSync(() => setPrinting(true));
    addEventListener('beforeprint', show, { signal: controller.signal });
    return () => controller.abort();
  }, []);
  const save = async (extension: string, write: () => Blob | Promise<Blob>): Promise<void> => {
    try {
      saveFile(name(extension), await write());
      setSays(say('print.saved'));
    } catch (error) {
      setSays(say('print.notMade', { why: error instanceof Error ? error.message : String(error) }));
    }
  };
  const copy = async (): Promise<void> => {
    const item = new ClipboardItem({
      'text/plain': new Blob([text()], { type: 'text/plain' }),
      'text/html': new Blob([richText()], { type: 'text/html' }),
    });
    const done = await navigator.clipboard.write([item]).then(
      () => true,
      () => false,
    );
    setSays(say(done ? 'print.copied' : 'print.notCopied'));
  };
  const saves = (label: string, extension: string, write: () => Blob | Promise<Blob>) => (
    <button type="button" class="plain" onClick={() => save(extension, write)}>
      {label}
    </button>
  );
  return (
    <div class="row">
      <button ref={button} type="button" class="action" onClick={() => setPrinting(true)}>
        {say('print.openPrintView')}
      </button>
      {children}
      {saves(say('print.saveForWord'), 'docx', docx)}
      {saves(
        say('print.saveAsWebPage'),
        'html',
        async () => new Blob([await withSheetFont(html())], { type: 'text/html;charset=utf-8' }),
      )}
      {saves(
        say('print.saveAsPlainText'),
        'txt',
        () => new Blob([text()], { type: 'text/plain;charset=utf-8' }),
      )}
      <button type="button" class="plain" onClick={copy}>
        {say('print.copy')}
      </button>
      <span role="status" class="quiet">
        {says}
      </span>
      {printing &&
        createPortal(
          print(() => {
            flushSync(() => setPrinting(false));
            button.current?.focus();
          }),
          document.body,
        )}
    </div>
  );
}
