import { useState } from 'preact/hooks';

/** Copies a text at a call of `copy`; `copied` says whether the browser allowed it, null before. */
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
