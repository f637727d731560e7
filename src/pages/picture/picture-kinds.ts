/** Files that may be pictures of text; whether the browser reads one (HEIC) it says itself. */
export const PICTURE_KINDS = 'image/png,image/jpeg,image/webp,image/avif,image/bmp,.heic,.heif';
