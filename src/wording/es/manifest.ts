import type { manifest as english } from '../en/manifest.ts';
import type { Translated } from '../translation.ts';

/** What the browser shows of the extension before any page of it is open. */
export const manifest: Translated<typeof english> = {};
