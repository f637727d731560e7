/** Returns a picture as text, since messages between the parts of the extension are text: `data:image/png;base64,…`. */
export function writeDataAddress(bytes: Uint8Array, type: string): string {
  // A function call accepts only a limited number of arguments.
  const AT_ONCE = 32_768;
  let letters = '';
  for (let n = 0; n < bytes.length; n += AT_ONCE)
    letters += String.fromCharCode(...bytes.subarray(n, n + AT_ONCE));
  return `data:${type};base64,${btoa(letters)}`;
}

/**
 * Returns the picture in a data URL. The picture is decoded without a fetch, because pages of the extension may fetch
 * only files of the package.
 */
export function readDataAddress(address: string): Blob {
  const [, type = '', content = ''] = /^data:([^;,]*);base64,(.*)$/s.exec(address) ?? [];
  return new Blob([Uint8Array.from(atob(content), (letter) => letter.charCodeAt(0))], { type });
}
