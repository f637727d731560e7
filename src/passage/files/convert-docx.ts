import mammoth from 'mammoth';

/** A document converted to a web page, and the number of its pictures. */
export interface ConvertedDocument {
  readonly html: string;
  readonly pictures: number;
}

/** Converts a Word document to HTML. Rejects if the document is damaged. */
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
