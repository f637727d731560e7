import { joinScreens, type ScreenLine } from '../../picture/join-screens.ts';
import { readPicture } from '../../picture/open-picture-reader.ts';
import { say } from '../../wording/say.ts';
import { FileFault } from './file-fault.ts';
import { explainPictureFault, writePictureText } from './picture-text.ts';
import { settleSureness } from './sure-words.ts';

/** The text that was read in a picture, without corrections by a person. */
export interface PictureFileText {
  readonly title: string;
  readonly text: string;
  /** The text without the words whose reading is unsure. Unsure words do not count. `unsure` is their number. */
  readonly sureText: string;
  readonly unsure: number;
}

/** Reads a picture as one text. Rejects with `FileFault`, or with the reason of the signal if it was aborted. */
export async function readPictureFile(file: File, signal: AbortSignal): Promise<PictureFileText> {
  const reading = await readPicture(file, { signal }).catch((error: unknown) => {
    throw signal.aborted ? error : new FileFault(explainPictureFault(error));
  });
  const { lines } = joinScreens([], await settleSureness(reading.lines), 0);
  if (lines.length === 0) throw new FileFault(say('files.noWordsInPicture'));
  const sure = lines.map(
    (line): ScreenLine => ({ ...line, words: line.words.filter(({ isSure }) => isSure) }),
  );
  return {
    title: file.name.replace(/\.[^.]+$/, '') || file.name,
    text: await writePictureText(lines),
    sureText: await writePictureText(sure.filter(({ words }) => words.length > 0)),
    unsure: lines.reduce((sum, { words }) => sum + words.filter(({ isSure }) => !isSure).length, 0),
  };
}
