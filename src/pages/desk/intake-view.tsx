import { useState } from 'preact/hooks';
import type { Groups } from '../../host/store/groups-store.ts';
import type { Sequences } from '../../host/store/sequences-store.ts';
import { typedStore } from '../../host/store/typed-store.ts';
import { addPassage } from '../../passage/add-passage.ts';
import { ChapterChoice } from '../../passage/files/chapter-choice.tsx';
import { FileFault } from '../../passage/files/file-fault.ts';
import { isPictureFile } from '../../passage/files/is-picture.ts';
import { openFile } from '../../passage/files/open-file.ts';
import { type OpenedBook, type OpenedText, sayLeftOut } from '../../passage/files/opened-file.ts';
import { readPasted } from '../../passage/files/read-pasted.ts';
import { takeChapters } from '../../passage/files/take-chapters.ts';
import type { FoundText } from '../../passage/found-text.ts';
import { FileDrop } from '../../ui/file-drop.tsx';
import { useTyped } from '../../ui/use-typed.ts';
import { say } from '../../wording/say.ts';
import { BeginView } from './begin-view.tsx';
import { PictureOnDesk } from './picture-on-desk.tsx';
import { noteSaved, openPassage } from './use-desk.ts';

interface IntakeViewProps {
  readonly groups: Groups;
  readonly sequences: Sequences;
  /** Called with a note for the teacher about the opened text. */
  readonly onNote: (id: string, says: string) => void;
}

/** The view for putting a text on the desk: pasted, from a file, or written in the view. */
export function IntakeView({ groups, sequences, onNote }: IntakeViewProps) {
  const { typed, type: setText, done } = useTyped(typedStore, 'desk');
  const text = typed ?? '';
  const [fault, setFault] = useState<string | null>(null);
  const [opening, setOpening] = useState<string | null>(null);
  const [book, setBook] = useState<OpenedBook | null>(null);
  const [picture, setPicture] = useState<File | null>(null);
  const take = async (found: FoundText): Promise<string> => {
    const id = await addPassage(found);
    noteSaved();
    openPassage(id);
    return id;
  };
  const takeOpened = async ({ leftOut, ...found }: OpenedText): Promise<void> => {
    const id = await take(found);
    const says = sayLeftOut(leftOut);
    if (says) onNote(id, says);
  };
  const open = async (file: File): Promise<void> => {
    if (opening !== null) return;
    setFault(null);
    setBook(null);
    setOpening(file.name);
    try {
      if (await isPictureFile(file)) return setPicture(file);
      const opened = await openFile(file);
      if (!('chapters' in opened)) await takeOpened(opened);
      else if (opened.chapters.length === 1) await takeOpened(takeChapters(opened, new Set([0])));
      else setBook(opened);
    } catch (error) {
      if (!(error instanceof FileFault)) throw error;
      setFault(error.message);
    } finally {
      setOpening(null);
    }
  };
  if (picture)
    return (
      <PictureOnDesk
        key={picture.name}
        {...{ picture, groups, sequences }}
        onPassage={(id) => {
          noteSaved();
          openPassage(id);
        }}
        onLeave={() => setPicture(null)}
      />
    );
  if (book)
    return (
      <div class="sheet">
        <ChapterChoice
          book={book}
          onTake={(chosen) => void takeOpened(takeChapters(book, chosen))}
          onLeave={() => setBook(null)}
        />
      </div>
    );
  const isEmpty = text.trim() === '';
  const put = (): void => void take({ title: firstWords(text), text: text.trim() }).then(done);
  return (
    <div class="sheet">
      <section class="part" aria-labelledby="paste-title">
        <h2 id="paste-title">{say('desk.putATextOnTheDesk')}</h2>
        <p class="quiet">{say('desk.takeOrPaste')}</p>
        <div class="picker">
          <label for="pasted">{say('desk.text')}</label>
          <textarea
            id="pasted"
            class="field desk-pasted"
            rows={10}
            value={text}
            placeholder={say('desk.pasteOrWrite')}
            lang="en"
            dir="ltr"
            onInput={(event) => setText(event.currentTarget.value)}
            onPaste={(event) => {
              const html = event.clipboardData?.getData('text/html');
              if (!html) return;
              event.preventDefault();
              const field = event.currentTarget;
              field.setRangeText(readPasted(html), field.selectionStart, field.selectionEnd, 'end');
              setText(field.value);
            }}
          />
        </div>
        <p class="row">
          <button type="button" class="action" disabled={isEmpty} onClick={put}>
            {say('desk.putItOnTheDesk')}
          </button>
          {isEmpty && (
            <button type="button" class="plain" onClick={put}>
              {say('desk.beginEmpty')}
            </button>
          )}
        </p>
      </section>
      <BeginView
        groups={groups}
        sequences={sequences}
        onBegun={async (found, says) => onNote(await take(found), says)}
      />
      <section class="part" aria-labelledby="file-title">
        <h2 id="file-title">{say('desk.openAFile')}</h2>
        <FileDrop
          label={say('desk.chooseAFile')}
          labelledBy="file-title"
          accept=".txt,.md,.html,.htm,.docx,.pdf,.epub,.png,.jpg,.jpeg,.webp,.avif,.heic,.heif"
          onFile={open}
        />
        <div aria-live="polite">
          {opening !== null && <p class="note">{say('desk.openingFile', { file: opening })}</p>}
          {fault && <p class="note note-wrong">{fault}</p>}
          {fault === say('files.pdfOfPictures') && (
            <a class="plain" href="/pdf.html">
              {say('panel.openPdfFile')}
            </a>
          )}
        </div>
      </section>
    </div>
  );
}

/** Returns the first line, which serves as a title until the teacher gives one. */
function firstWords(text: string): string {
  const line = text.trim().split('\n', 1)[0]?.replace(/^#+ /, '') ?? '';
  return line.length > 60 ? `${line.slice(0, 60).replace(/\s+\S*$/, '')}…` : line || say('desk.untitled');
}
