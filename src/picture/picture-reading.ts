/** A picture: a file, a bitmap or a canvas. */
export type Picture = Blob | ImageBitmap | HTMLCanvasElement | OffscreenCanvas;

/** A box in the original picture, in pixels from the upper left corner. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** One word as it was read: letters and signs between two spaces. */
export interface PictureWord {
  readonly text: string;
  readonly box: Box;
  /** How certain the reading is, 0 to 1. */
  readonly sureness: number;
  /** Whether the reading is certain enough to judge the word. An unsure word never counts as beyond for a group. */
  readonly isSure: boolean;
}

/** One line of a column. */
export interface PictureLine {
  readonly words: readonly PictureWord[];
  readonly box: Box;
  /** The height of the line's letters including ascenders and descenders, in pixels of the picture. */
  readonly size: number;
  /** Whether the layout says that a paragraph or a block begins with this line. */
  readonly beginsParagraph: boolean;
}

/** All text read from a picture, in reading order: one column after the other. */
export interface PictureReading {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly PictureLine[];
}

/** The progress of a reading: the stage and the finished share of it, 0 to 1. */
export interface PictureProgress {
  readonly stage: 'loading' | 'reading';
  readonly share: number;
}

/** The reason why a picture cannot be read. The page turns `reason` into the teacher's language. */
export class PictureFault extends Error {
  override name = 'PictureFault';
  readonly reason: 'notAPicture' | 'pictureTooLarge' | 'noReader' | 'notRead';

  constructor(reason: PictureFault['reason'], cause?: unknown) {
    super(`The picture cannot be read: ${reason}`, { cause });
    this.reason = reason;
  }
}
