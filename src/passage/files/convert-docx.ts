import mammoth from 'mammoth';

/** A document as a web page, and how many pictures it had. */
export interface ConvertedDocument {
  readonly html: string;
  readonly pictures: number;
}

/** Rejects where the document is damaged. */
export async function convertDocx(arrayBuffer: ArrayBuffer): Promise<ConvertedDocument> {
  let pictures = 0;
  const { value } = await mammoth.convertToHtml(
    { arrayBuffer },
    {
      convertImage: mammoth.images.imgElement(async () => {
        pictures++;
        return { src: '' };
      }),
      styleMap: ["p[style-name='Title'] => h1:fresh", "p[style-name='Subtitle'] => p:fresh"],
    },
  );
  return { html: value, pictures };
}
