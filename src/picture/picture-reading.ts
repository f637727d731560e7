/** A picture: a file or a drawing. */
export type Picture = Blob | ImageBitmap | HTMLCanvasElement | OffscreenCanvas;

/** A place in a picture as it was given, in its own dots from the upper left corner. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** One word as it was read: letters and signs between two gaps. */
export interface PictureWord {
  readonly text: string;
  readonly box: Box;
  /** How sure the reading is, 0 to 1. */
  readonly sureness: number;
  /** Whether that is enough to judge the word; a word that is not sure is never beyond a group. */
  readonly isSure: boolean;
}

/** One line of a column. */
export interface PictureLine {
  readonly words: readonly PictureWord[];
  readonly box: Box;
  /** How high its letters are with ascender and descender, in dots of the picture. */
  readonly size: number;
  /** Whether the layout says that a paragraph or a block begins here. */
  readonly beginsParagraph: boolean;
}

/** All that was read in a picture, in reading order: one column after the other. */
export interface PictureReading {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly PictureLine[];
}

/** How far a reading is: the stage, and the share of it, 0 to 1. */
export interface PictureProgress {
  readonly stage: 'loading' | 'reading';
  readonly share: number;
}

/** Why a picture cannot be read; `reason` is for the page, which says it in the teacher's language. */
export class PictureFault extends Error {
  override name = 'PictureFault';
  readonly reason: 'notAPicture' | 'pictureTooLarge' | 'noReader' | 'notRead';

  constructor(reason: PictureFault['reason'], cause?: unknown) {
    super(`The picture cannot be read: ${reason}`, { cause });
    this.reason = reason;
  }
}
