import { browser } from '../browser.ts';

/** The source of a PDF in a tab. */
export interface PdfTab {
  readonly url: string;
}

/**
 * Finds out whether a tab shows a PDF that may be read. Returns null for any other tab, and where the browser allows no
 * access (Firefox).
 */
export async function findPdfTab(tab: number): Promise<PdfTab | null> {
  try {
    const [found] = await browser.scripting.executeScript({
      target: { tabId: tab },
      injectImmediately: true,
      func: () => (document.contentType === 'application/pdf' ? location.href : null),
    });
    const url = found?.result as string | null | undefined;
    return url ? { url } : null;
  } catch {
    return null;
  }
}

/** The bytes of a file, or the reason why there are none: the file is too large, or its site did not send it again. */
export type Fetched = { readonly bytes: Uint8Array } | { readonly why: 'tooLarge' | 'gone' };

/**
 * Makes the page of a PDF fetch its own file again, with the site's cookies as the browser did. Nothing else is
 * requested from the site. The download stops if the file is larger than `most` bytes.
 */
export async function fetchPdfTab(tab: number, most: number): Promise<Fetched> {
  try {
    const [found] = await browser.scripting.executeScript({
      target: { tabId: tab },
      injectImmediately: true,
      args: [most],
      func: fetchHere,
    });
    const result = found?.result as Awaited<ReturnType<typeof fetchHere>> | null | undefined;
    if (!result) return { why: 'gone' };
    return 'why' in result ? result : { bytes: fromBase64(result.base64) };
  } catch {
    return { why: 'gone' };
  }
}

/**
 * Runs in the page, so it has no access to the rest of this file. Its result must be text, because messages between the
 * parts are text.
 */
async function fetchHere(most: number): Promise<{ base64: string } | { why: 'tooLarge' | 'gone' }> {
  const answer = await fetch(location.href).catch(() => null);
  if (!answer?.ok || !answer.body) return { why: 'gone' };
  const parts: BlobPart[] = [];
  let size = 0;
  const reader = answer.body.getReader();
  for (let step = await reader.read(); !step.done; step = await reader.read()) {
    size += step.value.length;
    if (size > most) {
      void reader.cancel();
      return { why: 'tooLarge' };
    }
    parts.push(step.value);
  }
  const base64 = await new Promise<string>((resolve, reject) => {
    const file = new FileReader();
    file.onload = () => resolve((file.result as string).replace(/^[^,]*,/, ''));
    file.onerror = () => reject(file.error);
    file.readAsDataURL(new Blob(parts));
  });
  return { base64 };
}

function fromBase64(base64: string): Uint8Array {
  const letters = atob(base64);
  const bytes = new Uint8Array(letters.length);
  for (let i = 0; i < letters.length; i++) bytes[i] = letters.charCodeAt(i);
  return bytes;
}
