/** The first bytes of picture files. */
const SIGNS = [
  /^\x89PNG\r\n/,
  /^\xff\xd8\xff/,
  /^RIFF[\s\S]{4}WEBP/,
  /^GIF8[79]a/,
  /^BM[\s\S]{4}\0\0\0\0/,
  // AVIF, and HEIC as phones save it, which the browser may not read.
  /^[\s\S]{4}ftyp(?:avi[fs]|hei[cfmsx]|hev[cmsx]|mif1|msf1)/,
];

/** Tells whether a file is a picture, from its first bytes. Never rejects: a file that cannot be read is not a picture. */
export async function isPictureFile(file: Blob): Promise<boolean> {
  const bytes = await file
    .slice(0, 16)
    .arrayBuffer()
    .catch(() => new ArrayBuffer(0));
  const start = String.fromCharCode(...new Uint8Array(bytes));
  return SIGNS.some((sign) => sign.test(start));
}
