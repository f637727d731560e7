import { convertDocx } from './convert-docx.ts';

// Answers with the document, or with null where it is damaged.
addEventListener('message', ({ data }: MessageEvent<ArrayBuffer>) => {
  void convertDocx(data).then(postMessage, () => postMessage(null));
});
