/** A picture on its way from a tab to the page that reads it. */
export interface TakenPicture {
  /** The picture as a data URL, since messages are text. */
  readonly data: string;
  /** The title of the page that the picture was on. */
  readonly title: string;
  readonly url: string;
  readonly tab: number;
}

/**
 * The outcome of taking a picture. Either a new page was opened to read the picture, or the page of the earlier screens
 * received the picture, or taking failed for the reason `why`.
 */
export type Taking = { readonly done: 'opened' | 'added' } | { readonly why: string };

/** A message to the pages that read pictures: another screen of this tab can be fetched by its id. */
export interface PictureNews {
  readonly picture: string;
  readonly tab: number;
}

/** Returns whether a message is `PictureNews`. */
export function isPictureNews(message: unknown): message is PictureNews {
  return typeof (message as Partial<PictureNews> | null | undefined)?.picture === 'string';
}
