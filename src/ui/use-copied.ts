import { useState } from 'preact/hooks';

/**
 * Copies a text when `copy` is called. `copied` says whether the browser allowed the copy, and is null before the first
 * copy.
 */
export function useCopied(text: string): { readonly copied: boolean | null; copy(): void } {
  const [copied, setCopied] = useState<boolean | null>(null);
  const copy = (): void => {
    navigator.clipboard.writeText(text).then(
      () => setCopied(true),
      () => setCopied(false),
    );
  };
  return { copied, copy };
}
