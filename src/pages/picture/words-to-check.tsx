import { say } from '../../wording/say.ts';
import { markName, type PictureMark } from './shade-picture.ts';
import type { ShownPicture } from './use-pictures.ts';

interface WordsToCheckProps {
  readonly marks: readonly PictureMark[];
  readonly shown: readonly ShownPicture[];
  readonly onWord: (mark: PictureMark) => void;
  /** Called when the teacher confirms that the word was read correctly. */
  readonly onRight: (mark: PictureMark) => void;
}

/** The height at which a piece of a picture is shown, and its greatest width, in pixels. */
const HEIGHT = 28;
const WIDEST = 220;

/** Lists the words with an unsure reading. Each is shown as the picture has it and as it was read. */
export function WordsToCheck({ marks, shown, onWord, onRight }: WordsToCheckProps) {
  if (marks.length === 0) return null;
  return (
    <section class="picture-checks" aria-labelledby="check-title">
      <h3 id="check-title">{say('picture.toCheck', { count: marks.length })}</h3>
      <p class="quiet">{say('picture.aboutChecking')}</p>
      <ul>
        {marks.map((mark) => (
          <li key={markName(mark)}>
            <Piece mark={mark} picture={shown[mark.screen]} />
            <button type="button" class="plain" lang="en" dir="ltr" onClick={() => onWord(mark)}>
              {mark.text}
            </button>
            <button
              type="button"
              class="plain"
              aria-label={say('picture.isRight', { word: mark.text })}
              onClick={() => onRight(mark)}
            >
              {say('picture.right')}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Shows the part of a picture that contains a word. */
function Piece({ mark, picture }: { mark: PictureMark; picture: ShownPicture | undefined }) {
  if (!picture || picture.width === 0) return null;
  const { left, top, right, bottom } = mark.box;
  const scale = Math.min(HEIGHT / Math.max(1, bottom - top), WIDEST / Math.max(1, right - left));
  return (
    <span
      class="picture-piece"
      aria-hidden="true"
      style={{
        width: `${(right - left) * scale}px`,
        height: `${(bottom - top) * scale}px`,
        backgroundImage: `url(${picture.address})`,
        backgroundSize: `${picture.width * scale}px ${picture.height * scale}px`,
        backgroundPosition: `${-left * scale}px ${-top * scale}px`,
      }}
    />
  );
}
