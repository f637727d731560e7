import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { compileGroup, createJudge } from '../../analyze/index.ts';
import { loadEngine } from '../../host/data/load-engine.ts';
import { findGroup, type Groups } from '../../host/store/groups-store.ts';
import { withinSequence } from '../../host/store/move-group.ts';
import { findSequence, type Sequences } from '../../host/store/sequences-store.ts';
import { createShader } from '../../passage/shade-line.ts';
import { FileDrop } from '../../ui/file-drop.tsx';
import { Reach } from '../../ui/reach.tsx';
import { LoadFault, useLoaded } from '../../ui/use-loaded.ts';
import { say } from '../../wording/say.ts';
import './picture.css';
import { PictureSheet } from './picture-sheet.tsx';
import { ReadingNote } from './reading-note.tsx';
import { markName, type PictureMark, shadePictures } from './shade-picture.ts';
import { TakeButtons } from './take-buttons.tsx';
import { type GivenPicture, usePictures } from './use-pictures.ts';
import { WordsToCheck } from './words-to-check.tsx';

/**
 * The types of files that may be pictures of text. If the browser cannot read a type (HEIC), the browser itself reports
 * this.
 */
const PICTURE_KINDS = 'image/png,image/jpeg,image/webp,image/avif,image/bmp,.heic,.heif';

interface PictureViewProps {
  /** The pictures that are given at the start. More pictures may be added. */
  readonly given: readonly GivenPicture[];
  readonly groups: Groups;
  readonly sequences: Sequences;
  /** Called with the id of the passage that the text was made into. */
  readonly onPassage: (id: string) => void;
}

/** Shows pictures of text, shaded as a page is, and beside them the text that was read, for correction. */
export function PictureView({ given, groups, sequences, onPassage }: PictureViewProps) {
  const [more, setMore] = useState<readonly GivenPicture[]>([]);
  const all = useMemo(() => [...given, ...more], [given, more]);
  const pictures = usePictures(all);
  const { shown, lines, text, progress } = pictures;
  const [checked, setChecked] = useState<ReadonlySet<string>>(new Set());
  const [caret, setCaret] = useState<number | null>(null);
  const field = useRef<HTMLTextAreaElement>(null);
  const engine = useLoaded(loadEngine);
  const group = findGroup(groups, groups.chosen);
  const judge = useMemo(() => {
    if (!engine || engine instanceof LoadFault || !group) return null;
    const sequence = findSequence(sequences, group.sequence);
    return createJudge(engine, compileGroup(withinSequence(group, sequence), sequence));
  }, [engine, group, sequences]);
  const shader = useMemo(() => judge && createShader(judge), [judge]);
  const shaded = useMemo(
    () => judge && shader && shadePictures(lines, text, shader(text), judge, checked),
    [judge, shader, lines, text, checked],
  );
  const marks = shaded?.marks ?? [];
  const here = marks.find(({ start, end }) => caret !== null && start <= caret && caret <= end) ?? null;
  const open = marks.filter(({ isOpen }) => isOpen);
  const keep = useWarning(pictures.isOwn && text.trim() !== '' ? text : null);

  const goTo = ({ start, end }: PictureMark): void => {
    field.current?.focus();
    field.current?.setSelectionRange(start, end);
    setCaret(start);
  };
  const add = (file: File): void =>
    setMore((now) => [...now, { blob: file, title: nameOf(file), url: null, isScreen: false }]);
  return (
    <div class="picture-view">
      <ReadingNote pictures={pictures} />
      {engine instanceof LoadFault && (
        <p class="note note-wrong" role="alert">
          {say('desk.noTable', { why: engine.message })}
        </p>
      )}
      {shown.length > 0 && (
        <div class="picture-columns">
          <div class="picture-shown">
            <p class="quiet">{say('picture.legend')}</p>
            {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls is reached by the keyboard */}
            <section class="picture-sheets" aria-label={say('picture.pictures')} tabIndex={0}>
              {shown.map((picture, n) => (
                <PictureSheet
                  key={picture.address}
                  picture={picture}
                  name={say('picture.pictureOf', { number: n + 1 })}
                  marks={marks.filter(({ screen }) => screen === n)}
                  here={here}
                  onWord={goTo}
                />
              ))}
            </section>
          </div>
          <section class="picture-side" aria-labelledby="picture-text-title">
            <h2 id="picture-text-title">{say('picture.text')}</h2>
            <p class="quiet" id="picture-hint">
              {say('picture.correctIt')}
            </p>
            <textarea
              ref={field}
              class="field picture-text"
              rows={14}
              value={text}
              lang="en"
              dir="ltr"
              aria-labelledby="picture-text-title"
              aria-describedby="picture-hint"
              onInput={(event) => pictures.setText(event.currentTarget.value)}
              onSelect={(event) => setCaret(event.currentTarget.selectionStart)}
              onBlur={() => setCaret(null)}
            />
            <WordsToCheck
              marks={open}
              shown={shown}
              onWord={goTo}
              onRight={(mark) => setChecked((now) => new Set(now).add(markName(mark)))}
            />
            {shaded && text.trim() !== '' && (
              <>
                <p class="quiet">{say('picture.forGroup', { group: group?.name ?? '' })}</p>
                <Reach tally={shaded.tally} />
              </>
            )}
            {progress === null && (
              <TakeButtons
                found={{ title: all[0]?.title ?? '', text: text.trim(), url: all[0]?.url ?? null }}
                group={groups.chosen}
                onKept={keep}
                onPassage={onPassage}
              />
            )}
          </section>
        </div>
      )}
      {progress === null && (
        <section class="part" aria-labelledby="more-title">
          <h2 id="more-title">{say(shown.length > 0 ? 'picture.addAnother' : 'picture.openOne')}</h2>
          <FileDrop
            label={say('picture.choose')}
            labelledBy="more-title"
            accept={PICTURE_KINDS}
            multiple
            onFile={add}
          />
        </section>
      )}
    </div>
  );
}

function nameOf(file: File): string {
  return file.name.replace(/\.[^.]+$/, '') || file.name;
}

/**
 * Makes the browser ask before the page is left while corrections exist only on this page. Returns a function to call
 * when the current text was made a passage or saved.
 */
function useWarning(text: string | null): () => void {
  const kept = useRef<string | null>(null);
  useEffect(() => {
    if (text === null) return;
    const controller = new AbortController();
    const warn = (event: BeforeUnloadEvent): void => {
      if (kept.current !== text) event.preventDefault();
    };
    addEventListener('beforeunload', warn, { signal: controller.signal });
    return () => controller.abort();
  }, [text]);
  return () => {
    kept.current = text;
  };
}
