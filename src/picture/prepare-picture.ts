import type { Scaled } from './find-lines.ts';
import { type Picture, PictureFault } from './picture-reading.ts';

/**
 * The most pixels of a picture. A picture with more is scaled down first. A picture with a side longer than
 * `LARGEST_SIDE` is not opened.
 */
const MOST_DOTS = 16_000_000;
const LARGEST_SIDE = 16_000;
/** A picture with fewer pixels is doubled in size, since letters on a screen are small. */
const SMALL = 2_600_000;
/** The margin around the picture, since the reader misses letters at the very edge. */
const MARGIN = 10;

/** A picture in the form that the reader needs. */
export interface PreparedPicture extends Scaled {
  /** The grey values as a portable grey map. This format needs no compression. */
  readonly image: Uint8Array;
  /** The reader settings for this picture. */
  readonly settings: Readonly<Record<string, string>>;
}

/**
 * Prepares a picture for the reader: in grey, with dark letters on a light background. Small pictures are doubled in
 * size. Rejects with `PictureFault`.
 */
export async function preparePicture(picture: Picture): Promise<PreparedPicture> {
  const bitmap = await openBitmap(picture);
  try {
    const { width, height } = bitmap;
    if (width === 0 || height === 0) throw new PictureFault('notAPicture');
    if (width > LARGEST_SIDE || height > LARGEST_SIDE) throw new PictureFault('pictureTooLarge');
    const dots = width * height;
    const scale = dots > MOST_DOTS ? Math.sqrt(MOST_DOTS / dots) : dots < SMALL ? 2 : 1;
    const grey = drawGrey(bitmap, Math.round(width * scale), Math.round(height * scale));
    if (isDark(grey.shades)) for (let n = 0; n < grey.shades.length; n++) grey.shades[n]! ^= 255;
    return {
      width,
      height,
      scale,
      margin: MARGIN,
      image: writeGreyMap(grey),
      settings: { user_defined_dpi: String(Math.round(150 * scale)) },
    };
  } finally {
    if (bitmap !== picture && bitmap instanceof ImageBitmap) bitmap.close();
  }
}

async function openBitmap(picture: Picture): Promise<ImageBitmap | HTMLCanvasElement | OffscreenCanvas> {
  if (!(picture instanceof Blob)) return picture;
  try {
    return await createImageBitmap(picture);
  } catch (error) {
    throw new PictureFault('notAPicture', error);
  }
}

interface Grey {
  readonly width: number;
  readonly height: number;
  readonly shades: Uint8Array;
}

/** Draws a picture in grey. Transparent parts become white. */
function drawGrey(picture: CanvasImageSource, width: number, height: number): Grey {
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d', { willReadFrequently: true })!;
  context.fillStyle = '#fff';
  context.fillRect(0, 0, width, height);
  context.imageSmoothingQuality = 'high';
  context.drawImage(picture, 0, 0, width, height);
  const { data } = context.getImageData(0, 0, width, height);
  const shades = new Uint8Array(width * height);
  for (let n = 0, at = 0; n < shades.length; n++, at += 4)
    shades[n] = (data[at]! * 77 + data[at + 1]! * 150 + data[at + 2]! * 29) >> 8;
  return { width, height, shades };
}

function isDark(shades: Uint8Array): boolean {
  let sum = 0;
  for (let n = 0; n < shades.length; n += 7) sum += shades[n]!;
  return (sum * 7) / shades.length < 110;
}

/** Returns a grey map (PGM, P5) with a margin in the colour of the picture's corner. */
function writeGreyMap({ width, height, shades }: Grey): Uint8Array {
  const across = width + 2 * MARGIN;
  const down = height + 2 * MARGIN;
  const head = new TextEncoder().encode(`P5\n${across} ${down}\n255\n`);
  const map = new Uint8Array(head.length + across * down);
  map.set(head);
  map.fill(shades[0]!, head.length);
  for (let row = 0; row < height; row++)
    map.set(shades.subarray(row * width, (row + 1) * width), head.length + (row + MARGIN) * across + MARGIN);
  return map;
}
