import { useEffect, useState } from 'preact/hooks';

/**
 * Returns the decoded parts of an address after its #: `#text/a%20b` gives text and a b. A part that cannot be decoded
 * is returned as it is written.
 */
export function readAddress(hash = location.hash): readonly string[] {
  return hash.replace(/^#/, '').split('/').map(decode);
}

/** Returns the address with these parts, for a link: `#text/a%20b`. */
export function writeAddress(...parts: readonly string[]): string {
  return `#${parts.map(encodeURIComponent).join('/')}`;
}

/**
 * Returns the reading of the page's address, now and whenever the address changes. `read` must be the same function at
 * every call.
 */
export function useAddress<T>(read: (parts: readonly string[]) => T): T {
  const [said, setSaid] = useState(() => read(readAddress()));
  useEffect(() => {
    const controller = new AbortController();
    addEventListener('hashchange', () => setSaid(read(readAddress())), { signal: controller.signal });
    return () => controller.abort();
  }, [read]);
  return said;
}

function decode(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
