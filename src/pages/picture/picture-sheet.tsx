import { useEffect, useRef } from 'preact/hooks';
import type { PictureMark } from './shade-picture.ts';
import type { ShownPicture } from './use-pictures.ts';

interface PictureSheetProps {
  readonly picture: ShownPicture;
  readonly name: string;
  readonly marks: readonly PictureMark[];
  /** The word the text field is at, which may be in another picture. */
  readonly here: PictureMark | null;
  readonly onWord: (mark: PictureMark) => void;
}

/** One picture with shading over its words; a click on a word goes to it in the text. The text field is the way for the keyboard. */
export function PictureSheet({ picture, name, marks, here, onWord }: PictureSheetProps) {
  const { address, width, height } = picture;
  const shown = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    // The pictures scroll, the page does not: the text field stays where it is.
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
