import { useEffect, useRef, useState } from 'preact/hooks';
import { explainPictureFault, writePictureText } from '../../passage/files/picture-text.ts';
import { settleSureness } from '../../passage/files/sure-words.ts';
import { type JoinedScreens, joinScreens, type ScreenLine } from '../../picture/join-screens.ts';
import type { PictureProgress } from '../../picture/picture-reading.ts';

/** A picture to be read. */
export interface GivenPicture {
  readonly blob: Blob;
  readonly title: string;
  readonly url: string | null;
  /** Whether the picture is one of several overlapping screens of a document. */
  readonly isScreen: boolean;
}

/** A picture that is shown. */
export interface ShownPicture {
  /** An object URL of the picture, valid within the page. */
  readonly address: string;
  /** The width and height in pixels; 0 until the picture has been read. */
  readonly width: number;
  readonly height: number;
}

/** Pictures and the text read in them so far. */
export interface Pictures {
  readonly shown: readonly ShownPicture[];
  readonly lines: readonly ScreenLine[];
  /** The progress of the reading; null when nothing is being read. */
  readonly progress: PictureProgress | null;
  /** The outcome of the last picture, if it was not read as expected. */
  readonly came: Outcome | null;
  readonly text: string;
  /** Whether the teacher changed the text. */
  readonly isOwn: boolean;
  readonly setText: (text: string) => void;
  /** Ends the reading of a picture. `again` reads the last picture once more. */
  readonly stop: () => void;
  readonly again: () => void;
}

export type Outcome =
  | { readonly kind: 'nothing' | 'apart' | 'noWords' | 'stopped' }
  | { readonly kind: 'fault'; readonly why: string };

/**
 * Reads pictures into one text, one after the other and each once. The reader is loaded only during the reading.
 * Closing the view ends the reading.
 */
export function usePictures(given: readonly GivenPicture[]): Pictures {
  const [shown, setShown] = useState<readonly ShownPicture[]>([]);
  const [lines, setLines] = useState<readonly ScreenLine[]>([]);
  const [progress, setProgress] = useState<PictureProgress | null>(null);
  const [came, setCame] = useState<Outcome | null>(null);
  const [text, setText] = useState('');
  const [turn, setTurn] = useState(0);
  const state = useRef({
    text: '',
    made: '',
    lines: [] as readonly ScreenLine[],
    taken: 0,
    isReading: false,
  });
  const controller = useRef(new AbortController());
  const addresses = useRef<string[]>([]);
  useEffect(
    () => () => {
      controller.current.abort();
      for (const address of addresses.current) URL.revokeObjectURL(address);
    },
    [],
  );

  const write = (changed: string): void => {
    state.current.text = changed;
    setText(changed);
  };
  const readOne = async ({ blob, isScreen }: GivenPicture, signal: AbortSignal): Promise<void> => {
    const screen = addresses.current.length;
    const address = URL.createObjectURL(blob);
    addresses.current.push(address);
    setShown((all) => [...all, { address, width: 0, height: 0 }]);
    const leaveOut = (): void => {
      addresses.current.splice(screen, 1);
      URL.revokeObjectURL(address);
      setShown((all) => all.filter((other) => other.address !== address));
    };
    try {
      setProgress({ stage: 'loading', share: 0 });
      // The reader is loaded with the first picture.
      const { readPicture } = await import('../../picture/open-picture-reader.ts');
      const { width, height, lines } = await readPicture(blob, { signal, onProgress: setProgress });
      const read = await settleSureness(lines);
      const joined = joinScreens(state.current.lines, read, screen);
      if (joined.where === 'nothing' && state.current.lines.length > 0) {
        leaveOut();
        return setCame({ kind: read.length === 0 ? 'noWords' : 'nothing' });
      }
      setShown((all) => all.map((one) => (one.address === address ? { address, width, height } : one)));
      if (read.length === 0) return setCame({ kind: 'noWords' });
      if (joined.where === 'apart' && isScreen) setCame({ kind: 'apart' });
      const written = await writeJoined(state.current, joined);
      signal.throwIfAborted();
      state.current.lines = joined.lines;
      setLines(joined.lines);
      write(written);
    } catch (error) {
      leaveOut();
      throw error;
    }
  };
  useEffect(() => {
    const now = state.current;
    if (now.isReading || now.taken >= given.length) return;
    now.isReading = true;
    void (async () => {
      while (now.taken < given.length) {
        const { signal } = controller.current;
        setCame(null);
        await readOne(given[now.taken++]!, signal).catch((error: unknown) =>
          setCame(signal.aborted ? { kind: 'stopped' } : { kind: 'fault', why: explainPictureFault(error) }),
        );
      }
      now.isReading = false;
      setProgress(null);
      // Continues with pictures that arrived meanwhile.
      setTurn((turns) => turns + 1);
    })();
  }, [given, turn]);
  return {
    shown,
    lines,
    progress,
    came,
    text,
    isOwn: text !== state.current.made,
    setText: write,
    stop: () => {
      controller.current.abort();
      controller.current = new AbortController();
    },
    again: () => {
      state.current.taken = Math.max(0, state.current.taken - 1);
      setTurn((turns) => turns + 1);
    },
  };
}

/**
 * Returns the text with the words that a screen added. If the teacher changed the text, it stays as it is, and the new
 * words go after or before it.
 */
async function writeJoined(
  state: { readonly text: string; made: string },
  { lines, added, where }: JoinedScreens,
): Promise<string> {
  if (state.text === state.made) {
    state.made = await writePictureText(lines);
    return state.made;
  }
  const more = await writePictureText(added);
  return where === 'before' ? `${more}\n${state.text}` : `${state.text}\n${more}`;
}
