/** A picture on its way from a tab to the page that reads it. */
export interface TakenPicture {
  /** The picture as a data URL, since messages are text. */
  readonly data: string;
  /** The title of the page it was on. */
  readonly title: string;
  readonly url: string;
  readonly tab: number;
}

/** The outcome of taking a picture: a page was opened to read it, or the page of the earlier screens got it, or the reason why it failed. */
export type Taking = { readonly done: 'opened' | 'added' } | { readonly why: string };

/** A message to the pages that read pictures: another screen of this tab can be fetched by its id. */
export interface PictureNews {
  readonly picture: string;
  readonly tab: number;
}

/** Whether a message is `PictureNews`. */
export function isPictureNews(message: unknown): message is PictureNews {
  return typeof (message as Partial<PictureNews> | null | undefined)?.picture === 'string';
}
