import { useEffect, useRef } from 'preact/hooks';
import type { PictureMark } from './shade-picture.ts';
import type { ShownPicture } from './use-pictures.ts';

interface PictureSheetProps {
  readonly picture: ShownPicture;
  readonly name: string;
  readonly marks: readonly PictureMark[];
  /** The word at the caret of the text field. The word may be in another picture. */
  readonly here: PictureMark | null;
  readonly onWord: (mark: PictureMark) => void;
}

/**
 * Shows one picture with shading over its words. A click on a word goes to the word in the text. Keyboard users use the
 * text field instead.
 */
export function PictureSheet({ picture, name, marks, here, onWord }: PictureSheetProps) {
  const { address, width, height } = picture;
  const shown = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    // Only the list of pictures scrolls, not the page, so the text field keeps its place.
    const list = shown.current?.closest('.picture-sheets');
    if (!list || !shown.current) return;
    const word = shown.current.getBoundingClientRect();
    const view = list.getBoundingClientRect();
    if (word.top < view.top || word.bottom > view.bottom)
      list.scrollTop += word.top - view.top - view.height / 3;
  }, [here]);
  return (
    <div class="picture-sheet">
      <img src={address} alt={name} />
      {width > 0 && (
        <div class="picture-marks" aria-hidden="true">
          {marks.map((mark) => {
            const { box, standing, isOpen } = mark;
            return (
              // biome-ignore lint/a11y/noStaticElementInteractions: the text field beside it is the way for the keyboard
              // biome-ignore lint/a11y/useKeyWithClickEvents: as above
              <span
                key={`${box.left} ${box.top}`}
                ref={mark === here ? shown : undefined}
                class={`picture-mark picture-${standing}${isOpen ? ' picture-open' : ''}${mark === here ? ' picture-here' : ''}`}
                style={{
                  left: `${(box.left / width) * 100}%`,
                  top: `${(box.top / height) * 100}%`,
                  width: `${((box.right - box.left) / width) * 100}%`,
                  height: `${((box.bottom - box.top) / height) * 100}%`,
                }}
                onClick={() => onWord(mark)}
              />
            );
          })}
        </div>
      )}
    </div>
  );
}
