import { convertDocx } from './convert-docx.ts';

// Answers with the converted document, or with null if the document is damaged.
addEventListener('message', ({ data }: MessageEvent<ArrayBuffer>) => {
  void convertDocx(data).then(postMessage, () => postMessage(null));
});
